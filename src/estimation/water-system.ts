/** What the water estimate needs to know of a system; litres throughout. */
export interface WaterSystem {
  /** Full. */
  readonly brimL: number;
  /** In trouble below this. */
  readonly lowL: number;
  readonly crop: string | null;
  readonly plants: number;
  /** People fill it up to the brim; false where they add an amount, as to jars with an air gap. */
  readonly filledToBrim: boolean;
}
