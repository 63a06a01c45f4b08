import { type Clause, type Frame, isMeasure, isName, isPadding } from '../reading/frame.ts';
import { isMark, isProbe, means, type Term } from '../reading/term.ts';
import { asksOfOutage } from './asks-of-outage.ts';
import { isDeed, isLabel } from './clause-kinds.ts';

/** Where in the clause the question starts; null if it asks nothing. */
export function questionStart(
  frame: Frame,
  clause: Clause,
  asked: boolean,
  isLast: boolean,
): number | null {
  if (asksOfOutage(frame, clause, clause.from)) return clause.from;
  const first = firstWord(frame, clause);
  if (first === null) return null;
  const term = frame.terms[first]!;
  if (opensQuestion(frame, clause, first, term, asked)) return first;
  // `ph 5.3 in the dwc is that ok?`
  for (let i = first + 1; i < clause.to; i++) {
    const inner = frame.terms[i]!;
    const asksInside =
      (means(inner, 'is-it') &&
        inner.text.includes(' ') &&
        !means(inner, 'did-not', 'intention', 'amiss') &&
        (!means(inner, 'link') || judges(frame, i + 1, clause.to))) ||
      (means(inner, 'what', 'why', 'how', 'how-much', 'how-long', 'who') &&
        (asked || means(frame.terms[i - 1], 'now') || means(frame.terms[i + 1], 'is-it')));
    if (asksInside && (asked || isLast)) return i;
  }
  return null;
}

/** `heute ist es warm` tells, `ist es zu warm` asks. */
function judges(frame: Frame, from: number, to: number): boolean {
  return frame.terms
    .slice(from, to)
    .some((term) => means(term, 'judged') && term.text.includes(' '));
}

function firstWord(frame: Frame, clause: Clause): number | null {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (term.kind === 'mark') continue;
    const asks = means(
      term,
      'what',
      'when',
      'why',
      'how',
      'who',
      'which',
      'is-it',
      'how-much',
      'how-long',
      'help',
      'show',
      'anything',
    );
    if (!asks && means(term, 'filler', 'greeting', 'member', 'thanks') && !isLabel(term)) continue;
    // `a picture of the jars`
    if (means(term, 'article') && means(frame.terms[i + 1], 'show', 'picture')) continue;
    return i;
  }
  return null;
}

function opensQuestion(
  frame: Frame,
  clause: Clause,
  first: number,
  term: Term,
  asked: boolean,
): boolean {
  if (means(term, 'help') && isAlone(frame, clause, first)) return true;
  const next = frame.terms[first + 1];
  if (means(term, 'what') && !asked && tellsWhat(frame, clause, first)) return false;
  if (means(term, 'what'))
    return asked || !(next && means(next, 'indefinite')) || next.text === term.text;
  if (means(term, 'how', 'how-much', 'how-long', 'why', 'who')) return true;
  if (means(term, 'when')) {
    return asked || term.text.includes(' ') || !(means(next, 'self') || hasMeasure(frame, clause));
  }
  if (means(term, 'which'))
    return (
      asked ||
      isAlone(frame, clause, first) ||
      clauseMeans(frame, clause, 'going', 'need', 'the-most')
    );
  if (means(term, 'show') && first + 1 < clause.to) return !hasMeasure(frame, clause);
  if (means(term, 'unanswered')) return true;
  if (means(term, 'anything'))
    return (
      asked ||
      (!saysNone(term) && clauseMeans(frame, clause, 'due', 'job', 'need', 'going')) ||
      (means(term, 'any-at-all') && clauseMeans(frame, clause, 'amiss'))
    );
  // `war nichts nötig` tells.
  if (means(term, 'is-it') && !asked && saysNone(next)) return false;
  // `didn't add any`: the verb follows straight, and nobody who would have done it.
  if (means(term, 'did-not') && !asked && isDeed(next)) return false;
  // `stimmt was nicht mit der Wanne`.
  if (means(term, 'is-it') && means(term, 'amiss') && (asked || first === clause.from)) return true;
  // `is everything ok`, `is the tub all right`.
  if (means(term, 'is-it') && isAllGood(frame, clause, first + 1)) return true;
  // `Karin hat die Wanne gefüllt` tells, whoever she is.
  if (means(term, 'is-it') && !asked && means(frame.terms[first - 1], 'member')) return false;
  if (isBeforeSupply(frame, first) || asksOfOutage(frame, clause, first)) return true;
  if (means(term, 'is-it'))
    return asked ? first + 1 < clause.to : plainlyAsks(frame, clause, first, term);
  if (means(term, 'job', 'due', 'picture')) return asked || onlyAsks(frame, clause, first);
  // `gutters graph`
  if (isName(term) && clauseMeans(frame, clause, 'picture')) return onlyAsks(frame, clause, first);
  return asked && means(term, 'need', 'judged', 'use', 'due', 'next', 'most-recent');
}

/** `what I read was 5.9 ph`, `was der Stab zeigt ist 1,2`: behind the verb stands the value. */
function tellsWhat({ terms, places, timed }: Frame, { to }: Clause, first: number): boolean {
  const subject = terms[first + 1];
  const isOfOneself = means(subject, 'self') && !means(subject, 'is-it', 'intention');
  const isOfThing = means(subject, 'article') && !isLabel(terms[first + 2]);
  if (!isOfOneself && !isOfThing) return false;
  return places.within(isMeasure, first + 2, to).some((i) => {
    let lead = i - 1;
    while (lead > first + 2 && (means(terms[lead], 'about', 'article') || isLabel(terms[lead])))
      lead--;
    return (
      lead > first + 2 && !timed[i] && (means(terms[lead], 'link') || isMark(terms[lead], ':'))
    );
  });
}

/** `is everything ok`, `ist mit der Wanne alles in Ordnung`. */
function isAllGood({ terms }: Frame, { to }: Clause, from: number): boolean {
  let at = from;
  while (at < to && (isName(terms[at]) || means(terms[at], 'place', 'article'))) at++;
  return means(terms[at], 'all-good');
}

/** `nothing needed`: an answer, and no question. */
function saysNone(term: Term | undefined): boolean {
  return means(term, 'anything') && means(term, 'not', 'did-not');
}

/** Without a question mark: `is 5.4 too low`, `should i top up`, `do the jars need water`. */
function plainlyAsks(frame: Frame, clause: Clause, first: number, term: Term): boolean {
  const next = frame.terms[first + 1];
  if (isOfMember(frame, clause, first)) return true;
  // `was the pH 5.4 in the buckets`, `war der pH gestern 5,4`.
  if (means(term, 'was') && means(next, 'article') && isQuantity(frame.terms[first + 2]))
    return true;
  if (
    means(term, 'done', 'did', 'could-not', 'did-not', 'intention') &&
    !means(next, 'self', 'pronoun') &&
    !term.text.includes(' ') &&
    !(means(term, 'need') && isBeforeItsSubject(frame, clause, first))
  ) {
    return clauseMeans(frame, clause, 'judged', 'anything') && !hasMeasure(frame, clause);
  }
  // `can you top up the bench` asks a favour.
  if (means(term, 'intention') && term.text.includes(' ')) return false;
  if (term.text.includes(' ') && !means(term, 'link', 'did-not', 'could-not')) return true;
  if (isBeforeItsSubject(frame, clause, first)) return true;
  if (means(next, 'self') && !means(term, 'was', 'link')) return true;
  return (
    clauseMeans(frame, clause, 'judged', 'need', 'anything', 'due') &&
    !means(next, 'judged', 'down')
  );
}

function isQuantity(term: Term | undefined): boolean {
  return means(term, 'ph', 'ec');
}

/** `did Priya top up the gutters`, `hat Birgit die Rinnen aufgefüllt`: the verb before who did it. */
function isOfMember(frame: Frame, { to }: Clause, first: number): boolean {
  const [verb, who] = frame.terms.slice(first, first + 2);
  if (!means(verb, 'did', 'has') || !means(who, 'member') || verb!.text.includes(' ')) return false;
  return frame.terms.slice(first + 2, to).some(isDeed);
}

/** `is the power back`, `läuft die Pumpe wieder`: the verb before what it is said of. */
function isBeforeSupply(frame: Frame, first: number): boolean {
  const [verb, second, third] = frame.terms.slice(first, first + 3);
  // `the power` may be one phrase.
  const supply = means(second, 'article') ? third : second?.text.includes(' ') ? second : undefined;
  return means(verb, 'is-it', 'link', 'was', 'runs') && means(supply, 'power', 'pump', 'air-pump');
}

/** `has the bench been topped up`: the verb before its subject. */
function isBeforeItsSubject(frame: Frame, clause: Clause, first: number): boolean {
  // `haben die Gläser aufgefüllt`: the subject is left out.
  if (means(frame.terms[first], 'self')) return false;
  let subject = first + 1;
  while (subject < clause.to && means(frame.terms[subject], 'article', 'both', 'all')) subject++;
  if (subject >= clause.to) return false;
  const { kind } = frame.terms[subject]!;
  if (kind !== 'name' && !isProbe(frame.terms[subject])) return false;
  return (
    !means(frame.terms[first], 'did', 'do', 'done') ||
    frame.terms
      .slice(subject + 1, clause.to)
      .some((term) => isDeed(term) || means(term, 'need', 'last-out', 'judged'))
  );
}

function isAlone(frame: Frame, clause: Clause, first: number): boolean {
  for (let i = first + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (!isPadding(term) && term.kind !== 'mark') return false;
  }
  return true;
}

/** `jobs today`, `bench status`: nothing but what is asked for. */
function onlyAsks(frame: Frame, clause: Clause, first: number): boolean {
  for (let i = first + 1; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (
      !isName(term) &&
      !means(
        term,
        'today',
        'this',
        'due',
        'job',
        'place',
        'article',
        'morning',
        'next',
        'filler',
        'picture',
      )
    )
      return false;
  }
  return true;
}

function hasMeasure(frame: Frame, clause: Clause): boolean {
  return frame.terms.slice(clause.from, clause.to).some(isMeasure);
}

function clauseMeans(
  frame: Frame,
  clause: Clause,
  ...concepts: Parameters<typeof means>[1][]
): boolean {
  for (let i = clause.from; i < clause.to; i++) if (means(frame.terms[i], ...concepts)) return true;
  return false;
}
