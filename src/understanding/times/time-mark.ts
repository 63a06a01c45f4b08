/** A time that the message speaks of, worked out on the greenhouse's wall clock. */
export interface TimeMark {
  /** First and last term. */
  readonly from: number;
  readonly to: number;
  readonly clause: number;
  readonly atMs: number;
  /** A part of a day rather than a time: the entry is approximate. */
  readonly vague: boolean;
  /** From then on: `since 2`. */
  readonly since: boolean;
  /** Until then: `until 4`. */
  readonly until: boolean;
  /** Still to come, or not to be told: the likely times, latest first. */
  readonly askFrom: readonly number[] | null;
  readonly written: string;
  /** A day that heads what is told: clock times after it are of that day. */
  readonly heads?: boolean;
}

/** What a time has that the message does not say: neither a beginning nor an end, nor a part of a day. */
export const unsaidTime = {
  vague: false,
  since: false,
  until: false,
  askFrom: null,
  written: '',
} as const;
