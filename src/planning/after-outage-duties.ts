import type { Entry } from '../greenhouse/entry.ts';
import type { LocalDate } from '../greenhouse/local-time.ts';
import type { System } from '../greenhouse/system.ts';
import { latestEntry, liveEntries } from '../logbook/logbook.ts';
import type { BoardQuestion } from './duty-board.ts';
import type { DutyLine } from './duty-line.ts';
import { lastSaidDoneMs } from './last-done.ts';

const FOLLOWED_FOR_MS = 2 * 86_400_000;
const looked = ['ph', 'ec', 'water-temperature', 'level', 'dissolved-oxygen'] as const;

/** After the power or a pump is back, somebody looks at what stood still. */
export function afterOutageDuties(question: BoardQuestion, today: LocalDate): readonly DutyLine[] {
  return question.greenhouse.systems.flatMap((system) => {
    const back = lastRestored(system, question);
    if (!back || wasLookedAt(system, question, back.atMs)) return [];
    return [
      {
        duty: { kind: 'check', system: system.id, dueOn: today, latestOn: today },
        ridesFrom: today,
        reason: {
          kind: 'after-outage',
          of: back.of ?? 'power',
          restoredAtMs: back.atMs,
          quantities: ['level', 'water-temperature', 'ph'],
        },
      } satisfies DutyLine,
    ];
  });
}

function lastRestored(system: System, { logbook, nowMs }: BoardQuestion): Entry | null {
  const everywhere =
    system.method === 'non-circulating' ? null : latestEntry(logbook, null, 'restored');
  const here = latestEntry(logbook, system.id, 'restored');
  const last = [everywhere, here]
    .flatMap((entry) => (entry ? [entry] : []))
    .toSorted((one, other) => one.atMs - other.atMs)
    .at(-1);
  return last && nowMs - last.atMs < FOLLOWED_FOR_MS ? last : null;
}

function wasLookedAt(system: System, { logbook }: BoardQuestion, sinceMs: number): boolean {
  const saidMs = lastSaidDoneMs(logbook, system.id, 'check');
  return (
    (saidMs !== null && saidMs > sinceMs) ||
    looked.some((quantity) =>
      liveEntries(logbook, system.id, quantity).some(({ atMs }) => atMs > sinceMs),
    )
  );
}
