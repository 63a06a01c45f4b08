/** Seeded dice, so that a season is the same every time it is run. */
export interface Dice {
  /** Uniform over 0..1. */
  uniform(): number;
  between(low: number, high: number): number;
  /** Standard normal. */
  normal(): number;
}

/** 32-bit counter-and-mix generator (splitmix's finaliser), good enough for a bench. */
export function diceOf(seed: string): Dice {
  let state = 0x9e3779b9;
  for (const char of seed) state = mix(state ^ char.charCodeAt(0));
  const uniform = () => {
    state = (state + 0x9e3779b9) | 0;
    return (mix(state) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () =>
      Math.sqrt(-2 * Math.log(uniform() + 2 ** -33)) * Math.cos(2 * Math.PI * uniform()),
  };
}

function mix(value: number): number {
  let x = value | 0;
  x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
  x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
  return x ^ (x >>> 15);
}
