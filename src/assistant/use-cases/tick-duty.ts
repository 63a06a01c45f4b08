import type { Duty } from '../../greenhouse/duty.ts';
import { isDone } from '../../planning/duty-done.ts';
import type { Handling } from '../handling.ts';
import { doneDraft } from './close-duties.ts';
import { recordEntries } from './record-entries.ts';

/** Logs a duty of a round as done; the round itself shows it, so that the receipt is in passing. */
export function tickDuty(handling: Handling, duty: Duty, askedAtMs: number): void {
  handling.inPassing(() => {
    if (isDone(duty, handling.standing.logbook, askedAtMs)) {
      handling.say({ kind: 'answer', answer: { kind: 'nothing-open' } });
      return;
    }
    recordEntries(handling, [doneDraft(duty, handling.nowMs)]);
  });
}
