import { isBare, isVolume } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isName,
  isPadding,
  isVolumeTerm,
  nextIn,
  previousIn,
} from '../reading/frame.ts';
import { isCrop, isMark, isUnknown, means, type Term } from '../reading/term.ts';
import { productAt } from '../recognisers/products.ts';
import { namesOthers } from '../systems/names-others.ts';
import { hasPastDeed, isDeed, isLabel, isPlainDeed, opensWithName } from './clause-kinds.ts';
import { perhapsTold, saysDone, toldAfterComma, toldInMessage } from './messages.ts';
import type { Mood } from './mood.ts';
import { endOfMessage, endOfOrder, orderIn } from './orders.ts';
import { saysSender } from './says-sender.ts';
import { onlyReady } from './set-ready.ts';

export type Marker = (from: number, to: number, mood: Mood) => void;

/**
 * How far it goes on that something is only supposed or heard: to the sentence's end, but not over a `but`, nor
 * over a clause that leads off with a system's name and a value of it where none had been named. A clause that
 * speaks of nothing in the greenhouse (`if you ask me`) colours no other. `isMarked`: a clause that is coloured by
 * a word of its own goes on by itself.
 */
export function endOfTalkOf(
  frame: Frame,
  clause: Clause,
  isMarked: (clause: Clause) => boolean,
): number {
  const said = frame.terms.slice(clause.from, clause.to);
  const isEmpty = !said.some(
    (term) =>
      term.kind === 'name' ||
      term.kind === 'measure' ||
      isLabel(term) ||
      isDeed(term) ||
      means(term, 'hearsay', 'says', 'according-to'),
  );
  // `the cat says hello`: what is passed on is a greeting, and nothing more.
  const isGreeting =
    said.some((term) => means(term, 'greeting')) &&
    !said.some((term) => term.kind === 'measure' || isLabel(term));
  // `Marcus asked if it was 6.5, it was 6.1`: what was asked goes no further.
  const isAsked = clauseHas(frame, clause, 'condition') && clauseHas(frame, clause, 'says');
  if (isEmpty || isGreeting || isAsked) return clause.to;
  const names = said.some((term) => term.kind === 'name');
  // `Jonas says, the dwc has 5.5`, `if it drops, add 10 ml`: the first to follow may be what it is about.
  const isIf = clauseHas(frame, clause, 'condition');
  let isTold = isIf ? clauseHas(frame, clause, 'intention') : clauseTells(frame, clause);
  let to = clause.to;
  const c = frame.clauseOf[clause.from] ?? frame.clauses.length - 1;
  for (let n = c + 1; n < frame.clauses.length; n++) {
    const next = frame.clauses[n]!;
    if (next.sentence !== clause.sentence || next.opens === 'but' || isMarked(next)) break;
    const leadsOff = isTold && !names && opensWithName(frame, next) && clauseTells(frame, next);
    if (leadsOff || (isIf ? readsOneself(frame, next) : tellsOneself(frame, next))) break;
    to = next.to;
    isTold = true;
  }
  return to;
}

/** `…, i did the dwc with 10 l`, `…, measured 5.9 myself`: what one did oneself is no hearsay. */
function tellsOneself(frame: Frame, clause: Clause): boolean {
  const [first] = frame.terms.slice(clause.from, clause.to);
  const isOwn = means(first, 'self') && !means(first, 'filler');
  const isAlone =
    clauseHas(frame, clause, 'oneself') && !clauseHas(frame, clause, 'third-person', 'member');
  return (isOwn || isAlone) && clauseTells(frame, clause);
}

/** `…, ich messe 5,8 pH`: a value that was read, and nothing that would be done about it. */
function readsOneself(frame: Frame, clause: Clause): boolean {
  const isToDo = clauseHas(
    frame,
    clause,
    'add',
    'add-plainly',
    'top-up',
    'fill',
    'change',
    'intention',
  );
  const isLabelled = frame.places.hasWhere(isLabel, clause.from, clause.to);
  return isLabelled && !isToDo && !hasProductIn(frame, clause) && tellsOneself(frame, clause);
}

function clauseTells(frame: Frame, clause: Clause): boolean {
  return frame.terms.slice(clause.from, clause.to).some(({ kind }) => kind === 'measure');
}

function hasProductIn(frame: Frame, clause: Clause): boolean {
  if (frame.places.hasWhere(isProduct, clause.from, clause.to)) return true;
  // `used 20 ml of a`: by its short name.
  for (let i = clause.from; i < clause.to; i++) if (productAt(frame, i) !== null) return true;
  return false;
}

export function hasProduct(frame: Frame, i: number): boolean {
  const term = frame.terms[i];
  return term !== undefined && isProduct(term);
}

function isProduct(term: Term): boolean {
  return term.kind === 'word' && (term.word.product !== null || term.word.anyProduct);
}

export function hear(frame: Frame, clause: Clause, mark: Marker): void {
  const isHeard = (other: Clause) => isPassedOn(frame, other) || isQuoted(frame, other);
  // `Olli asked me to put 5 l in the jars and I did`: it may well be done.
  const isObeyed = mayBeOrder(frame, clause) && saysDone(frame, clause);
  const isManner = isOnlyManner(frame, clause);
  if (isHeard(clause) && !(isManner && hasPastDeed(frame, clause.from, clause.to)))
    mark(
      clause.from,
      isManner ? clause.to : endOfTalkOf(frame, clause, isHeard),
      isObeyed ? 'queried' : 'hearsay',
    );
  if (clauseHas(frame, clause, 'long-ago'))
    mark(clause.from, endOfLongAgo(frame, clause), 'hearsay');
  if (wasAtSomeTime(frame, clause)) mark(clause.from, clause.to, 'queried');
  const order = orderIn(frame, clause);
  const markOrder = (from: number, to: number, isInDoubt: boolean) => {
    mark(from, to, isInDoubt ? 'queried' : 'hearsay');
    const perhaps = perhapsTold(frame, to);
    if (perhaps !== null) mark(to, perhaps, 'queried');
  };
  if (order !== null) markOrder(order, endOfOrder(frame, clause), saysDone(frame, clause));
  const told = toldInMessage(frame, clause) ?? toldAfterComma(frame, clause);
  if (told !== null) markOrder(told.from, endOfMessage(frame, clause), told.isInDoubt);
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i];
    if (means(term, 'extreme') && !leadsToMark(frame, i))
      mark(clause.from, clause.to, 'not-a-reading');
    if (means(term, 'member', 'third-person') && i === clause.from && isSubject(frame, clause, i))
      mark(clause.from, endOfAmounts(frame, clause), 'others');
    if (isDoneByAnother(frame, clause, i)) mark(clause.from, endOfAmounts(frame, clause), 'others');
  }
}

/** `someone else has topped up the jars`, `die Wanne hat schon Jonas aufgefüllt`: whoever did it stands anywhere. */
function isDoneByAnother(frame: Frame, clause: Clause, i: number): boolean {
  const term = frame.terms[i];
  if (!means(term, 'another-person', 'member') || saysSender(frame, term)) return false;
  if (clauseHas(frame, clause, 'intention', 'could-not')) return false;
  // `hat schon jemand die Wanne aufgefüllt` asks.
  if (means(term, 'who') && i === clause.from) return false;
  if (means(term, 'another-person')) return hasPastDeed(frame, clause.from, clause.to);
  const isLed = means(frame.terms[i - 1], 'with', 'from', 'for-somebody', 'to');
  // `had Priya add 10 l`.
  if (means(frame.terms[i - 1], 'has') && isPlainDeed(frame.terms[i + 1])) return true;
  const isTold = clauseHas(frame, clause, 'has') && isDeed(frame.terms[clause.to - 1]);
  return i > clause.from && !isLed && isTold && !clauseHas(frame, clause, 'self');
}

/** `grandad had 5.7 in his`; but `for grandad`, `with my sister` is one's own work. */
function isPassedOn(frame: Frame, clause: Clause): boolean {
  if (isByWord(frame, clause)) return true;
  if (saysWhoWrites(frame, clause)) return false;
  return inClause(frame, clause, (term) => means(term, 'hearsay')).some((i) => {
    const before = previousIn(frame, clause, i, (term) =>
      means(term, 'article', 'pronoun', 'self'),
    );
    if (isOfSystemNamed(frame, clause, i) || isOnlyWhy(frame, clause, i)) return false;
    return before < 0 || !means(frame.terms[before], 'for-somebody');
  });
}

/** `fed the buckets their can`: of the system that was named, and of nobody else. */
function isOfSystemNamed(frame: Frame, clause: Clause, i: number): boolean {
  if (!means(frame.terms[i], 'of-its-own')) return false;
  return frame.places.hasWhere(isName, clause.from, i);
}

/** `her hands are wet: dwc ph 5.8`: how it is with somebody, and no word of a value before the clause or its colon ends. */
function isOnlyWhy({ terms, places }: Frame, clause: Clause, i: number): boolean {
  const isThing = isUnknown(terms[i + 1]) || means(terms[i + 1], 'safety');
  if (!means(terms[i], 'of-its-own') || !isThing) return false;
  if (!means(terms[i + 2], 'link')) return false;
  const to = Math.min(clause.to, places.nextWhere(isColon, i));
  const tells = (test: (term: Term) => boolean): boolean => places.hasWhere(test, i, to);
  return !tells(isMeasure) && !tells(isLabel) && !tells(isName) && !places.has('says', i, to);
}

function isColon(term: Term): boolean {
  return isMark(term, ':');
}

/** `laut Tom war die Rinne bei 2,2`: a clause that opens with whose word it is; `laut Messgerät` is a reading. */
function isByWord(frame: Frame, clause: Clause): boolean {
  return (
    means(frame.terms[clause.from], 'according-to') && means(frame.terms[clause.from + 1], 'member')
  );
}

/** `neighbour here,`, `it's Opa,`: in the first clause nothing but who writes. */
function saysWhoWrites(frame: Frame, clause: Clause): boolean {
  const rest = frame.terms.slice(clause.from, clause.to).filter((term) => !means(term, 'hearsay'));
  return (
    clause.from === 0 &&
    clause.to < frame.terms.length &&
    rest.some((term) => means(term, 'filler', 'pronoun', 'link')) &&
    rest.every((term) => means(term, 'filler', 'pronoun', 'link', 'article', 'greeting'))
  );
}

/** `Olli asked me to`, `Ines said put 10 l in the bench`: that something should be done, or how much. */
function mayBeOrder(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'orders') && clauseHas(frame, clause, 'self')) return true;
  if (frame.places.hasWhere(isLabel, clause.from, clause.to)) return false;
  return frame.places.hasWhere(isVolumeTerm, clause.from, clause.to);
}

/** `as Ines said`, `did what mum said`: by whose word it was done, and nothing of what they said. */
function isOnlyManner(frame: Frame, clause: Clause): boolean {
  if (clauseTells(frame, clause)) return false;
  const [says] = inClause(frame, clause, (term) => means(term, 'says', 'orders'));
  if (says === undefined) return false;
  const subject = previousIn(frame, clause, says, (term) => means(term, 'article', 'has'));
  return means(frame.terms[subject - 1], 'in-the-way', 'what');
}

/** `Olli says`, `the shop said`. */
function isQuoted(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'says')) return false;
  for (let i = clause.from; i < clause.to; i++)
    if (
      means(frame.terms[i], 'says') &&
      saidBySomebody(frame, clause, i) &&
      !isAmountSaid(frame, clause, i)
    )
      return true;
  return false;
}

/** `gave it the 10 l Ines said`: whose amount it was, behind the deed that was done with it. */
function isAmountSaid(frame: Frame, { from, to }: Clause, says: number): boolean {
  const { terms } = frame;
  const amount = says - 2;
  return (
    says + 1 === to &&
    amount > from &&
    means(terms[says - 1], 'member') &&
    isMeasure(terms[amount]) &&
    means(terms[amount - 1], 'article') &&
    hasPastDeed(frame, from, amount)
  );
}

/** `Olli topped up the dwc, 12 l`: the amount in a clause of its own belongs to the same deed. */
function endOfAmounts(frame: Frame, clause: Clause): number {
  const next = frame.clauses[frame.clauseOf[clause.from]! + 1];
  const isAmount =
    next?.opens === 'comma' &&
    frame.terms
      .slice(next.from, next.to)
      .every((term) => term.kind === 'measure' || means(term, 'about', 'ish', 'filler'));
  return isAmount ? next.to : clause.to;
}

/** `to the max` is a mark on the reservoir; `the maximum was 34` is the weather's. */
function leadsToMark(frame: Frame, i: number): boolean {
  const before = frame.terms[i - 1];
  return (
    means(before, 'to', 'below') ||
    (means(before, 'article') && means(frame.terms[i - 2], 'to', 'below'))
  );
}

/** What was drunk, lost or thrown away, and what was read in other water than a system's. */
export function elsewhere(frame: Frame, clause: Clause, mark: Marker): void {
  const isTaken =
    clauseHas(frame, clause, 'take-away') &&
    !isRefilled(frame, clause) &&
    !clauseHas(
      frame,
      clause,
      'top-up',
      'add',
      'fill',
      'changed-solution',
      'pick',
      'left-over',
      'level',
    );
  // `we lost 2 plants` is news, though of no quantity.
  const isOfPlants = frame.places.hasWhere(isPlantLost, clause.from, clause.to);
  if (isTaken && !isOfPlants && isTakenElsewhere(frame, clause))
    mark(startOfTaken(frame, clause), clause.to, 'not-a-reading');
  if (isTakenOut(frame, clause)) mark(clause.from, clause.to, 'not-a-reading');
  const ready = onlyReady(frame, clause);
  if (ready !== null) mark(ready, clause.to, 'queried');
  for (let i = clause.from; i < clause.to; i++) {
    if (!means(frame.terms[i], 'other-water') || hasPastDeed(frame, clause.from, clause.to))
      continue;
    // A puddle is water in no system, and just that is told of it.
    if (means(frame.terms[i], 'leak')) continue;
    const before = previousIn(frame, clause, i, (term) => means(term, 'article'));
    const isOrigin = before >= 0 && means(frame.terms[before], 'with', 'from', 'after');
    const named = frame.places.hasWhere(isName, clause.from, i);
    if (!isOrigin && !named && !isPutIn(frame, clause, i))
      mark(clause.from, clause.to, 'not-a-reading');
  }
}

/** `drained the left tub, rinsed it and mixed 75 l new`: what was emptied is told to be filled again. */
function isRefilled(frame: Frame, clause: Clause): boolean {
  if (!clauseHas(frame, clause, 'empty-out') || hasVolume(frame, clause)) return false;
  const following = frame.sentences[clause.sentence]!.filter(({ from }) => from >= clause.to);
  const at = following.findIndex((next) =>
    clauseHas(frame, next, 'refill', 'fill', 'fresh', 'mixed'),
  );
  const [refilled, between] = [following[at], following.slice(0, at)];
  if (!refilled || namesOthers(frame, clause, refilled)) return false;
  return between.every(
    (next) => !clauseTells(frame, next) && !frame.places.hasWhere(isName, next.from, next.to),
  );
}

/** `tap water 10 l with 5 ml A into the gutters`, `2 cans of tap water for the bench`: water, an amount of it, and the system that it went into. */
function isPutIn(frame: Frame, clause: Clause, water: number): boolean {
  const [name] = inClause(frame, clause, (term, i) => i > water && isName(term));
  if (name === undefined) return false;
  const lead = frame.terms[means(frame.terms[name - 1], 'article') ? name - 2 : name - 1];
  const isInto = means(lead, 'place') && !means(lead, 'from', 'of', 'at', 'to');
  const amounts = inClause(
    frame,
    clause,
    (term, i) => i < name && i >= beforeOf(frame, water) && isVolumeTerm(term),
  );
  return isInto && amounts.length > 0;
}

/** `2 cans of tap water`: where an amount of it would stand. */
function beforeOf({ terms }: Frame, water: number): number {
  return means(terms[water - 1], 'of') ? water - 2 : water - 1;
}

/** Of a product what is used is a dose; what is bought is none yet. */
function isTakenElsewhere(frame: Frame, clause: Clause): boolean {
  if (hasProductIn(frame, clause))
    return clauseHas(frame, clause, 'bought') && hasVolume(frame, clause);
  return !isUsedFor(frame, clause);
}

function hasVolume(frame: Frame, clause: Clause): boolean {
  return frame.places.hasWhere(isVolumeTerm, clause.from, clause.to);
}

/** `took 2 l out of the jars`, `2 l aus der Wanne genommen`: water led from a system, and to none. */
function isTakenOut(frame: Frame, clause: Clause): boolean {
  if (clauseHas(frame, clause, 'top-up', 'fill', 'refill', 'pick', 'left-over', 'level', 'until'))
    return false;
  const names = inClause(frame, clause, (term) => isName(term));
  const [name] = names;
  const volumes = inClause(
    frame,
    clause,
    (term, i) => term.kind === 'measure' && isVolume(term.measure) && !frame.timed[i],
  );
  if (name === undefined || names.length > 1 || volumes.length === 0) return false;
  const lead = means(frame.terms[name - 1], 'article') ? name - 2 : name - 1;
  return means(frame.terms[lead], 'from') && means(frame.terms[lead], 'place');
}

/**
 * `we used 3 cans for the bench`, `used the tap for the bench 2 cans`: by somebody for a system, and not by the system;
 * whether it is in it is asked.
 */
function isUsedFor(frame: Frame, clause: Clause): boolean {
  const [verb] = inClause(frame, clause, isUsing);
  if (verb === undefined || frame.places.hasWhere(isName, clause.from, verb)) return false;
  const [name] = inClause(frame, clause, (term, i) => i > verb && isName(term));
  if (name === undefined || !frame.places.hasWhere(isMeasure, verb, clause.to)) return false;
  const lead = frame.terms[means(frame.terms[name - 1], 'article') ? name - 2 : name - 1];
  return means(lead, 'place') && !means(lead, 'from', 'of');
}

function isUsing(term: Term): boolean {
  return means(term, 'take-away') && means(term, 'use');
}

/** `bench ph 6.0 used 2 cans of rain water`: where what was used begins, behind what was read. */
function startOfTaken(frame: Frame, clause: Clause): number {
  const [verb] = inClause(frame, clause, (term) => means(term, 'take-away'));
  const isBehindReading =
    verb !== undefined &&
    frame.places.hasWhere(isLabel, clause.from, verb) &&
    frame.places.hasWhere(isMeasure, clause.from, verb);
  return isBehindReading ? verb : clause.from;
}

function isPlantLost(term: Term, i: number, terms: readonly Term[]): boolean {
  const count = terms[i - 1];
  const isCounted = count?.kind === 'measure' && count.measure.whole && isBare(count.measure);
  return isCounted && (isCrop(term) || (means(term, 'counted') && !means(term, 'another', 'size')));
}

/** `dwc ph was once 5.4`, `die Wanne war mal bei 5,4 pH`: of now, or of a time that nobody tells. */
function wasAtSomeTime({ terms, places }: Frame, { from, to }: Clause): boolean {
  if (!places.has('at-some-time', from, to)) return false;
  return places.within(isAtSomeTime, from, to).some((i) => {
    const value = means(terms[i + 1], 'at', 'link') ? i + 2 : i + 1;
    return i > from && value < to && means(terms[i - 1], 'was') && isMeasure(terms[value]);
  });
}

function isAtSomeTime(term: Term): boolean {
  return means(term, 'at-some-time');
}

/** `last year it was 5.5 and ec 2` goes on until a but, or a word that brings it back to the present. */
function endOfLongAgo(frame: Frame, clause: Clause): number {
  const following = frame.sentences[clause.sentence]!.filter(({ from }) => from > clause.from);
  const isAside = tellsOfNoSystem(frame, clause) || isHourOfStart(frame, clause);
  const present = following.find(
    (next) =>
      next.opens === 'but' ||
      (isAside && isFullReading(frame, next)) ||
      clauseHas(frame, next, 'now', 'today', 'just-now', 'yesterday', 'this'),
  );
  return present?.from ?? following.at(-1)?.to ?? clause.to;
}

/** `it was 9 when I started`: how late it was, and no word of a reading. */
function isHourOfStart({ places, terms }: Frame, { from, to }: Clause): boolean {
  const hour = terms[to - 2];
  if (!isMeasure(hour) || !isBare(hour.measure) || !hour.measure.whole) return false;
  if (places.hasWhere(isName, from, to) || places.hasWhere(isLabel, from, to)) return false;
  return means(terms[to - 1], 'long-ago');
}

/** `cleaned the stick last week`: something was done, to no system, and no value is told of it. */
function tellsOfNoSystem({ places, terms }: Frame, { from, to }: Clause): boolean {
  if (places.hasWhere(isName, from, to) || places.hasWhere(isLabel, from, to)) return false;
  return terms.slice(from, to).some((term) => isDeed(term) || isUnknown(term));
}

/** `gutters ec 1.25`: a system, a quantity and its value. */
function isFullReading(frame: Frame, clause: Clause): boolean {
  return (
    opensWithName(frame, clause) &&
    clauseTells(frame, clause) &&
    frame.places.hasWhere(isLabel, clause.from, clause.to)
  );
}

/** `the shop says`, not `the pen says`. */
function saidBySomebody(frame: Frame, clause: Clause, i: number): boolean {
  let subject = i - 1;
  // `Karin hat gestern gesagt`.
  while (subject >= clause.from && (frame.timed[subject] || isBeforeSaying(frame.terms[subject]!)))
    subject--;
  if (subject < clause.from) return false;
  const term = frame.terms[subject];
  return isUnknown(term) || means(term, 'member', 'third-person', 'hearsay', 'self');
}

function isBeforeSaying(term: Term): boolean {
  return means(term, 'article', 'filler', 'now') && !means(term, 'pronoun');
}

function isSubject(frame: Frame, clause: Clause, i: number): boolean {
  if (saysSender(frame, frame.terms[i])) return false;
  const next = nextIn(frame, clause, i, (other) => isPadding(other) && !isMark(other, ':'));
  // `Priya: dwc ph 5.8` passes on what she said.
  if (next === i + 1 && isMark(frame.terms[next], ':')) return true;
  if (next >= 0 && (isDeed(frame.terms[next]) || means(frame.terms[next], 'did', 'says')))
    return true;
  // `Jonas hat 10 l in die Wanne gekippt`: the verb may end the clause.
  return means(frame.terms[i + 1], 'has') && isDeed(frame.terms[clause.to - 1]);
}
