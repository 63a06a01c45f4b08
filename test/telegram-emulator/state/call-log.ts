import { eventually } from './eventually.ts';

/** How a call ended, as the bot could see it. */
export type CallOutcome =
  | { readonly kind: 'ok'; readonly result: unknown }
  | { readonly kind: 'refused'; readonly code: number; readonly description: string }
  /** The connection went before the bot had an answer; `accepted` tells if the call was carried out. */
  | { readonly kind: 'dropped'; readonly accepted: boolean };

/** A call to the server; `outcome` is undefined while it lasts. Times in ms of the emulator's clock. */
export type Call = {
  readonly method: string;
  readonly payload: Readonly<Record<string, unknown>>;
  readonly startedMs: number;
  endedMs: number | undefined;
  outcome: CallOutcome | undefined;
};

/** Every call the bot has made, in order. */
export class CallLog {
  readonly #calls: Call[] = [];
  readonly #listeners = new Set<() => void>();

  get all(): readonly Call[] {
    return this.#calls;
  }

  of(method: string): readonly Call[] {
    return this.#calls.filter((call) => call.method === method);
  }

  begin(method: string, payload: Readonly<Record<string, unknown>>, startedMs: number): Call {
    const call: Call = { method, payload, startedMs, endedMs: undefined, outcome: undefined };
    this.#calls.push(call);
    return call;
  }

  end(call: Call, outcome: CallOutcome, endedMs: number): void {
    call.outcome = outcome;
    call.endedMs = endedMs;
    for (const listener of [...this.#listeners]) listener();
  }

  clear(): void {
    this.#calls.length = 0;
  }

  /** The first call, past or to come, that has ended and fits. Rejects after `timeoutMs`. */
  until(fits: (call: Call) => boolean, timeoutMs = 5000): Promise<Call> {
    return eventually(
      () => this.#calls.find((call) => call.outcome !== undefined && fits(call)),
      this.#listeners,
      timeoutMs,
      () => `no call fits; calls so far: ${this.#calls.map((call) => call.method).join(', ')}`,
    );
  }
}
