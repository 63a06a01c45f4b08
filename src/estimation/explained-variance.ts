import { STATE_SIZE } from './water-belief.ts';

/** Keeps the elimination from dividing by nothing where a variable is known for certain. */
const LEAST_PIVOT = 1e-12;

/**
 * The part of the variance of `which` that the other variables of the state explain: cᵀ P⁻¹ c, with
 * P their covariance and c that with `which`. By Cholesky, skipping variables without variance.
 */
export function explainedVariance(cov: readonly number[], which: number): number {
  const others = [...Array(STATE_SIZE).keys()].filter((i) => i !== which);
  const size = others.length;
  const lower = new Array<number>(size * size).fill(0);
  const solved = new Array<number>(size).fill(0);
  let explained = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = cov[others[i]! * STATE_SIZE + others[j]!]!;
      for (let k = 0; k < j; k += 1) sum -= lower[i * size + k]! * lower[j * size + k]!;
      const pivot = lower[j * size + j]!;
      if (i === j) lower[i * size + i] = sum > LEAST_PIVOT ? Math.sqrt(sum) : 0;
      else lower[i * size + j] = pivot > 0 ? sum / pivot : 0;
    }
    let rest = cov[others[i]! * STATE_SIZE + which]!;
    for (let k = 0; k < i; k += 1) rest -= lower[i * size + k]! * solved[k]!;
    const pivot = lower[i * size + i]!;
    const share = pivot > 0 ? rest / pivot : 0;
    solved[i] = share;
    explained += share * share;
  }
  return explained;
}
