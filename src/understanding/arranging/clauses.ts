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
    if (isJoin(piece) && isOfSomebodysDay(open) && startsDayOfAnother(pieces, i + 1)) {
      const said = notGoing(open);
      close(false);
      open.push(...said);
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

/** Somebody, and a day of theirs. */
function isOfSomebodysDay(open: readonly Piece[]): boolean {
  return open.some(({ weekday }) => weekday !== null) && open.some(isSomebody);
}

function isSomebody({ member, concepts }: Piece): boolean {
  return member !== null || concepts.has('self') || concepts.has('self-will');
}

/** `Tomas goes on Mondays and Priya on Thursdays`, `… und donnerstags Priya`: a day of another's. */
function startsDayOfAnother(pieces: readonly Piece[], start: number): boolean {
  let hasDay = false;
  let hasSomebody = false;
  for (const piece of pieces.slice(start, start + longestPair)) {
    if (piece.stop !== null || isJoin(piece)) break;
    const isMore = piece.weekday !== null ? hasDay : isSomebody(piece) && hasSomebody;
    if (isMore || !isOfPair(piece)) return false;
    hasDay ||= piece.weekday !== null;
    hasSomebody ||= isSomebody(piece);
    if (hasDay && hasSomebody) return true;
  }
  return false;
}

const longestPair = 4;

function isOfPair(piece: Piece): boolean {
  const { concepts } = piece;
  return piece.weekday !== null || isSomebody(piece) || concepts.has('on') || concepts.has('go');
}

/** `Tomas can't on Monday and Priya on Thursday`: holds for the second as well. */
function notGoing(open: readonly Piece[]): readonly Piece[] {
  const canNot = ['can', 'not'] as const;
  const isParted = canNot.every((word) => open.some(({ concepts }) => concepts.has(word)));
  return open.filter(
    ({ concepts }) =>
      concepts.has('cannot') ||
      concepts.has('away') ||
      (isParted && canNot.some((word) => concepts.has(word))),
  );
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
