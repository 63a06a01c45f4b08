import type { Fault } from './fault.ts';

/** Which calls a fault is for. */
export type FaultTarget = {
  /** One method or several; every method but `getUpdates` if left out. */
  readonly method?: string | readonly string[];
  /** Leaves so many fitting calls alone first. */
  readonly skip?: number;
  /** How many calls it strikes; 1 if left out, `Infinity` until it is lifted. */
  readonly times?: number;
  readonly where?: (payload: Readonly<Record<string, unknown>>) => boolean;
};

/** A fault in waiting; `hits` counts the calls it struck. */
export type ArmedFault = { readonly hits: number; readonly lift: () => void };

type Armed = {
  readonly fault: Fault;
  readonly target: FaultTarget;
  skipsLeft: number;
  timesLeft: number;
  hits: number;
};

/** The faults that a test has ordered; the one ordered first strikes first. */
export class FaultPlan {
  readonly #armed: Armed[] = [];

  arm(fault: Fault, target: FaultTarget = {}): ArmedFault {
    const armed: Armed = {
      fault,
      target,
      skipsLeft: target.skip ?? 0,
      timesLeft: target.times ?? 1,
      hits: 0,
    };
    this.#armed.push(armed);
    return {
      get hits() {
        return armed.hits;
      },
      lift: () => {
        armed.timesLeft = 0;
      },
    };
  }

  liftAll(): void {
    this.#armed.length = 0;
  }

  /** The fault that strikes this call, if any. */
  strike(method: string, payload: Readonly<Record<string, unknown>>): Fault | undefined {
    for (const armed of this.#armed) {
      if (armed.timesLeft <= 0 || !aimsAt(armed.target, method, payload)) continue;
      if (armed.skipsLeft > 0) {
        armed.skipsLeft -= 1;
        continue;
      }
      armed.timesLeft -= 1;
      armed.hits += 1;
      return armed.fault;
    }
    return undefined;
  }
}

const aimsAt = (
  target: FaultTarget,
  method: string,
  payload: Readonly<Record<string, unknown>>,
): boolean => {
  const named =
    target.method === undefined ? method !== 'getUpdates' : [target.method].flat().includes(method);
  return named && (target.where?.(payload) ?? true);
};
