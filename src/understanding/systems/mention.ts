import type { SystemId } from '../../greenhouse/system.ts';
import { isDeed, isLabel, isPlainDeed, tellsOfItsOwn } from '../moods/clause-kinds.ts';
import { isBare } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, isName } from '../reading/frame.ts';
import { isCrop, isUnknown, means, type NameTerm, type Term } from '../reading/term.ts';
import { bothNamedBefore } from './both-named.ts';
import type { FactsInOrder } from './facts-in-order.ts';

/** One naming of one or more systems that stand together: `the bench and the jars`, `all`. */
export interface Mention {
  readonly systems: readonly SystemId[];
  /** First and last term. */
  readonly from: number;
  readonly to: number;
  /** Clause of its first and of its last term. */
  readonly clause: number;
  readonly lastClause: number;
  /** Fits several, or is too short a slip: to be asked about. */
  readonly unsure: boolean;
  readonly written: string;
  readonly slip: boolean;
  /** After in, on, for, of, from, into, to. */
  readonly afterPlace: boolean;
}

/** All namings in the order they stand, those that a list joins as one. */
export function mentionsOf(frame: Frame, facts: FactsInOrder): Mention[] {
  const mentions: Mention[] = [];
  let excepted = -1;
  const leftOut = new Set<number>();
  frame.terms.forEach((term, i) => {
    if (i <= excepted) return;
    const allBut = allExcept(frame, i);
    if (allBut) {
      mentions.push(allBut);
      excepted = allBut.to;
      for (const name of frame.places.within(isName, i, allBut.to + 1)) leftOut.add(name);
    } else if (term.kind === 'name') {
      const last = mentions.at(-1);
      // `jars instead of the tub ph 5.7`: the tub got none of it.
      const isAlone = tellsNothing(frame, i, facts);
      if ((last && isReplaced(frame, i)) || (isAlone && isDenied(frame, i))) return;
      if (isLeftOut(frame, i) || (isAlone && isLeftOutWith(frame, i, leftOut))) {
        leftOut.add(i);
        takeOutOfAll(frame, mentions, term);
        if (isAlone) return;
      }
      if (last && joins(frame, last, i, facts))
        mentions[mentions.length - 1] = joined(frame, last, term, i);
      else mentions.push(mentionOf(frame, term, i));
    } else if (isAll(frame, i)) {
      mentions.push(allSystems(frame, i));
      for (const left of leftOutBefore(frame, i)) takeOutOfAll(frame, mentions, left);
    } else if (means(term, 'both')) {
      const both = bothNamedBefore(frame, i);
      if (both) mentions.push(both);
    }
  });
  return mentions;
}

function isReplaced(frame: Frame, i: number): boolean {
  const before = means(frame.terms[i - 1], 'article') ? i - 2 : i - 1;
  return means(frame.terms[before], 'instead-of') && !means(frame.terms[before], 'not', 'link');
}

/** Nothing is told behind it before the next name: `not the jars`, and not `not the jars, they are full`. */
function tellsNothing({ places }: Frame, i: number, facts: FactsInOrder): boolean {
  const next = facts.after(i);
  if (next?.inTurn !== undefined) return true;
  return next === undefined || places.nextWhere(isName, i + 1) < next.at;
}

/** `topped up the bench 20 l, not the jars or the dwc`: a clause of its own says no more than that they got none of it. */
function isDenied(frame: Frame, i: number): boolean {
  let lead = i - 1;
  while (i - lead <= mostBetween && means(frame.terms[lead], 'article', 'place')) lead--;
  if (means(frame.terms[lead], 'not')) return !means(frame.terms[lead], 'link');
  const { from, to } = frame.clauses[frame.clauseOf[i]!]!;
  return frame.places.has('not', from, i) && !frame.places.hasWhere(tellsMoreThanDenied, from, to);
}

function tellsMoreThanDenied(term: Term): boolean {
  return term.kind !== 'name' && !means(term, 'not', 'article', 'place', 'filler', 'or');
}

/** `all at ph 5.8 except the gutters`, `except the gutters all got 5 l`: it follows the word that leaves it out. */
export function isLeftOut({ terms }: Frame, i: number): boolean {
  let before = i - 1;
  while (means(terms[before], 'article', 'place') && !means(terms[before], 'except')) before--;
  if (means(terms[before], 'except')) return true;
  // `everywhere but the gutters`: `but` cuts as well.
  const joint = terms[before];
  if (means(joint, 'only-this') && isValueOf(terms, i)) return terms.slice(0, before).some(saysAll);
  return joint?.kind === 'stop' && joint.cut === 'but' && means(terms[before - 1], 'all');
}

function saysAll(term: Term): boolean {
  return means(term, 'all');
}

/** `jars 6.4`, `jars are 6.4`: a number with no unit straight behind the name. */
function isValueOf(terms: readonly Term[], name: number): boolean {
  const value = terms[means(terms[name + 1], 'link') ? name + 2 : name + 1];
  return value?.kind === 'measure' && value.measure.unit === null;
}

/** `all at ph 5.8 except the gutters and the jars`: named together with one that is left out; `leftOut`: the names before that are. */
function isLeftOutWith(frame: Frame, i: number, leftOut: ReadonlySet<number>): boolean {
  const { terms } = frame;
  let before = i - 1;
  while (means(terms[before], 'article', 'place')) before--;
  const joint = terms[before];
  const { from, to } = frame.clauses[frame.clauseOf[i]!]!;
  const isListed =
    joint !== undefined && isComma(joint) && !frame.places.hasWhere(tellsMoreThanDenied, from, to);
  const isJoined =
    isListed || (joint?.kind === 'stop' && joint.cut === 'and') || means(joint, 'or');
  return isJoined && leftOut.has(before - 1);
}

/** The names that the clause leaves out before it says `all`. */
function leftOutBefore(frame: Frame, i: number): NameTerm[] {
  const { from } = frame.clauses[frame.clauseOf[i]!]!;
  return frame.terms
    .slice(from, i)
    .flatMap((term, n) => (term.kind === 'name' && isLeftOut(frame, from + n) ? [term] : []));
}

/** What was told of all before is not told of the system left out. */
function takeOutOfAll(frame: Frame, mentions: Mention[], { systems }: NameTerm): void {
  const n = mentions.findLastIndex(({ from }) => means(frame.terms[from], 'all'));
  const all = mentions[n];
  if (all)
    mentions[n] = { ...all, systems: all.systems.filter((system) => !systems.includes(system)) };
}

/** `everything except the jars`: all but those named straight after. */
function allExcept(frame: Frame, i: number): Mention | null {
  if (!means(frame.terms[i], 'all')) return null;
  let j = i + 1;
  if (!means(frame.terms[i], 'except')) {
    // `all of them but the jars`.
    while (
      means(frame.terms[j], 'of', 'of-it', 'pronoun', 'article', 'counted') &&
      !means(frame.terms[j], 'except') &&
      j < i + mostBetween
    )
      j++;
    const lead = frame.terms[j];
    if (!means(lead, 'except') && !(lead?.kind === 'stop' && lead.cut === 'but')) return null;
    j++;
  }
  const left = new Set<SystemId>();
  let to = i;
  for (; j < frame.terms.length; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'name') {
      for (const system of term.systems) left.add(system);
      to = j;
    } else if (!means(term, 'article', 'place') && !(term.kind === 'stop' && term.cut === 'and'))
      break;
  }
  if (left.size === 0) return null;
  const all = allSystems(frame, i);
  return {
    ...all,
    systems: all.systems.filter((system) => !left.has(system)),
    to,
    lastClause: frame.clauseOf[to]!,
  };
}

function mentionOf(frame: Frame, term: NameTerm, i: number): Mention {
  const clause = frame.clauseOf[i]!;
  return {
    systems: term.systems,
    from: i,
    to: i,
    clause,
    lastClause: clause,
    unsure: !term.sure || isOneOfMany(frame, i),
    written: term.text,
    slip: term.slip,
    afterPlace: isAfterPlace(frame, i),
  };
}

/** `row 3 of the tomatoes`: counted among others of its kind, and of which system nobody says. */
function isOneOfMany({ terms }: Frame, i: number): boolean {
  const number = terms[i + 1];
  if (!isMeasure(number) || !isBare(number.measure) || !number.measure.whole) return false;
  if (!means(terms[i + 2], 'of') || means(terms[i + 2], 'at')) return false;
  const many = terms[means(terms[i + 3], 'article') ? i + 4 : i + 3];
  return isCrop(many) || means(many, 'counted');
}

/** `in all of both the …`: no more small words than these stand between a preposition and a name. */
const mostBetween = 5;

function isAfterPlace(frame: Frame, i: number): boolean {
  let j = i - 1;
  while (
    i - j <= mostBetween &&
    means(frame.terms[j], 'article', 'both', 'each', 'all') &&
    !means(frame.terms[j], 'place')
  )
    j--;
  return means(frame.terms[j], 'place');
}

function joined(frame: Frame, last: Mention, term: NameTerm, i: number): Mention {
  return {
    ...last,
    systems: [...new Set([...last.systems, ...term.systems])],
    to: i,
    lastClause: frame.clauseOf[i]!,
    // `jars gutters 3 l`: one of them, or both.
    unsure:
      last.unsure ||
      !term.sure ||
      (i === last.to + 1 && !listGoesOn(frame, i)) ||
      isOneOfTwo(frame, last, term, i),
    written: `${last.written}, ${term.text}`,
  };
}

/** `ph 6.0, bench or gutters`: one of them, and nobody knows which; `couldn't do the jars or the gutters` is of both. */
function isOneOfTwo(
  { places, clauses }: Frame,
  last: Mention,
  { systems }: NameTerm,
  i: number,
): boolean {
  if (!places.has('or', last.to + 1, i) || systems.join() === last.systems.join()) return false;
  const { from } = clauses[last.clause]!;
  return !denials.some((denial) => places.has(denial, from, last.from));
}

const denials = ['not', 'did-not', 'no', 'could-not', 'could'] as const;

/** Only `and`, articles and the like between two names, and not a value before one and after the other. */
function joins(frame: Frame, last: Mention, i: number, facts: FactsInOrder): boolean {
  const isThird = last.unsure && last.from < last.to && i === last.to + 1;
  if ((last.unsure && !isThird) || frame.terms[i]?.kind !== 'name') return false;
  // `two cans into the bench and one in the buckets`: each has its own.
  if (facts.hasBetween(last.to, i)) return false;
  let ands = 0;
  for (let j = last.to + 1; j < i; j++) {
    const term = frame.terms[j]!;
    if (term.kind === 'stop' && term.cut === 'and') ands++;
    else if (term.kind === 'mark' && (term.text === '/' || term.text === '+')) ands++;
    else if (isComma(term)) {
      if (!listGoesOn(frame, i)) return false;
    } else if (!means(term, 'article', 'place', 'both', 'filler', 'each', 'or')) return false;
    else if (means(term, 'or')) ands++;
  }
  const comma = frame.places.hasWhere(isComma, last.to + 1, i);
  const sideBySide =
    i === last.to + 1 && (listGoesOn(frame, i) || areCrammed(frame, last, i, facts));
  if (ands === 0 && !comma && !sideBySide) return false;
  const clause = frame.clauses[last.clause]!;
  const next = frame.clauses[frame.clauseOf[i]!]!;
  if (next !== clause && isObject(frame, clause, last) && opensAnew(frame, next, i, clause))
    return false;
  if (!last.afterPlace) return true;
  const before = facts.hasBetween(clause.from - 1, last.from);
  return !(before && facts.hasBetween(i, next.to));
}

/** Two names with nothing between them, and nothing told before. */
function areCrammed(frame: Frame, last: Mention, i: number, facts: FactsInOrder): boolean {
  const [first, second] = [frame.terms[last.to], frame.terms[i]];
  const { from } = frame.clauses[last.clause]!;
  return (
    first?.kind === 'name' &&
    second?.kind === 'name' &&
    !first.everyday &&
    !second.everyday &&
    first.systems.join() !== second.systems.join() &&
    !facts.hasBetween(from - 1, last.from)
  );
}

/** `couldn't do the jars`: a verb stands before the name. */
function isObject(frame: Frame, clause: Clause, { from }: Mention): boolean {
  return frame.terms
    .slice(clause.from, from)
    .some((term) => isDeed(term) || means(term, 'did-not', 'did', 'could'));
}

/** `… and bucket row water 21C`: after the second name something is told that is no amount of the verb before. */
function opensAnew(frame: Frame, clause: Clause, i: number, before: Clause): boolean {
  const after = frame.terms.slice(i + 1, clause.to);
  return (
    after.some((term) => isLabel(term) || (isDeed(term) && !isPlainDeed(term))) ||
    tellsOfItsOwn(frame, { ...clause, from: i + 1 }, before)
  );
}

/** After a comma the list must go on to an `and`: `dwc, nft and jars`. */
function listGoesOn(frame: Frame, i: number): boolean {
  const { places, terms } = frame;
  const end = places.nextWhere(endsList, i + 1);
  const term = terms[end];
  if (term?.kind !== 'stop' || term.cut !== 'and') return false;
  return terms[places.nextWhere(isNoPlaceWord, end + 1)]?.kind === 'name';
}

function endsList(term: Term): boolean {
  return term.kind !== 'name' && !isComma(term) && isNoPlaceWord(term);
}

function isNoPlaceWord(term: Term): boolean {
  return !means(term, 'article', 'place');
}

function isComma(term: Term): boolean {
  return term.kind === 'stop' && term.cut === 'comma';
}

/** `all` and `everything` as the things spoken of, not `all good` or `hi all`. */
function isAll(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  // `both ph 6.0`, where there are no more than two.
  const isBoth = means(term, 'both') && isBothSystems(frame, i);
  if (!means(term, 'all') && !isBoth) return false;
  const [before, after] = [frame.terms[i - 1], frame.terms[i + 1]];
  let next = i + 1;
  // `20 ml A and 3 ml ph down, all in the buckets`: the whole of it.
  while (means(frame.terms[next], 'article', 'of', 'place')) next++;
  if (frame.terms[next]?.kind === 'name' || isSaidOfName(frame, i)) return false;
  return (
    (!means(before, 'greeting', 'thanks', 'not') &&
      !means(after, 'done', 'tick', 'judged', 'solution', 'reservoir', 'except')) ||
    (means(after, 'full', 'empty', 'both') && !means(before, 'greeting'))
  );
}

/** Of a greenhouse of two systems; `both boxes` may be anything. */
function isBothSystems({ context, terms }: Frame, i: number): boolean {
  const thing = terms[i + 1];
  const isOfThings = isUnknown(thing) || means(thing, 'vessel', 'counted', 'plant-part');
  return context.greenhouse.systems.length === 2 && !isOfThings;
}

/** `dwc all checked`, `the jars are all fine`: the whole of what was just named. */
function isSaidOfName(frame: Frame, i: number): boolean {
  let before = i - 1;
  while (
    i - before <= mostBetween &&
    means(frame.terms[before], 'filler', 'link', 'pronoun') &&
    !means(frame.terms[before], 'and')
  )
    before--;
  return frame.terms[before]?.kind === 'name' && !isLeftOut(frame, before);
}

function allSystems(frame: Frame, i: number): Mention {
  const clause = frame.clauseOf[i]!;
  const systems = frame.context.greenhouse.systems.map(({ id }) => id);
  const count = countIn(frame, i);
  return {
    systems,
    from: i,
    to: i,
    clause,
    lastClause: clause,
    // `all three` of four: which of them nobody knows.
    unsure: count !== null && count !== systems.length,
    written: frame.terms[i]!.text,
    slip: false,
    afterPlace: isAfterPlace(frame, i),
  };
}

/** How many `all three` are. */
function countIn({ terms, lexicon }: Frame, i: number): number | null {
  const last = terms[i]!.text.split(' ').at(-1)!;
  return lexicon.own.phrases.get([last])?.number ?? null;
}
