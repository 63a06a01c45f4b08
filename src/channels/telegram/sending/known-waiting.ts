import type { Outgoing } from '../../../assistant/outgoing.ts';
import type { GreenhouseId, PendingOutgoing } from '../../../assistant/ports/store.ts';

/** What comes beyond that is found in the outbox in time. */
const mostKept = 1000;

/** What was written to the outbox by this process and is in nobody's hands yet, as far as is known here. */
export class KnownWaiting {
  #messages: PendingOutgoing[] = [];

  /** What takes the place of an earlier message is left out: what that is called is not known here. */
  add(greenhouse: GreenhouseId, written: readonly Outgoing[]): void {
    const room = Math.max(0, mostKept - this.#messages.length);
    const direct = written.filter(({ edits }) => edits === undefined).slice(0, room);
    this.#messages.push(...direct.map((outgoing) => untried(greenhouse, outgoing)));
  }

  /** The longest waiting, which is then no longer among them. */
  next(): PendingOutgoing | null {
    return this.#messages.shift() ?? null;
  }

  /** It has been taken up by another way. */
  drop({ greenhouse, outgoing }: PendingOutgoing): void {
    this.#messages = this.#messages.filter(
      (known) => known.greenhouse !== greenhouse || known.outgoing.no !== outgoing.no,
    );
  }
}

/** A message as the outbox gives it out for the first time. */
export function untried(greenhouse: GreenhouseId, outgoing: Outgoing): PendingOutgoing {
  return {
    greenhouse,
    outgoing,
    attempts: 0,
    unanswered: 0,
    partsSent: 0,
    editsPlatformId: null,
  };
}
