/** A level as it was read off, and what was added since. */
export interface LevelRead {
  readonly litres: number;
  readonly approximate: boolean;
}

/**
 * What the logbook says about the water of one system, oldest first when folded. Litres; `atMs` is
 * the instant it held.
 */
export type WaterEvent =
  | {
      readonly kind: 'level';
      readonly atMs: number;
      readonly litres: number;
      readonly approximate: boolean;
    }
  | {
      readonly kind: 'top-up';
      readonly atMs: number;
      /** Null: topped up, nobody said how much. */
      readonly litres: number | null;
      readonly approximate: boolean;
      /** What the round had asked for, where it had. */
      readonly askedL: number | null;
      /** The level just before it, where somebody had read it off on the same visit. */
      readonly read?: LevelRead;
    }
  | { readonly kind: 'reservoir-change'; readonly atMs: number; readonly litres: number | null }
  /** Asked for in a round, and nobody said a word; `chance` that it was done all the same. */
  | {
      readonly kind: 'unreported-top-up';
      readonly atMs: number;
      readonly chance: number;
      /** What the round had asked for; null: a round that named no litres. */
      readonly askedL: number | null;
    }
  /** A young crop went in, in place of what grew there. */
  | { readonly kind: 'planted'; readonly atMs: number }
  /** Harvested or pruned: leaves went, so use may have stepped down. */
  | { readonly kind: 'cut'; readonly atMs: number };
