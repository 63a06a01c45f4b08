declare const unit: unique symbol;

/**
 * A number that carries its unit in its type only. It reads as a plain number, but a plain number,
 * or one of another unit, does not compile where it is asked for.
 */
export type Unit<Name extends string> = number & { readonly [unit]: Name };
