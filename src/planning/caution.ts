/** What has to be said where dangerous work is asked for. A language has a text for each. */
export type Caution =
  | 'label-and-data-sheet'
  | 'goggles-and-gloves'
  | 'acid-into-water'
  | 'never-with-bleach'
  | 'acid-and-alkali-apart'
  | 'concentrates-apart'
  | 'rinse-skin-and-eyes'
  | 'out-of-reach'
  | 'unplug-before-hands-in'
  | 'residual-current-device'
  | 'licensed-electrician'
  | 'local-rules'
  | 'no-disinfectant-by-guess';

/** In full the first time that work is asked for, briefly once it has been done. */
export interface Cautions {
  readonly about: readonly Caution[];
  readonly inFull: boolean;
}
