import type { Supply } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import { noFlowAt, pumpSpokenOf } from '../moods/no-water.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isUnknown, means, type Term } from '../reading/term.ts';
import { type TimeMark, unsaidTime } from '../times/time-mark.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { systemOfDevice } from './devices.ts';

/** `power out since 2`, `air pump dead on the dwc`, `power back`. */
export function recogniseOutages(frame: Frame): Fact[] {
  const facts: Fact[] = [];
  let spokenOf: number | null = null;
  for (const clause of frame.clauses) {
    const found = inClauseAlone(frame, clause, spokenOf);
    facts.push(...found);
    if (found.length === 0) facts.push(...noFlow(frame, clause));
    const device = deviceOf(frame, clause) ?? inClause(frame, clause, isPowerGone)[0] ?? null;
    if (device !== null) spokenOf = device;
  }
  return facts;
}

/** `pump hums but no water`: it may run, but it pumps nothing. */
function noFlow(frame: Frame, clause: Clause): Fact[] {
  const at = noFlowAt(frame, clause);
  const pump = at === null ? null : pumpSpokenOf(frame, clause, at);
  return at === null || pump === null ? [] : [outage(frame, 'outage', 'pump', pump, at)];
}

/** `the fuse has blown, it is back in`: the second clause is of the power, too. */
function isPowerGone(term: Term): boolean {
  return means(term, 'no-power');
}

function deviceOf(frame: Frame, clause: Clause): number | null {
  const device = inClause(frame, clause, (term) => supplyOf(term) !== null)[0];
  if (device !== undefined) return device;
  // `dwc air back on`: the air that bubbles, where no temperature is told of it.
  const air = inClause(frame, clause, (term) => means(term, 'air') && means(term, 'aeration'))[0];
  return air === undefined || inClause(frame, clause, isMeasure).length > 0 ? null : air;
}

function supplyOf(term: Term | undefined): Supply | null {
  if (means(term, 'air-pump', 'air-stones', 'venturi')) return 'air-pump';
  if (means(term, 'pump')) return 'pump';
  return means(term, 'power') ? 'power' : null;
}

/** What is seen to have ceased, and what brought it. */
const supplyThatCeased: readonly (readonly [Concept, Supply])[] = [
  ['no-bubbles', 'air-pump'],
  ['no-flow', 'pump'],
];

function inClauseAlone(frame: Frame, clause: Clause, spokenOf: number | null): Fact[] {
  const noPower = inClause(frame, clause, isPowerGone)[0];
  if (noPower !== undefined && !clauseHas(frame, clause, 'working'))
    return [outage(frame, 'outage', 'power', noPower, noPower)];
  for (const [ceased, of] of supplyThatCeased) {
    const at = inClause(frame, clause, (term) => means(term, ceased))[0];
    if (at === undefined || clauseHas(frame, clause, 'working')) continue;
    // `nearly nothing coming out`, `fast keine Blasen`: some still do.
    if (means(frame.terms[at - 1], 'almost')) continue;
    return of === 'pump' && isOfStandingWater(frame, clause)
      ? []
      : [outage(frame, 'outage', of, at, at)];
  }
  const own = deviceOf(frame, clause) ?? noPower ?? null;
  // `power was out since 2, back at 4`: the second clause leans on the first.
  const device =
    own ??
    (clause.opens === 'comma' ||
    clause.opens === 'and' ||
    clause.opens === 'then' ||
    clause.opens === 'but'
      ? spokenOf
      : null);
  if (device === null) return backAgain(frame, clause);
  const supply =
    supplyOf(frame.terms[device]) ?? (means(frame.terms[device], 'air') ? 'air-pump' : 'power');
  const states = inClause(
    frame,
    clause,
    (term, i) =>
      i !== device &&
      !frame.taken[i] &&
      (means(term, 'broken', 'working') || (supply === 'power' && means(term, 'put-back-in'))),
  );
  // The last state said is the one that holds: `was out, back on`; `not working` is one phrase.
  const broken = states.find((i) => means(frame.terms[i], 'broken') && isState(frame, clause, i));
  const working = states.find(
    (i) =>
      means(frame.terms[i], 'working', 'put-back-in') &&
      !means(frame.terms[i], 'broken') &&
      isState(frame, clause, i) &&
      (means(frame.terms[i], 'put-back-in') || !isOfSomebody(frame.terms[i - 1])) &&
      (own !== null || frame.terms[i]!.text.length > 2),
  );
  if (working !== undefined && isRestored(frame, working)) {
    const back = outage(frame, 'restored', supply, device, working);
    return broken !== undefined && isTimedBefore(frame, clause, broken, working)
      ? [outage(frame, 'outage', supply, device, broken), { ...back, time: atWriting(frame, back) }]
      : [back];
  }
  const parted = partedState(frame, clause);
  if (parted !== null && (own !== null || parted.quantity === 'restored'))
    return [outage(frame, parted.quantity, supply, device, parted.at)];
  return broken === undefined || own === null
    ? []
    : [outage(frame, 'outage', supply, device, broken)];
}

/** `no flow in the jars`: of systems that no pump feeds. */
function isOfStandingWater(frame: Frame, clause: Clause): boolean {
  const { systems } = frame.context.greenhouse;
  const named = new Set(namesIn(frame, clause).flatMap((i) => systemsAt(frame, i)));
  return (
    named.size > 0 &&
    systems.every(({ id, method }) => !named.has(id) || method === 'non-circulating')
  );
}

function systemsAt({ terms }: Frame, i: number): readonly SystemId[] {
  const term = terms[i];
  return term?.kind === 'name' ? term.systems : [];
}

/** `off since we came back`: that is who was away. */
function isOfSomebody(before: Term | undefined): boolean {
  return means(before, 'self', 'member', 'third-person') && !means(before, 'filler');
}

/** `power went 10 min ago back now`: the time is of what is over, and nobody told another. */
function isTimedBefore(frame: Frame, clause: Clause, broken: number, working: number): boolean {
  const isTimed = (from: number, to: number) => frame.timed.slice(from, to).includes(true);
  return (
    broken < working &&
    isTimed(broken + 1, working) &&
    !isTimed(clause.from, broken) &&
    !isTimed(working + 1, clause.to) &&
    !inClause(
      frame,
      clause,
      (term, i) => frame.timed[i] === true && means(term, 'until', 'since', 'for-so-long'),
    ).length
  );
}

function atWriting(frame: Frame, { from, to, at }: Fact): TimeMark {
  const { writtenAtMs } = frame.context;
  return { from, to, clause: frame.clauseOf[at]!, atMs: writtenAtMs, ...unsaidTime };
}

/** `back on`, `running again`, `it just started` and nothing else: of the one thing that is out. */
function backAgain(frame: Frame, clause: Clause): Fact[] {
  const { outage: open, greenhouse } = frame.context;
  if (!open) return [];
  const at = inClause(
    frame,
    clause,
    (term, i) =>
      means(term, 'started') ||
      (means(term, 'working') && !means(term, 'broken') && saysAgain(frame, i)),
  )[0];
  const saysElse = inClause(
    frame,
    clause,
    (term, i) => i !== at && !frame.timed[i] && !mayStandBesideBack(term),
  );
  if (at === undefined || saysElse.length > 0 || !isRestored(frame, at)) return [];
  const system = greenhouse.systems.find(({ id }) => id === open.system)?.id;
  const fact = outage(frame, 'restored', open.of, at, at);
  return [system ? { ...fact, byDevice: system } : fact];
}

/** `back` alone may be of whoever says it. */
function saysAgain(frame: Frame, i: number): boolean {
  return frame.terms[i]!.text.includes(' ');
}

function mayStandBesideBack(term: Term): boolean {
  return (
    term.kind === 'mark' || means(term, 'pronoun', 'link', 'filler', 'now', 'just-now', 'thanks')
  );
}

/**
 * `die Pumpe läuft seit gestern nicht mehr`: the verb and what it says of the device stand apart.
 * `…, running since 6:30`: whatever had stopped has been running from then on.
 */
function partedState(
  frame: Frame,
  clause: Clause,
): { readonly quantity: 'outage' | 'restored'; readonly at: number } | null {
  const stands = standsAt(frame, clause);
  if (stands !== null) return { quantity: 'outage', at: stands };
  // `running since 6:30`: the time may have taken the verb along.
  const at = inClause(
    frame,
    clause,
    (term, i) => means(term, 'runs') && (!frame.taken[i] || frame.timed[i] === true),
  )[0];
  if (at === undefined) return null;
  for (let i = clause.to - 1; i > at; i--) {
    const term = frame.terms[i];
    if (frame.timed[i]) continue;
    if (means(term, 'again')) return { quantity: 'restored', at };
    if (means(term, 'not')) return { quantity: 'outage', at };
    if (
      frame.taken[i] !== true &&
      term?.kind !== 'name' &&
      !means(term, 'filler', 'place', 'article', 'now')
    )
      return null;
  }
  return frame.timed.slice(clause.from, clause.to).includes(true)
    ? { quantity: 'restored', at }
    : null;
}

/** `die Pumpe der Rinnen steht`: nothing follows that would say where, or at what; without mains every pump does. */
function standsAt(frame: Frame, clause: Clause): number | null {
  const at = inClause(frame, clause, (term) => means(term, 'stands'))[0];
  if (at === undefined || !isPumpIn(frame, clause, at)) return null;
  if (frame.terms.some(isPowerGone)) return null;
  for (let i = at + 1; i < clause.to; i++)
    if (!frame.timed[i] && !means(frame.terms[i], 'since')) return null;
  return at;
}

/** A pump, and not what it stands beside. */
function isPumpIn(frame: Frame, clause: Clause, to: number): boolean {
  return clauseHas(frame, { from: clause.from, to }, 'pump', 'air-pump');
}

/** `pump is running` alone tells nothing; `back`, `running again`, `fixed` do. */
function isRestored(frame: Frame, i: number): boolean {
  const { text } = frame.terms[i]!;
  return !frame.lexicon.own.vocabulary.words.now.includes(text) && !means(frame.terms[i], 'rising');
}

/** A state told of the device: `down 5 cm` and `off the top` tell of something else. */
function isState(frame: Frame, clause: Clause, i: number): boolean {
  const after = i + 1 < clause.to ? frame.terms[i + 1] : undefined;
  const isAmount = after?.kind === 'measure' && frame.timed[i + 1] !== true;
  if (isAmount && means(frame.terms[i], 'down', 'link')) return false;
  if (means(frame.terms[i], 'place', 'from') && frame.timed[i + 1] !== true) {
    const leads =
      after?.kind === 'name' ||
      isUnknown(after) ||
      means(after, 'article', 'solution', 'reservoir', 'water');
    if (leads) return false;
  }
  return true;
}

function outage(
  frame: Frame,
  quantity: 'outage' | 'restored',
  of: Supply,
  device: number,
  state: number,
): Fact {
  take(frame, device, state);
  const system = of === 'power' ? null : systemOfDevice(frame, frame.terms[device]);
  return {
    quantity,
    amount: { kind: 'value', value: 1 },
    at: state,
    from: Math.min(device, state),
    to: Math.max(device, state),
    of,
    ...(system ? { byDevice: system } : {}),
    because: quantity,
  };
}
