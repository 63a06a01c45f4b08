/** The smallest pieces of a message, each with its place in the folded text. */
export interface Token {
  readonly kind: 'word' | 'number' | 'clock' | 'date' | 'digits' | 'mark' | 'line';
  readonly text: string;
  readonly from: number;
  readonly to: number;
  /** Nothing stands between it and the token before. */
  readonly glued: boolean;
  /** number: what it can be read as, likeliest first; `1,413` is 1.413 or 1413. */
  readonly values: readonly number[];
  /** clock: minutes after midnight. */
  readonly minutes: number;
}
