import type { ArrangingConcept } from '../vocabulary/arranging-words.ts';
import type { Arranging } from './arranging.ts';
import type { ClauseView } from './clause-view.ts';
import { canGoAfterAll, cannotGo } from './hindrance.ts';

/** What a clause settles; null: nothing. `isExpected`: who covers was just asked. */
export function readClause(view: ClauseView, isCoverAsked: boolean): Arranging | null {
  const later = laterToday(view);
  if (later) return later;
  // `who covers when I'm away`: as it is planned.
  const isOfAway = view.has('condition') && view.has('away') && view.strangers === 0;
  if (view.starts('who-goes') && isOfAway) return { kind: 'plan', days: null };
  if (view.hasFigures || view.has('condition')) return null;
  if (view.has('when-is')) return whenBack(view);
  return (
    asked(view) ??
    away(view) ??
    awayMoved(view) ??
    back(view) ??
    cannotGo(view) ??
    canGoAfterAll(view) ??
    givenBack(view) ??
    rota(view) ??
    (isCoverAsked && isOfTheDays(view) ? null : claimed(view)) ??
    covered(view, isCoverAsked) ??
    news(view) ??
    oneChore(view)
  );
}

/** `not before 8 tonight`, `nicht vor 20 Uhr heute Abend`: goes today, in the evening. */
function laterToday(view: ClauseView): Arranging | null {
  const { said, today } = view;
  const isHeldBack = view.has('not-before') || (view.has('cannot') && view.has('before'));
  if (!isHeldBack || !said?.isEvening || said.days.from !== today || view.isQuestion) return null;
  const hours = view.rest.flatMap(({ number }) => number ?? []);
  const isHour = hours.length <= 1 && hours.every((hour) => hour >= 1 && hour <= 24);
  if (!isHour || view.strangers > 1 || view.systems.length > 1) return null;
  const [system = null] = view.systems;
  const { days, isEvening } = said;
  return { kind: 'claim', handle: view.subject ?? view.me, system, duty: null, days, isEvening };
}

/** `when is Ines back`, `wann kommt Karin wieder`. */
function whenBack(view: ClauseView): Arranging | null {
  // `when am I back`.
  const handle = view.members[0] ?? (view.has('self', 'self-is') ? view.me : undefined);
  const isReturn = view.has('back', 'go') || view.has('away');
  if (handle === undefined || !isReturn || view.strangers > 0 || view.systems.length > 0)
    return null;
  return { kind: 'when-back', handle };
}

function asked(view: ClauseView): Arranging | null {
  const days = view.said?.days ?? null;
  if (view.has('back') && view.starts('is') && view.members.length === 1) return whenBack(view);
  if (view.starts('who-goes') && view.strangers === 0) return { kind: 'who-goes', days };
  if (view.starts('how-to') && view.duty !== null) {
    return {
      kind: 'how-to',
      system: view.systems[0] ?? null,
      duty: view.duty,
      probes: view.probes,
    };
  }
  if (view.starts('how-to') && view.systems.length === 1 && view.has('do')) {
    return { kind: 'how-to', system: view.systems[0] ?? null, duty: null, probes: view.probes };
  }
  if (view.isQuestion && view.has('away') && view.has('self', 'can') && days) {
    return { kind: 'plan', days };
  }
  const onlyPlan = view.rest.every(
    ({ concepts }) =>
      concepts.has('the-plan') ||
      concepts.has('filler') ||
      concepts.has('away') ||
      concepts.has('for-so-long'),
  );
  return view.has('the-plan') && onlyPlan ? { kind: 'plan', days: null } : null;
}

function away(view: ClauseView): Arranging | null {
  if (!(view.has('away') || staysElsewhere(view)) || view.isQuestion || view.systems.length > 0)
    return null;
  if (view.has('past', 'until') && !view.said) return null;
  const bare = view.rest.every(
    ({ concepts }) => concepts.has('away') || concepts.has('filler') || concepts.has('self-is'),
  );
  const isMe = (view.said !== null && !isOfAnother(view)) || bare;
  const handle = view.subject ?? (isMe ? view.me : null);
  if (handle === null || view.strangers > 4) return null;
  if (!view.said && view.strangers > 0 && !view.has('self-is', 'self', 'self-will')) return null;
  return { kind: 'away', handle, days: view.said?.days ?? null };
}

/** `we leave a day later`, `staying two days longer`: on which days is asked anew. */
function awayMoved(view: ClauseView): Arranging | null {
  const isOfTrip = view.has('travel', 'away', 'back', 'go') || onlySelf(view);
  if (!view.has('other-days') || !isOfTrip || view.isQuestion) return null;
  if (view.systems.length > 0 || view.has('past') || view.strangers > 1) return null;
  return { kind: 'away', handle: view.subject ?? view.me, days: null };
}

/** `wir fahren einen Tag später`: nothing else is said of oneself. */
function onlySelf(view: ClauseView): boolean {
  return view.has('self-is') && view.strangers === 0;
}

/** `off to my sister's Thursday till Monday`: with somebody, over more than a day. */
function staysElsewhere(view: ClauseView): boolean {
  const { said } = view;
  return said !== null && said.days.from < said.days.until && view.has('at-somebodys');
}

/** `das Wasser ist heute weg`: what is away is named before, and nobody of the family. */
function isOfAnother({ rest }: ClauseView): boolean {
  const at = rest.findIndex(({ concepts }) => concepts.has('away') || concepts.has('at-somebodys'));
  return rest.slice(0, at).some(({ isStrange }) => isStrange);
}

function back(view: ClauseView): Arranging | null {
  if (!view.has('back') || view.isQuestion || view.systems.length > 0) return null;
  const fits = view.rest.every(
    ({ concepts, member }) =>
      member !== null ||
      ['back', 'self', 'self-is', 'self-will', 'is', 'filler', 'today', 'will'].some((concept) =>
        concepts.has(concept as ArrangingConcept),
      ),
  );
  if (!fits) return null;
  const isToCome = view.has('will', 'self-will');
  const handle = view.subject ?? view.me;
  if (view.said === null && isToCome) return { kind: 'back', handle, on: null, isToCome };
  return { kind: 'back', handle, on: view.said?.days.from ?? null };
}

function givenBack(view: ClauseView): Arranging | null {
  if (!view.has('give-back')) return null;
  const [handle] = view.members;
  const system = view.systems[0] ?? null;
  const on = view.said?.days.from ?? view.today;
  if (handle === undefined) return { kind: 'release', system, on };
  return {
    kind: 'claim',
    handle,
    system,
    duty: null,
    days: { from: on, until: on },
    isEvening: false,
  };
}

function rota(view: ClauseView): Arranging | null {
  const weekdays = view.rest
    .filter(({ isEveryWeek }) => isEveryWeek)
    .flatMap(({ weekday }) => weekday ?? []);
  if (weekdays.length === 0 || view.isQuestion || view.systems.length > 0) return null;
  if (view.has('cannot', 'nobody', 'past') || view.strangers > 2) return null;
  const handle = view.subject ?? (view.has('can', 'go', 'cover') ? view.me : null);
  return handle === null
    ? null
    : { kind: 'rota', handle, weekdays: [...new Set(weekdays)].toSorted() };
}

function claimed(view: ClauseView): Arranging | null {
  if (view.has('past', 'cannot', 'not', 'away', 'anybody') || view.strangers > 3) return null;
  const [named] = view.goers;
  const deed = view.has(
    'do',
    'top-up',
    'check',
    'change',
    'clean',
    'calibrate',
    'dose',
    'air',
    'to-somebody',
  );
  if (!deed) return null;
  const isOffered =
    view.has('self-will') ||
    (view.has('self') && view.has('will', 'can')) ||
    view.starts('will', 'can') ||
    (view.has('self') && view.said !== null && !startsBare(view)) ||
    (named !== undefined && (view.has('will', 'can', 'do', 'to-somebody') || view.said !== null));
  const isItAlone = view.has('it') && view.strangers === 0;
  const object = view.systems.length > 0 || view.has('all-of-it') || isItAlone;
  if (!isOffered || !object || view.systems.length > 1) return null;
  if (view.isQuestion && named === undefined) return null;
  const { days, isEvening } = view.said ?? {
    days: { from: view.today, until: view.today },
    isEvening: false,
  };
  if (days.from < view.today) return null;
  const isIt = view.systems.length === 0 && view.has('it');
  const isAny =
    view.has('do', 'to-somebody') && !view.has('top-up', 'change', 'clean', 'calibrate', 'dose');
  return {
    kind: 'claim',
    handle: named ?? view.me,
    system: view.systems[0] ?? null,
    duty: isAny ? null : view.duty,
    days,
    isEvening,
    ...(isIt ? { isIt } : {}),
  };
}

/** `Priya does it`, where it was asked who goes: all of the days, and nothing of today. */
function isOfTheDays(view: ClauseView): boolean {
  const isOfWork = view.has('top-up', 'check', 'change', 'clean', 'calibrate', 'dose', 'air');
  return view.has('do') && !isOfWork && view.systems.length === 0 && view.said === null;
}

/** `top up the bench tomorrow` without a subject asks somebody else. */
function startsBare(view: ClauseView): boolean {
  return view.starts('top-up', 'check', 'change', 'clean', 'calibrate');
}

function covered(view: ClauseView, isCoverAsked: boolean): Arranging | null {
  if (view.isQuestion && !isRequest(view)) return null;
  if (view.has('past', 'cannot') || view.systems.length > 0) return null;
  const days = view.said?.days ?? null;
  // `I'll do Monday`: what is done is the day.
  const doesDays = days !== null || view.replaced.length > 0 || isCoverAsked;
  const goes = view.has('go', 'cover') || (view.has('do') && doesDays);
  const isSelf = view.has('self', 'self-will') && !isRequest(view);
  // `Birgit does my Thursday, I her Saturday`: the verb was said.
  const goesToo = goes || (isCoverAsked && days !== null && isOneself(view));
  const named = [...view.goers, ...(isSelf && goesToo ? [view.me] : [])];
  if (named.length > 0 && view.strangers === 0) {
    if (isInstead(view)) {
      // `for Priya` is for today, where no day is said.
      const ofToday = view.replaced.length > 0 ? { from: view.today, until: view.today } : null;
      return { kind: 'covers', handles: named, days: days ?? ofToday, isInstead: true };
    }
    if (goesToo && (days || isCoverAsked)) {
      const isOwn = days !== null && view.has('mine') && !isSelf;
      return { kind: 'covers', handles: named, days, ...(isOwn ? { isOwn } : {}) };
    }
    const bare = view.rest.every(
      ({ member, concepts }) =>
        member !== null ||
        concepts.has('filler') ||
        concepts.has('then') ||
        concepts.has('is') ||
        concepts.has('for-so-long') ||
        concepts.has('in-turn') ||
        concepts.has('on'),
    );
    if (bare && (isCoverAsked || (days && view.members.length > 0)))
      return { kind: 'covers', handles: named, days };
  }
  // Whoever is named is not all of them, and not nobody.
  if (!isCoverAsked || named.length > 0 || view.strangers > 0) return null;
  if (view.has('nobody')) return { kind: 'covers', handles: [], days };
  return view.has('everybody', 'in-turn') ? { kind: 'covers', handles: ['*'], days } : null;
}

/** Nothing but who goes, and small words. */
function isOneself({ rest }: ClauseView): boolean {
  return rest.every(({ concepts }) => concepts.has('self') || concepts.has('filler'));
}

/** `can Olli take my Monday?`: somebody is asked to go on a day. */
function isRequest(view: ClauseView): boolean {
  return view.starts('can', 'will') && view.goers.length === 1 && view.said !== null;
}

/** `I'll go for Priya today`, `only Priya after all`: a turn taken over, or handed back. */
function isInstead(view: ClauseView): boolean {
  if (view.has('not', 'nobody')) return false;
  const isPlain = view.rest.every(
    ({ member, concepts }) =>
      member !== null || [...concepts].some((concept) => saidWithTurns.includes(concept)),
  );
  if (view.replaced.length > 0) return isPlain || view.has('go', 'cover');
  return view.has('after-all') && isPlain;
}

/** What may stand beside who goes after all. */
const saidWithTurns: readonly ArrangingConcept[] = [
  'self',
  'self-will',
  'after-all',
  'instead-of',
  'go',
  'cover',
  'do',
  'from',
  'can',
  'will',
  'is',
  'filler',
];

/** `can Olli do the filters on Friday`: asked of somebody for a day, and no system's work. */
function oneChore(view: ClauseView): Arranging | null {
  const [handle, another] = view.goers;
  if (handle === undefined || another !== undefined || handle === view.me) return null;
  if (!view.said || view.said.days.from < view.today || !view.has('can', 'will')) return null;
  if (view.systems.length > 0 || view.has('past', 'cannot', 'not', 'self', 'away')) return null;
  const isWork = view.namesChore || view.duty !== null || view.has('do');
  if (!isWork || view.strangers === 0) return null;
  return { kind: 'one-chore', handle, days: view.said.days };
}

function news(view: ClauseView): Arranging | null {
  if (view.isQuestion || view.strangers > 2) return null;
  if (view.has('news-daily')) return { kind: 'news', every: 'day' };
  return view.has('news-never') && view.strangers === 0 && view.systems.length === 0
    ? { kind: 'news', every: 'never' }
    : null;
}
