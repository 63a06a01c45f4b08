import { clauseJoiners } from '../vocabulary/arranging-words.ts';
import type { Piece } from './piece.ts';

/** A stretch of pieces that says one thing. */
export interface Clause {
  readonly pieces: readonly Piece[];
  readonly isQuestion: boolean;
}

/** Parted at stops, and at `and` or `then` where somebody is named as the one who acts next. */
export function clausesOf(pieces: readonly Piece[]): readonly Clause[] {
  const clauses: Clause[] = [];
  let open: Piece[] = [];
  const close = (isQuestion: boolean): void => {
    if (open.length > 0) clauses.push({ pieces: open, isQuestion });
    open = [];
  };
  for (const [i, piece] of pieces.entries()) {
    if (isBetweenNames(pieces, i)) continue;
    if (piece.stop !== null) {
      close(piece.stop === 'question');
      continue;
    }
    const next = pieces[i + 1];
    if (isJoin(piece) && next && startsSomebody(next, pieces[i + 2]) && open.some(isDeed)) {
      close(false);
      continue;
    }
    open.push(piece);
  }
  close(false);
  return clauses;
}

/** `Tomas, Priya and Olli` is one list. */
function isBetweenNames(pieces: readonly Piece[], i: number): boolean {
  const [before, piece, after] = [pieces[i - 1], pieces[i]!, pieces[i + 1]];
  if (piece.text !== ',' || before?.member == null || after?.member == null) return false;
  const next = pieces[i + 2];
  // `Tomas, Priya goes on Monday` speaks to one of the other.
  return next === undefined || !isDeed(next);
}

function isJoin({ text, concepts }: Piece): boolean {
  return clauseJoiners.has(text) || concepts.has('then');
}

function startsSomebody(piece: Piece, next: Piece | undefined): boolean {
  if (piece.concepts.has('self-will') || piece.concepts.has('self-is')) return true;
  if (piece.concepts.has('self')) return true;
  return piece.member !== null && next !== undefined && (isDeed(next) || next.concepts.has('will'));
}

const deeds = [
  'do',
  'go',
  'cover',
  'top-up',
  'check',
  'change',
  'clean',
  'cannot',
  'away',
] as const;

function isDeed({ concepts, isStrange, number }: Piece): boolean {
  return isStrange || number !== null || deeds.some((deed) => concepts.has(deed));
}
