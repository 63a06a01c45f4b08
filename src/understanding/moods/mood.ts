import type { PassedOverStatement } from '../statement.ts';

/** Why what is said there is no plain statement of what is or was done. */
export type Mood =
  | PassedOverStatement['why']
  /** Asked, not said. */
  | 'question'
  /** Said with a question mark only: `dwc ph 5.4?`. */
  | 'queried'
  /** Done by somebody else. */
  | 'others';
