import { readings } from '../../greenhouse/quantity.ts';
import { asksOfOutage } from '../moods/asks-of-outage.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Ask, EntryStatement } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { adviceAsk, supplyOf } from './advice-ask.ts';
import { dutyAsked, quantityAsked, systemAsked, workAsked } from './asked-things.ts';
import { withDaysAhead } from './days-ahead.ts';
import { daysAsked, howMuch } from './how-much.ts';
import { isItRight } from './is-it-right.ts';
import { readingSpokenOf, refersBack, withSystemOfLate } from './spoken-of.ts';

/** What a question asks, from the words in it; `unknown` where they tell nothing. */
export function askOf(
  frame: Frame,
  from: number,
  to: number,
  entries: readonly EntryStatement[],
): Ask {
  const ask = askedIn(frame, from, to, entries);
  return withSystemOfLate(withDaysAhead(ask, frame, from, to), frame, from, to);
}

function askedIn(frame: Frame, from: number, to: number, entries: readonly EntryStatement[]): Ask {
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  const starts = (...concepts: readonly Concept[]) =>
    means(
      terms.find((term) => term.kind === 'word'),
      ...concepts,
    ) || terms.slice(0, 3).some((term) => means(term, ...concepts) && term.kind === 'word');
  const system = systemAsked(frame, from, to, entries);
  const quantity = quantityAsked(frame, from, to);
  const measured = terms.findIndex(isMeasure);

  if (has('help')) return { kind: 'help' };
  const sum = adviceAsk(frame, from, to, system);
  if (sum) return sum;
  if (has('safety') && !has('who', 'when', 'how-long', 'how-much')) return { kind: 'safety' };
  // `any problems`, `is everything ok`.
  if (has('amiss', 'all-good') && starts('any-at-all', 'is-it', 'all-good', 'all'))
    return system === null ? { kind: 'what-is-due', system } : { kind: 'how-is-it-going', system };
  const work = workAsked(frame, from, to);
  const supply =
    (starts('is-it', 'runs') && !has('how-long')) || asksOfOutage(frame, { to }, from)
      ? supplyOf(terms, has)
      : null;
  if (supply && !has('fill', 'flood', 'need', 'top-up') && !terms.some(isTaken))
    return { kind: 'supply', of: supply };
  // `which probe needs calibrating`, `how often should i calibrate`.
  if (starts('which', 'how', 'what') && has('calibrate') && !has('most-recent', 'was')) {
    const often = has('habit') ? { isOften: true as const } : {};
    const of = often.isOften ? probeNamed(terms) : null;
    const ofProbe = of === null ? {} : { probe: of };
    return { kind: 'when-next', system: null, duty: 'calibration', ...often, ...ofProbe };
  }
  // `which ones need water`, `wer braucht Wasser`: not who did anything.
  if (starts('which', 'who') && terms.some((term) => saysNeed(frame, term)))
    return { kind: 'what-is-due', system };
  // `which one drinks most`, `wer säuft am meisten`: a thing of the systems, and of no member.
  if (starts('which', 'who') && has('use') && has('the-most')) {
    const days = daysAsked(frame, from, to, has);
    // Of days that it names, what was filled in is told.
    return has('week', 'today', 'yesterday')
      ? { kind: 'use', system, ...days }
      : { isRanked: true, kind: 'use', system, ...days };
  }
  // `who's right`: not who did anything.
  if (starts('who') && has('in-the-right')) return { kind: 'unknown' };
  // `did Priya top up the gutters`, `hat Jonas 5 l in die Gläser gefüllt`.
  if (starts('is-it') && has('did', 'has') && has('member') && !has('judged'))
    return { kind: 'who', system, ...work };
  if (starts('who') || (starts('is-it') && has('who')) || (starts('what') && has('member')))
    return { kind: 'who', system, ...work };
  if (starts('why')) {
    const of = probeNamed(terms);
    const checks = has('read-as') ? 'check' : null;
    const duty = of === null ? (dutyAsked(frame, from, to) ?? checks) : 'calibration';
    const work = { ...(duty === null ? {} : { duty }), ...(of === null ? {} : { probe: of }) };
    return { kind: 'why', system, exactly: has('exactly'), ...work };
  }
  if (starts('how-long') && has('since', 'ago', 'most-recent') && !has('last-out')) {
    // `how long since we changed the buckets`: when that was.
    const { quantity: deed, duty, chore } = work;
    const isDeed = deed !== null && !(readings as readonly string[]).includes(deed);
    if (isDeed || duty !== null || chore !== null) return { kind: 'who', system, ...work };
  }
  if (starts('how') && has('habit')) {
    const duty = dutyAsked(frame, from, to) ?? (has('read-as') ? 'check' : null);
    if (work.chore !== null) return { isOften: true, kind: 'when-next', system, duty: 'chore' };
    if (duty !== null) return { isOften: true, kind: 'when-next', system, duty };
  }
  if (starts('how-long') && !has('next')) return { kind: 'how-long', system };
  const probe = probeNamed(terms);
  // `can I trust the pen`: by when it was calibrated, and when that is due.
  if (probe !== null && (starts('when') || (starts('is-it') && quantity === null && measured < 0)))
    return has('calibrate', 'due', 'next') &&
      has('when-past', 'most-recent', 'was', 'did') &&
      !has('next', 'due')
      ? { probe, kind: 'who', system: null, ...calibrationAlone }
      : { probe, kind: 'when-next', system: null, duty: 'calibration' };
  if (
    starts('when') &&
    has('when-past', 'most-recent', 'was', 'did') &&
    ((work.quantity ?? work.duty ?? work.chore) !== null || work.isOfReadings) &&
    !has('next', 'due')
  )
    return { kind: 'who', system, ...work };
  if (starts('when'))
    return has('last-out', 'empty', 'low') && !has('due', 'next', 'need')
      ? { kind: 'how-long', system }
      : { kind: 'when-next', system, duty: dutyAsked(frame, from, to) };
  if (starts('how-much')) return howMuch(frame, from, to, system, has);
  if (measured >= 0 && (has('judged') || starts('is-it')))
    return isItRight(frame, from + measured, system, quantity);
  if (starts('show') || has('picture')) return { kind: 'show', system, quantity };
  if (starts('is-it') && has('last-out')) return { kind: 'how-long', system };
  if (
    (has('due', 'job') && !has('most-recent', 'use')) ||
    starts('anything') ||
    (has('what') && has('due', 'job', 'need', 'do')) ||
    (has('need') && system !== null && !quantity)
  )
    return { kind: 'what-is-due', system };
  if (has('use') && has('week', 'yesterday', 'today', 'this-month', 'last-month', 'season'))
    return { kind: 'use', system, ...daysAsked(frame, from, to, has) };
  const said = entries.at(-1);
  if (starts('is-it') && has('judged', 'pronoun') && said && quantity === null) {
    return {
      kind: 'is-it-right',
      system: said.draft.system,
      quantity: said.draft.quantity,
      value: said.draft.value,
    };
  }
  // `is that too low`, in reply to a receipt or straight after it.
  const refers = terms.some((term) => refersBack(frame, term));
  const told = starts('is-it') && has('judged') && refers ? readingSpokenOf(frame) : null;
  if (told && quantity === null) {
    const { quantity: read, value } = told;
    return { kind: 'is-it-right', system: system ?? told.system, quantity: read, value };
  }
  // `is it too warm in the buckets`, `is that too warm`: of the water.
  if (starts('is-it') && quantity === null && has('warmth'))
    return { kind: 'is-it-right', system, quantity: 'water-temperature', value: null };
  if (has('due')) return { kind: 'what-is-due', system };
  if (starts('is-it') && (has('need') || topsUp(terms))) return { kind: 'what-is-due', system };
  if (starts('is-it') && has('judged') && quantity !== null)
    return { kind: 'is-it-right', system, quantity, value: null };
  if (
    quantity !== null &&
    (starts('what', 'how', 'which') || has('most-recent') || starts('is-it'))
  )
    return { kind: 'last-reading', system, quantity };
  if (starts('is-it') && has('judged') && refers && system === null)
    return { kind: terms.every(asksNoMore) ? 'which-value' : 'unknown' };
  if (starts('how', 'which', 'what', 'is-it') && (has('going', 'judged') || system !== null))
    return { kind: 'how-is-it-going', system };
  if (starts('judged', 'next') && said) {
    const { system: of, quantity: read, value } = said.draft;
    return { kind: 'is-it-right', system: of, quantity: read, value };
  }
  if (quantity !== null) return { kind: 'last-reading', system, quantity };
  if (system !== null && !starts('is-it')) return { kind: 'how-is-it-going', system };
  // `what's left`, `am I done`, `bin ich fertig`.
  const isOfTheRest = has('what') && has('left-over') && measured < 0;
  const isOfTheEnd = starts('is-it') && has('self') && has('done');
  return isOfTheRest || isOfTheEnd ? { kind: 'what-is-due', system } : { kind: 'unknown' };
}

const calibrationAlone = { quantity: 'calibration', duty: null, chore: null } as const;

function probeNamed(terms: readonly Term[]): string | null {
  for (const term of terms)
    if (term.kind === 'word' && term.word.probe !== null) return term.word.probe;
  return null;
}

/** `is that too low`, and nothing that would say what it is about. */
function asksNoMore(term: Term): boolean {
  return (
    term.kind === 'stop' ||
    means(term, 'is-it', 'pronoun', 'judged', 'filler', 'article', 'down', 'low')
  );
}

/** `took 9 min`; `was` alone is no amount. */
function isTaken(term: Term): boolean {
  return means(term, 'took') && !means(term, 'was');
}

/** `needs`, and `brauchen Wasser` where that is one phrase. */
function saysNeed(frame: Frame, term: Term): boolean {
  const { water } = frame.lexicon.own.vocabulary.words;
  const isWater = water.some((word) => term.text.endsWith(` ${word}`));
  return means(term, 'need') || (isWater && means(term, 'intention'));
}

function topsUp(terms: readonly Term[]): boolean {
  return terms.some((term) =>
    means(term, 'top-up', 'change', 'changed-solution', 'add-plainly', 'add'),
  );
}
