import type { Probe } from '../../greenhouse/greenhouse.ts';
import type { Fact } from '../fact.ts';
import { convert } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  measureOf,
  measuresIn,
  namesIn,
  take,
} from '../reading/frame.ts';
import { isMark, means, type Term } from '../reading/term.ts';

interface Pair {
  readonly reference: number;
  readonly shown: number;
}

/** `calibrated the pen: 7.00 read 7.12, 4.01 read 4.08`; one entry a reference. */
export function recogniseCalibrations(frame: Frame): Fact[] {
  const more = anotherReference(frame);
  if (more) return more;
  const facts: Fact[] = [];
  let probe: Probe | null = null;
  for (let c = 0; c < frame.clauses.length; c++) {
    const clause = frame.clauses[c]!;
    probe = probeIn(frame, clause) ?? probe;
    const behind = verbBehind(frame, c);
    const calibrates = behind !== null || hasCalibrate(frame, c);
    const isTried =
      checksInBuffer(frame, clause) ||
      readsBuffers(frame, clause, probe) ||
      isTriedAcross(frame, c);
    if (!calibrates && !isTried) continue;
    const last = behind ?? lastClauseOfPairs(frame, c);
    const verb = behind === null ? anchorOf(frame, clause) : clause.from;
    const pairs: Pair[] = [];
    for (let d = c; d <= last; d++) {
      probe ??= probeIn(frame, frame.clauses[d]!);
      const across = pairAcross(frame, d);
      if (across) pairs.push(across);
      else if (d === c || !pairAcross(frame, d - 1))
        pairs.push(...pairsIn(frame, frame.clauses[d]!));
    }
    facts.push(...factsOf(frame, pairs, probe, verb, calibrates));
    // Nothing before the verb is of the calibration, unless it is one of its pairs.
    const inPairs = new Set(pairs.flatMap(({ reference, shown }) => [reference, shown]));
    for (let d = c; d <= last; d++) {
      take(
        frame,
        ...measuresIn(frame, frame.clauses[d]!).filter((i) => i > verb || inPairs.has(i)),
      );
    }
    c = last;
  }
  return facts;
}

/** `and 4.01 read 4.08`, and nothing else, right after a calibration: of the same probe. */
function anotherReference(frame: Frame): Fact[] | null {
  const { calibrating } = frame.context;
  if (calibrating === undefined || !frame.terms.every(isOfReference)) return null;
  const facts = answeredCalibrations(frame, calibrating);
  const isUsual = facts?.every(({ at }) =>
    usualReferences.includes(measureOf(frame, at).values[0]!),
  );
  if (!facts || !isUsual) return null;
  take(frame, ...frame.clauses.flatMap((clause) => measuresIn(frame, clause)));
  return facts;
}

function isOfReference(term: Term): boolean {
  if (term.kind === 'measure' || term.kind === 'mark') return true;
  if (term.kind === 'stop') return term.cut !== 'question';
  return means(term, 'read-as', 'link', 'filler', 'buffer', 'place', 'article', 'then', 'after');
}

/** `7.00 read 7.12` as an answer to the question what a probe read; null if the message is anything else. */
export function answeredCalibrations(frame: Frame, probeName: string | undefined): Fact[] | null {
  const { probes } = frame.context.greenhouse;
  const probe = probes.find(({ name }) => name === probeName) ?? null;
  const pairs = frame.clauses.flatMap((clause) => pairsIn(frame, clause));
  const measures = frame.clauses.flatMap((clause) => measuresIn(frame, clause)).length;
  if (pairs.length === 0 || measures !== 2 * pairs.length) return null;
  return factsOf(frame, pairs, probe, 0, true);
}

function factsOf(
  frame: Frame,
  pairs: readonly Pair[],
  probe: Probe | null,
  verb: number,
  calibrates: boolean,
): Fact[] {
  const found = pairs.flatMap(({ reference, shown }): Fact[] => {
    const by = probe ?? probeByValue(frame, reference);
    const value = by ? inItsUnit(frame, by, reference) : null;
    const read = by ? inItsUnit(frame, by, shown) : null;
    if (!by || value === null || read === null) return [];
    const name = { probe: by.name, read };
    return [
      {
        quantity: 'calibration',
        amount: { kind: 'value', value },
        at: reference,
        from: verb,
        to: shown,
        ...name,
        because: 'calibration',
      },
    ];
  });
  if (found.length > 0 || !calibrates) return found;
  const name = probe ? { probe: probe.name } : {};
  return [
    {
      quantity: 'calibration',
      amount: { kind: 'missing' },
      at: verb,
      from: verb,
      to: verb,
      ...name,
      because: 'calibration',
    },
  ];
}

/** `pen: 7.00 reads 7.10, 4.01 reads 4.05, calibrated`: the clause of the verb alone that ends the list of pairs. */
function verbBehind(frame: Frame, c: number): number | null {
  if (pairsIn(frame, frame.clauses[c]!).length === 0 || hasCalibrate(frame, c)) return null;
  const end = lastClauseOfPairs(frame, c) + 1;
  const clause = frame.clauses[end];
  if (!clause || clause.opens === 'line' || !hasCalibrate(frame, end)) return null;
  const isAlone = frame.terms
    .slice(clause.from, clause.to)
    .every(
      (term) =>
        means(term, 'calibrate', 'filler', 'self', 'pronoun', 'now', 'all', 'both', 'article') ||
        (term.kind === 'word' && term.word.probe !== null),
    );
  return isAlone ? end : null;
}

function hasCalibrate(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c]!;
  const [verb] = inClause(frame, clause, (term, i) => means(term, 'calibrate') && !frame.taken[i]);
  return verb !== undefined && !isLeftOver(frame, clause, verb);
}

/** `did everything except the calibration`, `all done but the calibration`: the work that is left. */
function isLeftOver(frame: Frame, clause: Clause, verb: number): boolean {
  if (measuresIn(frame, clause).length > 0) return false;
  const before = frame.clauses[frame.clauseOf[clause.from]! - 1];
  const isBut = clause.opens === 'but' && verb === clause.to - 1 && before !== undefined;
  if (isBut && clauseHas(frame, before, 'done', 'did', 'all'))
    return frame.terms.slice(clause.from, verb).every((term) => means(term, 'article', 'not'));
  const except = frame.terms.findIndex((term, i) => i >= clause.from && means(term, 'except'));
  return except >= clause.from && except < verb && clauseHas(frame, clause, 'done', 'did', 'all');
}

function anchorOf(frame: Frame, clause: Clause): number {
  for (let i = clause.from; i < clause.to; i++) if (means(frame.terms[i], 'calibrate')) return i;
  return clause.from;
}

/** The clauses that go on listing references and what they read. */
function lastClauseOfPairs(frame: Frame, c: number): number {
  let last = c;
  while (last + 1 < frame.clauses.length) {
    const next = frame.clauses[last + 1]!;
    const isPair = pairsIn(frame, next).length > 0 || pairAcross(frame, last) !== null;
    const isBareReference =
      next.opens === 'and' && measuresIn(frame, next).length === 1 && next.to - next.from <= 2;
    if (!isPair && !isBareReference && !(next.from === next.to)) break;
    last++;
  }
  return last;
}

/** pH buffers at 25 °C as they are sold: common practice. */
const buffers: readonly number[] = [1.68, 4, 4.01, 6.86, 7, 7.01, 9.18, 10, 10.01];
/** Conductivity standards in mS/cm and µS/cm as they are sold: common practice. */
const standards: readonly number[] = [1.41, 1.413, 1410, 1413, 2.77, 2770, 12.88, 84];
const usualReferences: readonly number[] = [...buffers, ...standards];

/** A probe tried in what is called a buffer, or in what can only be one. */
function checksInBuffer(frame: Frame, clause: Clause): boolean {
  const pairs = pairsIn(frame, clause);
  const areCalled = pairs.every(({ reference }) => means(frame.terms[reference + 1], 'buffer'));
  const tries = areCalled || probeIn(frame, clause) !== null || clauseHas(frame, clause, 'check');
  if (pairs.length === 0 || !tries) return false;
  if (clauseHas(frame, clause, 'buffer')) return true;
  return pairs.every(
    ({ reference, shown }) =>
      usualReferences.includes(measureOf(frame, reference).values[0]!) &&
      isInBuffer(frame, shown, reference),
  );
}

/** `did the stick in 1413, it said 1380`: a probe, what it was put into, and in the next clause what it read. */
function isTriedAcross(frame: Frame, c: number): boolean {
  const clause = frame.clauses[c]!;
  if (probeIn(frame, clause) === null || namesIn(frame, clause).length > 0) return false;
  const pair = pairAcross(frame, c);
  if (pair === null || !usualReferences.includes(measureOf(frame, pair.reference).values[0]!))
    return false;
  const lead = frame.terms[pair.reference - 1];
  return (
    means(lead, 'place') ||
    (means(lead, 'article') && means(frame.terms[pair.reference - 2], 'place'))
  );
}

/** `pen done, 7 read 7.05, 4 read 4.02`: a probe was named, and each pair is a buffer and what it was read as. */
function readsBuffers(frame: Frame, clause: Clause, probe: Probe | null): boolean {
  const pairs = pairsIn(frame, clause);
  if (probe === null || pairs.length === 0 || namesIn(frame, clause).length > 0) return false;
  return pairs.every(({ reference, shown }) => {
    const [value, read] = [
      measureOf(frame, reference).values[0]!,
      measureOf(frame, shown).values[0]!,
    ];
    const isSaidRead = frame.terms
      .slice(reference + 1, shown)
      .some((term) => means(term, 'read-as'));
    return isSaidRead && buffers.includes(value) && Math.abs(read - value) <= farthestRead;
  });
}

/** No buffer is read as far from what it is as the next one is. */
const farthestRead = 1;

function isInBuffer(frame: Frame, shown: number, reference: number): boolean {
  return frame.terms.slice(shown + 1, reference).some((term) => isJointOf(term, 'in-buffer'));
}

function probeIn(frame: Frame, clause: Clause): Probe | null {
  for (let i = clause.from; i < clause.to; i++) {
    const term = frame.terms[i]!;
    if (term.kind !== 'word' || term.word.probe === null) continue;
    return frame.context.greenhouse.probes.find(({ name }) => name === term.word.probe) ?? null;
  }
  return null;
}

function pairsIn(frame: Frame, clause: Clause): Pair[] {
  const measures = measuresIn(frame, clause);
  const pairs: Pair[] = [];
  for (let n = 0; n + 1 < measures.length; n++) {
    const [a, b] = [measures[n]!, measures[n + 1]!];
    const joint = frame.terms.slice(a + 1, b);
    if (joint.some((term) => isJointOf(term, 'in-buffer'))) pairs.push({ reference: b, shown: a });
    else if (joint.some((term) => isJointOf(term, 'shows')) || isBufferAlone(joint))
      pairs.push({ reference: a, shown: b });
    else continue;
    n++;
  }
  return pairs;
}

/** `7.00 buffer 7.12`, `im 7er 7,1`: nothing but what the reference is called. */
function isBufferAlone(joint: readonly Term[]): boolean {
  return (
    means(joint[0], 'buffer') && joint.every((term) => means(term, 'buffer', 'link', 'filler'))
  );
}

/** `calibrated the pen in 7.00, it read 7.08`: the reference ends one clause, and the next tells what was read. */
function pairAcross(frame: Frame, c: number): Pair | null {
  const [clause, next] = [frame.clauses[c]!, frame.clauses[c + 1]];
  if (!next || (next.opens !== 'comma' && next.opens !== 'and')) return null;
  const [references, read] = [measuresIn(frame, clause), measuresIn(frame, next)];
  if (references.length !== 1 || read.length !== 1) return null;
  const before = frame.terms.slice(next.from, read[0]);
  const saysRead =
    before.some((term) => means(term, 'read-as')) &&
    before.every((term) =>
      means(term, 'read-as', 'pronoun', 'filler', 'instrument', 'article', 'link'),
    );
  return saysRead ? { reference: references[0]!, shown: read[0]! } : null;
}

function isJointOf(term: Term, joint: 'shows' | 'in-buffer'): boolean {
  if (joint === 'in-buffer')
    return (
      (means(term, 'place', 'instead-of') && !means(term, 'read-as', 'to')) ||
      (means(term, 'instead-of') && !means(term, 'link'))
    );
  // `at 7 it said 7.05`, `bei 7 stand 7,05`.
  return means(term, 'read-as', 'link', 'says', 'stands') || isMark(term, '→', '=', ':', '/');
}

/** Without a named probe: the only one that measures what is said, or what the reference is of. */
function probeByValue(frame: Frame, reference: number): Probe | null {
  const measure = measureOf(frame, reference);
  const clause = frame.clauses[frame.clauseOf[reference]!]!;
  const isOfEc = clauseHas(frame, clause, 'ec') && !clauseHas(frame, clause, 'ph');
  const isPh = !isOfEc && measure.unit === null && buffers.includes(measure.values[0]!);
  const { probes } = frame.context.greenhouse;
  const fitting = probes.filter(({ measures }) => measures.includes(isPh ? 'ph' : 'ec'));
  return fitting.length === 1 ? fitting[0]! : null;
}

const greatestPh = 14;

function inItsUnit(frame: Frame, probe: Probe, i: number): number | null {
  const measure = measureOf(frame, i);
  const quantity =
    probe.measures.includes('ph') && measure.unit === null && measure.values[0]! <= greatestPh
      ? 'ph'
      : probe.measures.includes('ec')
        ? 'ec'
        : probe.measures[0];
  if (quantity === undefined) return null;
  if (quantity === 'ph' && measure.values[0]! > greatestPh) return null;
  const converted = convert(quantity, measure, frame.context.greenhouse.units);
  return converted && !converted.unitOpen ? converted.values[0]! : null;
}
