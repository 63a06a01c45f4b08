import type { Context } from '../context.ts';
import { clauseJoiners, mendingWords } from '../vocabulary/arranging-words.ts';
import type { Arranging, Days } from './arranging.ts';
import { ClauseView, isFiller } from './clause-view.ts';
import type { Piece } from './piece.ts';

/** What this member settled last, or was just asked about, and may still put right in a few words. */
export interface Mendable {
  /** The days of their own absence; null: none was told. */
  readonly absence: Days | null;
  /** Who goes was said, or is asked now; null: neither. */
  readonly cover: 'said' | 'asked' | null;
}

/** `no, from Saturday`, `not Tomas, Priya`: puts right what was settled last, and says nothing else; null: it does not. */
export function mended(
  pieces: readonly Piece[],
  context: Context,
  { absence, cover }: Mendable,
): Arranging | null {
  if (pieces.some(({ stop }) => stop === 'question')) return null;
  const said = pieces.filter(({ stop }) => stop === null);
  if (said.length > longestMending) return null;
  const view = new ClauseView({ pieces: said, isQuestion: false }, context);
  if (view.said) return absence && otherDays(view, absence);
  return cover && otherPerson(view, cover === 'said');
}

const longestMending = 10;

/** From then on, till then, or on days of their own; which of them is not clear from one day alone. */
function otherDays(view: ClauseView, absence: Days): Arranging | null {
  const { said, me, pieces, saidAt, rest } = view;
  const fits = rest.every(
    (piece) => isMending(piece) || isFiller(piece.concepts) || piece.concepts.has('away'),
  );
  if (!said || !fits) return null;
  const isFrom = pieces[saidAt]!.concepts.has('from');
  if (!rest.some(isMending)) return null;
  const away = { kind: 'away', handle: me } as const;
  if (said.isEndOnly) return { days: said.days, isEndOnly: true, ...away };
  const { from, until } = said.days;
  if (from < until) return { days: said.days, ...away };
  const isWithin = isFrom && from <= absence.until;
  return { days: isWithin ? { from, until: absence.until } : null, ...away };
}

function otherPerson({ pieces }: ClauseView, isInstead: boolean): Arranging | null {
  const isNamed = ({ member }: Piece): boolean => member !== null;
  const isOut = (piece: Piece, i: number): boolean =>
    isNamed(piece) &&
    (pieces[i - 1]?.concepts.has('not') === true ||
      pieces[i - 1]?.concepts.has('instead-of') === true);
  const isLeft = pieces.some(isOut) || pieces.some(isMending);
  const named = pieces.filter((piece, i) => isNamed(piece) && !isOut(piece, i));
  const [goer, ...more] = named;
  const fits = pieces.every(
    (piece) =>
      isNamed(piece) || isMending(piece) || isFiller(piece.concepts) || isSaidOfGoing(piece),
  );
  // `not`, but before nobody: `Priya does not`.
  const denies = pieces.some(
    ({ concepts }, i) => concepts.has('not') && pieces[i + 1]?.member == null,
  );
  if (!goer || more.length > 0 || !isLeft || !fits || denies) return null;
  return {
    kind: 'covers',
    handles: [goer.member!],
    days: null,
    ...(isInstead ? { isInstead } : {}),
  };
}

function isMending({ text }: Piece): boolean {
  return mendingWords.has(text);
}

function isSaidOfGoing({ text, concepts }: Piece): boolean {
  return clauseJoiners.has(text) || saidOfGoing.some((concept) => concepts.has(concept));
}

const saidOfGoing = [
  'not',
  'instead-of',
  'do',
  'go',
  'cover',
  'it',
  'can',
  'will',
  'self',
] as const;
