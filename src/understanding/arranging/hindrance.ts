import { type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { ArrangingConcept } from '../vocabulary/arranging-words.ts';
import type { Arranging, Days } from './arranging.ts';
import type { ClauseView } from './clause-view.ts';

/** `I can't on Friday`, `nobody can go`, `not before Sunday`: days on which somebody does not go. */
export function cannotGo(view: ClauseView): Arranging | null {
  const whole = givesUp(view) ?? isIll(view);
  if (whole) return whole;
  if (view.systems.length > 1 || view.isQuestion || isPast(view)) return null;
  const isNobody = view.has('nobody') && view.has('can', 'cannot', 'go', 'is');
  const days = hinderedDays(view, isNobody);
  if (!days || days.until < view.today) return null;
  const handle = isNobody ? null : (view.subject ?? view.me);
  const [system = null] = view.systems;
  // Of today's work alone a report says that it failed.
  if (system !== null && days.until <= view.today) return null;
  return { kind: 'cannot-go', handle, days, system, reason: reasonOf(view) };
}

/** `count me out`, `can someone else take my days`: goes on none of the days that are theirs, or not on those said. */
function givesUp(view: ClauseView): Arranging | null {
  const isPassed =
    (view.has('give-back') && view.has('own-turns')) ||
    (view.has('anybody') &&
      view.has('can', 'will') &&
      view.has('do', 'go', 'cover') &&
      isOfOwn(view));
  const isDeclined = isUnable(view) && view.has('own-turns');
  if (!view.has('gives-up') && !isPassed && !isDeclined) return null;
  if (view.systems.length > 0 || view.strangers > 1) return null;
  if (view.isQuestion && !isPassed) return null;
  const handle = view.subject ?? view.me;
  return { kind: 'cannot-go', handle, days: view.said?.days ?? null, system: null, reason: null };
}

function isOfOwn(view: ClauseView): boolean {
  return view.has('own-turns') || (view.said !== null && !view.has('it', 'all-of-it'));
}

/** `I'm ill`, `Tomas ist krank`: does not go today, or on the days said. */
function isIll(view: ClauseView): Arranging | null {
  if (!view.has('ill') || view.isQuestion || isPast(view) || view.has('not', 'nobody')) return null;
  if (view.systems.length > 0 || view.strangers > 0 || !view.has('self-is', 'is', 'self'))
    return null;
  const handle = view.subject;
  if (handle === null) return null;
  const days = view.said?.days ?? { from: view.today, until: view.today };
  const reason = view.rest.find(({ concepts }) => concepts.has('ill'))?.text ?? null;
  return days.until < view.today ? null : { kind: 'cannot-go', handle, days, system: null, reason };
}

function hinderedDays(view: ClauseView, isNobody: boolean): Days | null {
  if (!view.said) return null;
  const first = firstThatSuits(view);
  if (first !== null) return { from: view.today, until: plusDays(first, -1) };
  return isNobody || isUnable(view) ? view.said.days : null;
}

/** `ich habe keine Zeit` is of now. */
function isPast(view: ClauseView): boolean {
  return view.rest.some(
    ({ concepts }) => concepts.has('past') && !(concepts.has('has') && view.has('has-time')),
  );
}

function isUnable(view: ClauseView): boolean {
  return view.has('cannot') || (view.has('can') && view.has('not'));
}

/** The first day that suits: `not before Friday`, `can't until Friday`, `erst ab Freitag`; null: none is told. */
function firstThatSuits(view: ClauseView): LocalDate | null {
  const { pieces, saidAt, said } = view;
  if (!said) return null;
  const untilHere = pieces[saidAt]?.concepts.has('before') === true;
  const isBefore = untilHere || pieces[saidAt - 1]?.concepts.has('before') === true;
  const first = untilHere ? said.days.until : said.days.from;
  if (isBefore) return isUnable(view) ? first : null;
  const isOnlyFrom = view.has('only') && pieces[saidAt]?.concepts.has('from') === true;
  if (!isOnlyFrom && !view.has('not-before')) return null;
  const isOfSomebody = view.has('can', 'has-time', 'suits', 'cannot');
  return isOfSomebody || (view.members.length === 0 && isPlain(view)) ? first : null;
}

function reasonOf({ rest }: ClauseView): string | null {
  const because = rest.findIndex(({ concepts }) => concepts.has('because'));
  if (because < 0 || because === rest.length - 1) return null;
  return rest
    .slice(because + 1)
    .map(({ text }) => text)
    .join(' ');
}

/** `I can come on Friday after all`, `Friday works after all`: what was told of not going holds no more. */
export function canGoAfterAll(view: ClauseView): Arranging | null {
  if (view.isQuestion || !view.has('after-all') || view.systems.length > 0) return null;
  if (!isPlain(view) || isPast(view) || view.has('not', 'cannot', 'nobody')) return null;
  const isAble = view.has('can', 'has-time') || (view.has('suits') && view.members.length === 0);
  const isBareDay =
    view.said !== null && view.rest.every(({ concepts }) => concepts.has('after-all'));
  if (!isAble && !isBareDay) return null;
  const handle = view.subject ?? (view.said ? view.me : null);
  if (handle === null) return null;
  return { kind: 'can-go', handle, days: view.said?.days ?? null };
}

/** Nothing else is said in it. */
function isPlain({ rest }: ClauseView): boolean {
  return rest.every(
    ({ member, concepts }) =>
      member !== null || [...concepts].some((concept) => besideDays.includes(concept)),
  );
}

/** What may stand beside the days on which somebody can go, or cannot. */
const besideDays: readonly ArrangingConcept[] = [
  'self',
  'self-is',
  'self-will',
  'after-all',
  'before',
  'not-before',
  'only',
  'not',
  'suits',
  'has',
  'has-time',
  'can',
  'go',
  'is',
  'will',
  'on',
  'for-so-long',
  'filler',
];
