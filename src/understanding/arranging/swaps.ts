import { swapWords, thirdPersons } from '../vocabulary/arranging-words.ts';
import type { Clause } from './clauses.ts';
import type { Piece } from './piece.ts';

/**
 * `swap with Tomas, he does Thursday`: whoever one swaps with is meant by the word for him, and that they swap settles
 * nothing by itself.
 */
export function withSwaps(clauses: readonly Clause[]): readonly Clause[] {
  const at = clauses.findIndex(isSwap);
  const partner = clauses[at]?.pieces.find(({ member }) => member !== null);
  if (!partner || !clauses.slice(at + 1).some(({ pieces }) => pieces.some(isThirdPerson)))
    return clauses;
  return clauses.flatMap((clause, n): Clause[] => {
    if (n < at) return [clause];
    if (n === at) return [];
    return [{ ...clause, pieces: clause.pieces.map((piece) => meantBy(piece, partner)) }];
  });
}

/** Nobody but the two, no day and no system. */
function isSwap({ pieces, isQuestion }: Clause): boolean {
  const members = new Set(pieces.flatMap(({ member }) => member ?? []));
  return (
    !isQuestion &&
    members.size === 1 &&
    pieces.some(({ text }) => text.split(' ').some((word) => swapWords.has(word))) &&
    pieces.every(
      ({ system, number, weekday }) => system === null && number === null && weekday === null,
    )
  );
}

function isThirdPerson({ text, member }: Piece): boolean {
  return member === null && thirdPersons.has(text);
}

function meantBy(piece: Piece, partner: Piece): Piece {
  if (!isThirdPerson(piece)) return piece;
  const { from, to } = piece;
  return { ...partner, from, to };
}
