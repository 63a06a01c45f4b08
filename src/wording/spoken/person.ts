/** Somebody in a sentence: the reader, who is spoken to, or another, by name. */
export interface Person {
  /** `you`, or a name; small, for within a sentence. */
  readonly name: string;
  /** The word that goes with it: `take` or `takes`. */
  readonly verb: (ofReader: string, ofAnother: string) => string;
}
