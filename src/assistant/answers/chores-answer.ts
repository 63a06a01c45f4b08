import { boardOf } from '../board-of.ts';
import type { ChoreTold, KeepingAnswer } from '../replies/keeping.ts';
import type { Standing } from '../standing.ts';

/** The household's chores, how often they are done, when last and when next; or one of them. */
export function choresAnswer(
  standing: Standing,
  name: string | null,
  nowMs: number,
): KeepingAnswer {
  const board = boardOf(standing, nowMs);
  const chores = [...board.today, ...board.later].flatMap(({ duty, reason }): ChoreTold[] => {
    if (duty.chore === undefined || reason.kind !== 'chore') return [];
    const { everyDays, lastDoneOn } = reason;
    return [{ name: duty.chore, system: duty.system, everyDays, lastDoneOn, dueOn: duty.dueOn }];
  });
  return { kind: 'chores', chores: chores.filter((each) => name === null || each.name === name) };
}
