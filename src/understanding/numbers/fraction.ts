import { phraseAt, type Reading, unitAt } from '../reading/look-up.ts';
import type { Token } from '../reading/token.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { concept } from './concept-at.ts';

const largestDenominator = 10;

/** `3/4`: a small proper fraction, written without blanks. */
export function fractionFrom(tokens: readonly Token[], at: number): number | null {
  const [top, stroke, bottom] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (top?.kind !== 'number' || stroke?.text !== '/' || bottom?.kind !== 'number') return null;
  if (!stroke.glued || !bottom.glued || top.text.length > 1 || bottom.text.length > 2) return null;
  const [a, b] = [top.values[0]!, bottom.values[0]!];
  return Number.isInteger(b) && a > 0 && a < b && b <= largestDenominator ? a / b : null;
}

/** After a fraction: something to have a share of, so that `6/2` in shorthand stays two numbers. */
export function isShareOfSomething(reading: Reading, at: number): boolean {
  if (unitAt(reading, at)) return true;
  const word = phraseAt(reading, at)?.value;
  if (!word) return false;
  return ['full', 'empty', 'left-over', 'of', 'indefinite', 'down', 'deep'].some((concept) =>
    word.concepts.has(concept as Concept),
  );
}

/** `a` in `1/2 a jug`, `of a` in `1/3 of a can`. */
export function shareOf(reading: Reading, at: number): number {
  const of = concept(reading, at, 'of');
  const indefinite = concept(reading, at + of, 'indefinite');
  return indefinite > 0 && unitAt(reading, at + of + indefinite) ? of + indefinite : 0;
}

/** `and a half`, `and a quarter`, `and three quarters` after a whole number or its unit: the share, and how many tokens say it. */
export function partMore(
  reading: Reading,
  at: number,
): { readonly share: number; readonly length: number } | null {
  const half = concept(reading, at, 'half-more');
  if (half > 0) return { share: 1 / 2, length: half };
  const and = concept(reading, at, 'and');
  const part = and > 0 ? phraseAt(reading, at + and) : null;
  const share = part?.value.fraction ?? null;
  if (!part || share === null) return null;
  const end = at + and + part.length;
  // `2 cans and three quarters full`, `two and a third one`: the share is of something else.
  const isOfItsOwn = !unitAt(reading, end) && isShareOfSomething(reading, end);
  const isCounted = (phraseAt(reading, end)?.value.number ?? null) !== null;
  if (isOfItsOwn || isCounted) return null;
  return { share, length: and + part.length };
}
