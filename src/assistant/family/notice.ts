import type { Duty } from '../../greenhouse/duty.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import { urgentFirst } from '../../greenhouse/urgent-first.ts';
import type { Button } from '../outgoing.ts';
import type { Alert } from '../replies/reply.ts';

/** Something to be said unasked, once for its key. */
export interface Notice {
  readonly key: string;
  readonly atMs: number;
  readonly to: string;
  readonly alert: Alert;
  readonly buttons: readonly (readonly Button[])[];
}

/** What others should hear of a settlement or a deed, they hear within so long. */
export const newsHoldsMs = 12 * 3_600_000;

export function notice(
  key: string,
  atMs: number,
  to: string,
  alert: Alert,
  buttons: Notice['buttons'] = [],
): Notice {
  return { key, atMs, to, alert, buttons };
}

/** A row for each duty that the message names; the others have theirs under the round. */
export function nudgeRows(
  duties: readonly Duty[],
  ...about: readonly [stage: 'ask' | 'offer', handle: string, on: LocalDate, askedAtMs: number]
): readonly (readonly Button[])[] {
  return urgentFirst(duties).named.map((duty) => nudgeButtons(duty, ...about));
}

/** What whoever is spoken to about an open duty can press. */
function nudgeButtons(
  duty: Duty,
  stage: 'ask' | 'offer',
  handle: string,
  on: LocalDate,
  askedAtMs: number,
): readonly Button[] {
  const done: Button = { label: { kind: 'tick', duty }, action: { kind: 'tick', duty, askedAtMs } };
  if (stage === 'ask') {
    return [done, { label: { kind: 'cannot', duty }, action: { kind: 'cannot', duty, askedAtMs } }];
  }
  const claim = {
    kind: 'claim',
    handle,
    system: duty.system,
    duty: duty.kind,
    on,
    isEvening: true,
  } as const;
  return [
    done,
    { label: { kind: 'take-over', duty }, action: { kind: 'settle', drafts: [claim] } },
  ];
}
