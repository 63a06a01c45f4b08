import { isLabel } from '../moods/clause-kinds.ts';
import type { Mood } from '../moods/mood.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  namesIn,
  type TermRange,
  takeRange,
} from '../reading/frame.ts';
import { isProbe, isUnknown, isWeekday, means, type Term } from '../reading/term.ts';
import type { DoneStatement, WorkNamed } from '../statement.ts';
import { isInPart, isToldDone, leaveInPart } from './chore-told.ts';
import { choreHinted, choreIn } from './chores.ts';
import { workJustMeant } from './done-as-meant.ts';
import { doneByYes } from './done-by-yes.ts';
import { systemsNamedIn, workNamed } from './work-named.ts';

/** `done`, `did the jars`, `done except gutters`, ✅, a chore told by its name. */
export function recogniseDone(frame: Frame, moods: readonly (Mood | null)[]): DoneStatement[] {
  const byYes = doneByYes(frame);
  if (byYes) return [byYes];
  const found = doneSaid(frame, moods);
  if (!isOnlyTick(frame)) return found;
  const isSign = CHECK_MARK.test(frame.folded.text) ? 'tick' : 'thumb';
  return found.map((one) => ({ ...one, isSign }));
}

function doneSaid(frame: Frame, moods: readonly (Mood | null)[]): DoneStatement[] {
  const found: DoneStatement[] = [];
  let leftOpen: readonly LeftOpen[] | null = null;
  for (let c = 0; c < frame.clauses.length; c++) {
    const clause = frame.clauses[c]!;
    const plain =
      inClause(
        frame,
        clause,
        (term, i) => term.kind !== 'mark' && !frame.taken[i] && !saysWhatWas(moods[i] ?? null),
      ).length === 0;
    if (!plain) continue;
    const exceptAt = exceptionAt(frame, clause);
    const told: TermRange = { from: clause.from, to: exceptAt ?? clause.to };
    const chore = choreIn(frame, told);
    const anchor = doneWord(frame, clause, chore !== null);
    if (chore !== null && isInPart(frame, c)) {
      leaveInPart(frame, c);
      continue;
    }
    if (
      chore !== null &&
      !clauseHas(frame, clause, 'did-not') &&
      (anchor !== null || isToldDone(frame, clause, chore))
    ) {
      found.push(statement(frame, [clause, clause], { systems: null, duty: null, chore }, []));
      takeRange(frame, clause.from, clause.to);
      continue;
    }
    if (anchor === null || !saysOnlyDone(frame, told) || isDenied(frame, clause, anchor)) continue;
    if (isOfOtherDay(frame, clause) || isLeftToAsk(frame, clause)) continue;
    const except: WorkNamed[] = [];
    if (exceptAt !== null) {
      const work = leftOut(frame, { from: exceptAt + 1, to: clause.to });
      if (work === null && !isException(frame, c + 1)) continue;
      if (work !== null) except.push(work);
    }
    if (isStrangerLeftOut(frame, c + 1)) continue;
    let last = c;
    const own = systemsNamedIn(frame, told);
    const first = own.length === 0 ? c : firstOfNames(frame, c);
    let systems = [
      ...frame.clauses.slice(first, c).flatMap((each) => systemsNamedIn(frame, each)),
      ...own,
    ];
    while (isMoreNames(frame, last + 1) || isException(frame, last + 1)) {
      last++;
      const clauseAfter = frame.clauses[last]!;
      if (exceptAt !== null || isException(frame, last)) except.push(leftOut(frame, clauseAfter)!);
      else systems = [...systems, ...systemsNamedIn(frame, clauseAfter)];
    }
    const duty = frame.places.has('check', told.from, told.to) ? 'check' : null;
    const isBare = systems.length === 0 && duty === null && except.length === 0;
    const justMeant = isBare ? workJustMeant(frame, first, moods) : null;
    // `need to buy batteries. all done` is of the list all the same.
    if (justMeant !== null && !(justMeant === 'unknown' && saysAll(frame, told))) {
      takeRange(frame, clause.from, clause.to);
      found.push(doneAsMeant(frame, clause, justMeant));
      continue;
    }
    if (systems.length === 0) {
      leftOpen ??= clausesLeftOpen(frame);
      for (const { at, work } of leftOpen) if (at < first || at > last) except.push(work);
    }
    const isRest = systems.length === 0 && clauseHas(frame, told, 'remainder');
    if (isRest) except.push(...workBeside(frame, first, last));
    takeRange(frame, frame.clauses[first]!.from, frame.clauses[last]!.to);
    const work: WorkNamed = { systems: systems.length > 0 ? systems : null, duty, chore: null };
    const one = statement(frame, [frame.clauses[first]!, frame.clauses[last]!], work, except);
    found.push(isRest ? { ...one, isRest } : one);
    c = last;
  }
  return found;
}

/** `Olli has done the buckets`: whoever did it, it is done. */
function saysWhatWas(mood: Mood | null): boolean {
  return mood === null || mood === 'negation' || mood === 'others';
}

/** `did the jars yesterday`: not what was asked for today. */
function isOfOtherDay(frame: Frame, clause: Clause): boolean {
  return (
    clauseHas(frame, clause, 'yesterday', 'day-before-yesterday', 'week', 'last') ||
    frame.places.hasWhere(isWeekday, clause.from, clause.to)
  );
}

/** `has Olli done the jars` asks, with a sign or without; `Olli was done at 8` says nothing of the work. */
function isLeftToAsk(frame: Frame, clause: Clause): boolean {
  const [first, second] = [frame.terms[clause.from], frame.terms[clause.from + 1]];
  if (means(first, 'has', 'is-it') && isSomebodyElse(second)) return true;
  const isOfOther = frame.places.hasWhere(isSomebodyElse, clause.from, clause.to);
  return isOfOther && namesIn(frame, clause).length === 0 && !clauseHas(frame, clause, 'all');
}

function isSomebodyElse(term: Term | undefined): boolean {
  return means(term, 'member', 'third-person', 'another-person');
}

/** `couldn't do the jars, rest done`: the systems that the message tells of by themselves are not the rest. */
function workBeside(frame: Frame, first: number, last: number): WorkNamed[] {
  const [from, to] = [frame.clauses[first]!.from, frame.clauses[last]!.to];
  const systems = frame.terms.flatMap((term, i) =>
    term.kind === 'name' && (i < from || i >= to) ? term.systems : [],
  );
  return systems.length === 0 ? [] : [{ systems: [...new Set(systems)], duty: null, chore: null }];
}

/** Where a clause goes over to what is left out: `done except …`, `everything but not …`. */
function exceptionAt(frame: Frame, clause: Clause): number | null {
  return inClause(frame, clause, (term) => means(term, 'except', 'not'))[0] ?? null;
}

/** The work that an exception names; null: it names none, or tells an amount. */
export function leftOut(frame: Frame, range: TermRange): WorkNamed | null {
  const terms = frame.terms.slice(range.from, range.to);
  if (terms.some((term) => isMeasure(term))) return null;
  const work = workNamed(frame, range);
  if (work?.chore || work?.duty) return work;
  const chore = choreHinted(frame, range);
  if (chore !== null) return { systems: null, duty: null, chore };
  // `everything except the stick thing`: what is done with a probe by itself.
  const isOfProbe = !work && frame.places.hasWhere(isProbe, range.from, range.to);
  return isOfProbe ? { systems: null, duty: 'calibration', chore: null } : work;
}

function statement(
  frame: Frame,
  [first, last]: readonly [Clause, Clause],
  work: WorkNamed,
  except: readonly WorkNamed[],
): DoneStatement {
  const [from, to] = [
    frame.terms[first.from]!.from,
    frame.terms[Math.max(first.from, last.to - 1)]!.to,
  ];
  const isAll = saysAll(frame, { from: first.from, to: last.to });
  return {
    kind: 'done',
    ...work,
    except,
    ...(isAll ? { isAll } : {}),
    ...(!isAll && isOfOne(frame, work, { from: first.from, to: last.to }) ? { isOne: true } : {}),
    span: { from, to },
    because: ['done'],
  };
}

/** `must top up the bench. done`: that, and no more of what is open; what it is, is asked where it is not known. */
function doneAsMeant(frame: Frame, clause: Clause, meant: WorkNamed | 'unknown'): DoneStatement {
  const none: WorkNamed = { systems: null, duty: null, chore: null };
  const span = { from: frame.terms[clause.from]!.from, to: frame.terms[clause.to - 1]!.to };
  const because = ['done', 'meant'];
  return meant === 'unknown'
    ? { kind: 'done', ...none, except: [], isOne: true, span, because }
    : { kind: 'done', ...meant, except: [], span, because };
}

/** `done that`: one thing was spoken of, and not the list. */
function isOfOne(frame: Frame, work: WorkNamed, range: TermRange): boolean {
  const namesNone = work.systems === null && work.duty === null && work.chore === null;
  return namesNone && says(frame, range, 'that-one');
}

/** `did it all`, `everything done`. */
function saysAll(frame: Frame, range: TermRange): boolean {
  return says(frame, range, 'all');
}

/** The word may stand within a phrase. */
function says(
  { terms, lexicon }: Frame,
  { from, to }: TermRange,
  concept: 'all' | 'that-one',
): boolean {
  const words = lexicon.own.vocabulary.words[concept];
  return terms
    .slice(from, to)
    .some(({ text }) => text.split(' ').some((word) => words.includes(word)));
}

/** A thumb may as well say no more than `seen`. */
const CHECK_MARK = /[\u2705\u2713\u2714\u2611]/u;

/** A thumb or a tick and nothing else. */
export function isOnlyTick({ terms }: Frame): boolean {
  const said = terms.filter(({ kind }) => kind !== 'stop' && kind !== 'mark');
  return said.length > 0 && said.every((term) => means(term, 'tick'));
}

function doneWord(frame: Frame, clause: Clause, isChore: boolean): number | null {
  const named =
    isChore ||
    namesIn(frame, clause).length > 0 ||
    clauseHas(frame, clause, 'all', 'both', 'pronoun', 'check', 'remainder');
  return (
    inClause(
      frame,
      clause,
      (term) =>
        means(term, 'done', 'tick') ||
        (means(term, 'did') && named) ||
        (means(term, 'except') && clauseHas(frame, clause, 'all')),
    )[0] ?? null
  );
}

/** Whether the work that is answered is of two systems: then `did both` is of those. */
export function asksOfTwo({ context: { repliedTo, roundDuties } }: Frame): boolean {
  const duties = repliedTo?.kind === 'round' ? repliedTo.duties : (roundDuties ?? []);
  return new Set(duties.map(({ system }) => system)).size === 2;
}

/** `not done yet`, `none of it done`, `nearly done`, `done nothing`: the word is said, and the deed is not. */
function isDenied(frame: Frame, clause: Clause, anchor: number): boolean {
  for (let i = clause.from; i < anchor; i++) {
    const term = frame.terms[i];
    const lacks = means(term, 'not', 'did-not', 'no', 'said-no', 'about') && !means(term, 'except');
    if (lacks || term?.kind === 'measure') return true;
  }
  const after = frame.terms[anchor + 1];
  return (
    means(after, 'not', 'no', 'did-not') &&
    !frame.terms.slice(anchor + 1, clause.to).some(({ kind }) => kind === 'name')
  );
}

/** Nothing beside it but names and small words: `did the lids of the jars` is not the duty. */
function saysOnlyDone(frame: Frame, { from, to }: TermRange): boolean {
  const isCheck = frame.places.has('check', from, to);
  for (let i = from; i < to; i++) {
    const term = frame.terms[i]!;
    if (frame.timed[i] || term.kind === 'name' || term.kind === 'mark') continue;
    if (isCheck && !frame.taken[i] && (isLabel(term) || means(term, 'check'))) continue;
    if (frame.taken[i] || isLabel(term) || !isSmall(term)) return false;
  }
  return true;
}

/** Words that stand beside what is done and tell nothing of their own. */
export function isSmall(term: Term): boolean {
  return means(
    term,
    'done',
    'did',
    'tick',
    'article',
    'filler',
    'all',
    'remainder',
    'both',
    'pronoun',
    'place',
    'with',
    'except',
    'not',
    'but',
    'today',
    'this',
    'morning',
    'self',
    'thanks',
    'job',
    'due',
    'yes',
    'just-now',
    'now',
    'greeting',
    'member',
    'third-person',
    'another-person',
    'has',
    'each',
    'link',
    'chatter',
  );
}

/** `jars and row done`, `jars, row and bench done`: the clause that the list of names begins with. */
function firstOfNames(frame: Frame, c: number): number {
  let first = c;
  let isList = false;
  while (first > 0) {
    const { opens } = frame.clauses[first]!;
    const before = frame.clauses[first - 1]!;
    if (opens !== 'and' && !(isList && opens === 'comma')) break;
    const said = { ...before, from: afterSubject(frame, before) };
    if (namesIn(frame, before).length === 0 || !isOnlyNames(frame, said)) break;
    isList = true;
    first -= 1;
  }
  return first;
}

/** `Tom hat Wanne und Rinne gemacht`: behind whoever did it. */
function afterSubject(frame: Frame, clause: Clause): number {
  const [first, second] = [frame.terms[clause.from], frame.terms[clause.from + 1]];
  return isSomebodyElse(first) && means(second, 'has') ? clause.from + 2 : clause.from;
}

interface LeftOpen {
  /** Index of the clause. */
  readonly at: number;
  readonly work: WorkNamed;
}

/** `all done, bench tonight`, `did all. Didn't turn the crate`: what is to come, or was not done, stays open. */
function clausesLeftOpen(frame: Frame): readonly LeftOpen[] {
  return frame.clauses.flatMap((clause, at): LeftOpen[] => {
    const isToCome = clauseHas(frame, clause, 'tonight', 'tomorrow', 'intention');
    if (!isToCome && !isException(frame, at)) return [];
    const work = leftOut(frame, clause);
    return work === null ? [] : [{ at, work }];
  });
}

function isOnlyNames(frame: Frame, clause: TermRange): boolean {
  return frame.terms
    .slice(clause.from, clause.to)
    .every((term) => term.kind === 'name' || means(term, 'article', 'both', 'filler', 'place'));
}

/** `did the jars and the bench`: the next clause holds a name and nothing else. */
function isMoreNames(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (!clause || (clause.opens !== 'and' && clause.opens !== 'comma')) return false;
  if (namesIn(frame, clause).length === 0) return false;
  if (!isOnlyNames(frame, clause)) return false;
  return clause.opens === 'and' || frame.clauses.slice(c + 1).some(({ opens }) => opens === 'and');
}

/** `all done but the gutters`, where nothing is called so: what is left open nobody knows. */
function isStrangerLeftOut(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (clause?.opens !== 'but' || clause.to - clause.from > mostOfStranger) return false;
  const said = frame.terms.slice(clause.from, clause.to);
  return (
    said.some(isThing) && said.every((term) => isThing(term) || means(term, 'article', 'size'))
  );
}

function isThing(term: Term): boolean {
  return isUnknown(term) || means(term, 'numbered', 'vessel', 'counted');
}

/** `the old gutters`. */
const mostOfStranger = 3;

/**
 * `done, except the gutters`, `did all, not the jars`, `all done, crate not turned`, `done but no checks`. What
 * more it says does not matter: work that is left open is asked for again.
 */
function isException(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c];
  if (!clause) return false;
  const denies = clauseHas(frame, clause, 'except', 'not', 'did-not', 'no', 'said-no');
  if ((!denies && clause.opens !== 'but') || leftOut(frame, clause) === null) return false;
  return inClause(frame, clause, (_, i) => frame.taken[i] === true && !frame.timed[i]).length === 0;
}
