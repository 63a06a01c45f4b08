import type { AnswerOf } from '../../spoken/answer-of.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { whenNextAnswer } from '../due-answer.ts';
import { stretches } from './family-alert.ts';
import { claimName, whoDoes } from './settled.ts';

/** Who goes on each day, then what was taken. */
export function rosterText({ days, claims }: AnswerOf<'roster'>, s: Speaker): string {
  return [
    ...days.map(({ date, handles }) => {
      const who = handles.map((handle) => s.person(handle).name);
      return `${s.fullDay(date)}: ${who.length > 0 ? s.and(who) : 'nobody'}.`;
    }),
    ...claims.map(
      ({ handle, settled }) =>
        `${whoDoes(handle, 'have', 'has', s)} taken ${claimName(settled, s)} (${s.fullDay(settled.on)}).`,
    ),
  ].join('\n');
}

/** When the reader has to go, then what is due next. */
export function myTurnsText(
  { days, isEveryDay, claims, next }: AnswerOf<'my-turns'>,
  s: Speaker,
): string {
  const turns = isEveryDay
    ? []
    : days.length > 0
      ? [`Your days: ${stretches(days, s)}.`]
      : claims.length === 0
        ? ['You are put down for no day.']
        : [];
  return [
    ...turns,
    ...claims.map(
      ({ settled }) => `You have taken ${claimName(settled, s)} (${s.fullDay(settled.on)}).`,
    ),
    ...(next.length > 0 && !isEveryDay ? ['Due next:'] : []),
    ...(next.length > 0 ? [whenNextAnswer({ kind: 'when-next', duties: next }, s)] : []),
  ].join('\n');
}
