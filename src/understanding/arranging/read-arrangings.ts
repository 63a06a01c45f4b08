import type { Context } from '../context.ts';
import { type Folded, fold } from '../reading/fold.ts';
import { type Lexicon, languageOf, lexiconFor } from '../reading/lexicon.ts';
import { tokenise } from '../reading/tokenise.ts';
import type { Arranging } from './arranging.ts';
import { asAsked } from './asks.ts';
import { ClauseView, isFiller } from './clause-view.ts';
import { type Clause, clausesOf } from './clauses.ts';
import { type Mendable, mended } from './mended.ts';
import { type Piece, piecesOf } from './piece.ts';
import { readClause } from './read-clause.ts';
import { withSwaps } from './swaps.ts';

export interface Arranged {
  readonly arrangings: readonly Arranging[];
  /** The words of the message that settle nothing; null: there are none. */
  readonly rest: string | null;
}

/** What the bot has asked of this member, so that a few words will do. */
export interface ArrangingAsked {
  readonly awayWhen: boolean;
  readonly whoCovers: boolean;
  /** An absence of theirs is settled that is not over. */
  readonly isAway: boolean;
  /** What was settled last and may be put right; null: nothing. */
  readonly mendable: Mendable | null;
}

/** Longer messages are not about who goes when. */
const longestRead = 400;

/**
 * Reads what a message settles among people: who is away, who goes, who takes what. What it does not
 * understand it leaves, whole clauses, to the reader of reports. Never throws.
 */
export function readArrangings(text: string, context: Context, asked: ArrangingAsked): Arranged {
  const nothing: Arranged = { arrangings: [], rest: text };
  if (text.length > longestRead) return nothing;
  const folded = fold(text);
  const lexicon = lexiconOf(folded, context);
  const pieces = piecesOf(folded.text, lexicon);
  // Most reports have no word of it.
  if (!asked.awayWhen && !asked.whoCovers && pieces.every(isAboutNothing)) return nothing;
  const putRight = asked.mendable && mended(pieces, context, asked.mendable);
  if (putRight) return { arrangings: [putRight], rest: null };
  const clauses = withSwaps(clausesOf(pieces));
  const arrangings: Arranging[] = [];
  const left: Clause[] = [];
  // `power was out, back on now`: what came back is what had failed.
  let isAboutSupply = false;
  for (const said of clauses) {
    const clause = asAsked(said, lexicon);
    const view = new ClauseView(clause, context);
    const last = arrangings.at(-1);
    // `Tomas can't on Friday, Priya goes`; but `I can't on Friday, Priya` speaks to her.
    const isInstead = last?.kind === 'cannot-go' && view.has('go', 'cover', 'do');
    const isCoverMeant =
      asked.whoCovers ||
      isInstead ||
      arrangings.some(({ kind }) => kind === 'covers' || kind === 'away');
    isAboutSupply ||= isOfSupply(clause, lexicon);
    const mayBeSupply = isAboutSupply || isBackOnOfSupply(clause, view, context);
    const isBareBack = mayBeSupply && view.has('back') && view.subject === null;
    const isTold = isReport(clause, lexicon) || isOfSupply(clause, lexicon) || isBareBack;
    const settled = isTold ? [] : readAll(clause, context, isCoverMeant);
    const first = withDaysOf(last, settled[0] ?? null) ?? answered(view, asked);
    const isStory = last?.kind === 'back' && view.has('how-it-went');
    if (first) arrangings.push(ofSystemBefore(first, left), ...settled.slice(1));
    else if (last && isDayOfReturn(last, view)) {
      const { kind, handle } = last;
      arrangings[arrangings.length - 1] = { kind, handle, on: view.said!.days.from };
    } else if (isStory) continue;
    else if (last && isReasonOf(last, view, left)) {
      arrangings[arrangings.length - 1] = { ...last, reason: wordsOf(clause, folded) };
    } else left.push(clause);
  }
  const isPlanChanged = arrangings.length === 0 && asked.isAway && saysPlanChanged(pieces);
  if (isPlanChanged) arrangings.push({ kind: 'away', handle: context.member.handle, days: null });
  if (arrangings.length === 0) return nothing;
  return { arrangings, rest: restOf(left, folded) };
}

function isAboutNothing({ concepts, member }: Piece): boolean {
  return concepts.size === 0 && member === null;
}

/** What a clause settles, for each of the days that it names: `I can do Sat and Sun`. */
function readAll(clause: Clause, context: Context, isCoverMeant: boolean): readonly Arranging[] {
  const view = new ClauseView(clause, context);
  const read = readClause(view, isCoverMeant);
  if (!read) return [];
  const others = view.daysBesides;
  if (others.length === 0 || !eachOfDays.includes(read.kind)) return [read];
  const more = others.map((pieces) =>
    readClause(new ClauseView({ ...clause, pieces }, context), isCoverMeant),
  );
  return more.every((each) => each?.kind === read.kind) ? [read, ...(more as Arranging[])] : [];
}

/** Kinds that hold for each of the days named. */
const eachOfDays: readonly Arranging['kind'][] = ['cannot-go', 'can-go', 'covers', 'claim'];

/** `the bench is low, I do it tonight`: what stands right before, in the same message. */
function ofSystemBefore(read: Arranging, left: readonly Clause[]): Arranging {
  if (read.kind !== 'claim' || !read.isIt) return read;
  const named = new Set(left.flatMap(({ pieces }) => pieces.flatMap(({ system }) => system ?? [])));
  return named.size === 1 ? { ...read, system: [...named][0]! } : read;
}

/** `we're coming home early, the 22nd`. */
function isDayOfReturn(
  last: Arranging,
  view: ClauseView,
): last is Extract<Arranging, { kind: 'back' }> {
  if (last.kind !== 'back' || last.on !== null || view.isQuestion || !view.said) return false;
  return view.rest.every(({ concepts, isStrange }) => !isStrange && concepts.size > 0);
}

/** `all done except the bench which I do tonight`: first of all it tells what was done. */
function isReport({ pieces }: Clause, { own }: Lexicon): boolean {
  const { done, except } = own.vocabulary.words;
  const says = (words: readonly string[]): boolean =>
    pieces.some(({ text }) => words.includes(text));
  return says(done) && says(except);
}

/** `heute Nacht Strom weg`: of the mains or a pump it is said that it failed, not who is away. */
function isOfSupply({ pieces }: Clause, { own }: Lexicon): boolean {
  const { words } = own.vocabulary;
  const supplies = [words.power, words.pump, words['air-pump'], words['air-stones'], words.venturi];
  return pieces.some(({ text }) => supplies.some((names) => names.includes(text)));
}

/** `back on now`, where something is out: in more words than one, and on no day. */
function isBackOnOfSupply({ pieces }: Clause, view: ClauseView, { outage }: Context): boolean {
  const isOfNow = view.said === null || pieces.some(({ concepts }) => concepts.has('today'));
  return outage !== undefined && isOfNow && pieces.length > 1;
}

/** `away until Friday, Tomas steps in`: on the days of the absence, or those on which somebody cannot go. */
function withDaysOf(last: Arranging | undefined, read: Arranging | null): Arranging | null {
  const isUndated = read?.kind === 'covers' && read.days === null;
  const isOfDays = last?.kind === 'away' || last?.kind === 'cannot-go';
  return isUndated && isOfDays ? { ...read, days: last.days } : read;
}

/** `I can't on Sunday, my sister is here`: plain words right after it say why. */
function isReasonOf(
  last: Arranging,
  view: ClauseView,
  left: readonly Clause[],
): last is Extract<Arranging, { kind: 'cannot-go' }> {
  if (last.kind !== 'cannot-go' || last.reason !== null || left.length > 0) return false;
  return !view.isQuestion && !view.hasFigures && view.systems.length === 0 && view.strangers > 0;
}

function wordsOf({ pieces }: Clause, folded: Folded): string {
  const from = folded.originAt(pieces[0]!.from);
  return folded.original.slice(from, folded.originAt(pieces.at(-1)!.to));
}

function lexiconOf(folded: Folded, { greenhouse, member }: Context): Lexicon {
  const tokens = tokenise(folded.text);
  return lexiconFor(greenhouse, languageOf(tokens, greenhouse, member.language));
}

/** `change of plan`, and no word of what changes. */
function saysPlanChanged(pieces: readonly Piece[]): boolean {
  const isAll = pieces.every((piece) => piece.stop === 'end' || saysNothing(piece));
  return isAll && pieces.some(({ concepts }) => concepts.has('plan-changed'));
}

/** Only days, where the bot has asked from when to when. */
function answered(view: ClauseView, { awayWhen }: ArrangingAsked): Arranging | null {
  if (!awayWhen || !view.said) return null;
  const isBare = view.rest.every(({ concepts, isStrange }) => !isStrange && concepts.size > 0);
  const { days, isEndOnly } = view.said;
  const end = isEndOnly ? { isEndOnly } : {};
  return isBare ? { kind: 'away', handle: view.me, days, ...end } : null;
}

/** What was not taken, as it was written; words that say nothing alone are dropped with it. */
function restOf(left: readonly Clause[], folded: Folded): string | null {
  const worth = left.filter(({ pieces }) => !pieces.every(saysNothing));
  if (worth.length === 0) return null;
  return worth
    .map((clause) => `${wordsOf(clause, folded)}${clause.isQuestion ? '?' : ''}`)
    .join('. ');
}

function saysNothing({ concepts, isStrange }: Piece): boolean {
  return !isStrange && isFiller(concepts);
}

/** Whether a message answers that it was one top-up, or two; null: neither. */
export function readCount(text: string, context: Context): 'one' | 'two' | null {
  if (text.length > longestRead) return null;
  const folded = fold(text);
  const pieces = piecesOf(folded.text, lexiconOf(folded, context)).filter(
    ({ stop }) => stop === null,
  );
  const isShort = pieces.every(
    ({ isStrange, concepts, number }) => !isStrange && (concepts.size > 0 || number !== null),
  );
  if (!isShort || pieces.length > 6) return null;
  const has = (concept: 'one-of-it' | 'two-of-it', count: number): boolean =>
    pieces.some(({ concepts, number }) => concepts.has(concept) || number === count);
  const one = has('one-of-it', 1);
  const two = has('two-of-it', 2);
  return one === two ? null : one ? 'one' : 'two';
}
