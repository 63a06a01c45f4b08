import type { Readable, Writable } from 'node:stream';
import type { Desk } from '../../assistant/desk.ts';
import type { GreenhouseId, Store } from '../../assistant/ports/store.ts';
import type { Language } from '../../greenhouse/member.ts';
import type { Wording } from '../../wording/wording.ts';

/** All that the terminal needs from outside. */
export interface TerminalOptions {
  readonly store: Pick<Store, 'receive' | 'unhandled' | 'pending' | 'settle'>;
  readonly desk: Pick<Desk, 'handle' | 'standing'>;
  readonly greenhouseId: GreenhouseId;
  readonly wordings: Readonly<Record<Language, Wording>>;
  readonly nowMs: () => number;
  /** Told of what went wrong while `doing` something; the person typing has been told in a sentence. */
  readonly report: (error: unknown, doing: string) => void;
  readonly input: Readable;
  readonly output: Writable;
  /** Somebody types: show a prompt. False for piped input. */
  readonly isInteractive: boolean;
}

export const channel = 'terminal';
