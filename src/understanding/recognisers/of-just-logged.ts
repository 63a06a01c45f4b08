import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Fact } from '../fact.ts';
import type { Measure } from '../numbers/measure.ts';
import { isBare, isVolume, millilitre, unitIs } from '../numbers/quantity-of-measure.ts';
import {
  type Clause,
  clauseHas,
  type Frame,
  inClause,
  isMeasure,
  isPadding,
  measureOf,
  measuresIn,
  namesIn,
  takeRange,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { unsaidTime } from '../times/time-mark.ts';

/** `another 300`, `plus 10 more`, and nothing else, right after a top-up or a dose of one system: more of it. */
export function recogniseMoreOfLogged(frame: Frame): Fact[] {
  const { justLogged } = frame.context;
  const [last, ...others] = justLogged ?? [];
  const clause = onlyClause(frame);
  if (!last || others.length > 0 || last.system === null || !clause) return [];
  if (last.quantity !== 'top-up' && last.quantity !== 'dose') return [];
  const [number, ...more] = measuresIn(frame, clause);
  if (more.length > 0 || !saysOnlyMore(frame, clause)) return [];
  const at = number ?? clause.from;
  const told =
    number === undefined ? oneMore(frame, last) : asMuchMore(frame, measureOf(frame, number), last);
  if (!told) return [];
  takeRange(frame, clause.from, clause.to);
  const { product } = last;
  return [
    {
      quantity: last.quantity,
      ...told,
      ...(product === undefined ? {} : { product }),
      ...(last.approximate ? { approximate: true } : {}),
      at,
      from: at,
      to: at,
      inTurn: last.system,
      because: 'more of what was just told',
    },
  ];
}

/** The one clause that says anything; `plus` and `and` leave an empty one before it. */
function onlyClause({ clauses }: Frame): Clause | null {
  const [clause, ...others] = clauses.filter(({ from, to }) => from < to);
  return clause && others.length === 0 && clause.closes !== 'question' ? clause : null;
}

function saysOnlyMore(frame: Frame, clause: Clause): boolean {
  // `noch 10` may be what is left; `noch 10 dazu`, `und noch 10`, `nochmal 10` are not.
  const isPlain = clause.opens === 'and' || clauseHas(frame, clause, 'add');
  const isMore = (term: Term): boolean =>
    (means(term, 'another') && (isPlain || !means(term, 'in-doubt'))) || isOneMore(frame, term);
  return (
    inClause(frame, clause, isMore).length > 0 &&
    inClause(frame, clause, (term) => !isOfMore(term)).length === 0
  );
}

/** `another can`, `one more can`, `2 more cans`: the word for it stands within the amount. */
function isOneMore({ lexicon }: Frame, term: Term): boolean {
  if (!isMeasure(term) || !term.text.includes(' ')) return false;
  return term.text.split(' ').some((word) => {
    const concepts = lexicon.own.phrases.get([word])?.concepts;
    return concepts?.has('another') === true && !concepts.has('in-doubt');
  });
}

function isOfMore(term: Term): boolean {
  return (
    isMeasure(term) ||
    isPadding(term) ||
    means(term, 'another', 'after', 'then', 'add', 'indefinite', 'just-now')
  );
}

/** `and one more`: of the vessel that it was told in; null: nothing that there is one of. */
function oneMore(
  { context }: Frame,
  { quantity, saidIn }: EntryDraft,
): Pick<Fact, 'amount' | 'saidIn'> | null {
  if (quantity !== 'top-up' || saidIn?.zeroAt !== 0) return null;
  const { perUnit } = saidIn;
  const isVessel = context.greenhouse.containers.some(({ litres }) => litres === perUnit);
  return isVessel ? { amount: { kind: 'value', value: perUnit }, saidIn } : null;
}

/** In the unit that is said, else in the one that the entry was told in; null: of something else. */
function asMuchMore(
  { context }: Frame,
  measure: Measure,
  { quantity, saidIn }: EntryDraft,
): Pick<Fact, 'amount' | 'bareVolume' | 'saidIn'> | null {
  const isDose = quantity === 'dose';
  if (!isBare(measure))
    return isVolume(measure) && unitIs(measure, 'ml', 'cl') === isDose
      ? { amount: { kind: 'measure', measure } }
      : null;
  if (isDose) return { amount: { kind: 'measure', measure: { ...measure, unit: millilitre } } };
  if (saidIn && saidIn.zeroAt !== 0) return null;
  if (!saidIn)
    return {
      amount: { kind: 'measure', measure },
      bareVolume: context.greenhouse.units.volume === 'L',
    };
  const [value] = measure.values;
  if (value === undefined) return null;
  return { amount: { kind: 'value', value: value * saidIn.perUnit }, saidIn };
}

/** Of several minutes ago is as good as now; what was told of another time keeps it. */
const sameTimeMs = 10 * 60_000;

/** `same for the gutters`, and nothing else, right after what was told of one system: the same of these. */
export function sameAsLogged(frame: Frame, clause: Clause, at: number): Fact[] {
  const { justLogged, writtenAtMs } = frame.context;
  if (!justLogged || justLogged.length === 0 || clause !== onlyClause(frame)) return [];
  const of = new Set(justLogged.map(({ system }) => system));
  const [system] = of;
  if (of.size !== 1 || system === null || system === undefined) return [];
  if (isNamed(frame, clause, system) || !justLogged.every(isCopied)) return [];
  return justLogged.map((entry): Fact => {
    const { quantity, value, product, approximate, atMs, saidIn } = entry;
    const isOfNow = writtenAtMs - atMs <= sameTimeMs;
    return {
      quantity,
      amount: { kind: 'value', value },
      at,
      from: at,
      to: at,
      each: true,
      eachOf: 'systems',
      ...(product === undefined ? {} : { product }),
      ...(approximate ? { approximate } : {}),
      ...(saidIn ? { saidIn } : {}),
      ...(isOfNow
        ? {}
        : { time: { from: at, to: at, clause: frame.clauseOf[at]!, atMs, ...unsaidTime } }),
      because: 'same as what was just told',
    };
  });
}

function isNamed(frame: Frame, clause: Clause, system: SystemId): boolean {
  return namesIn(frame, clause).some((i) => {
    const term = frame.terms[i];
    return term?.kind === 'name' && term.systems.includes(system);
  });
}

const copied = ['ph', 'ec', 'water-temperature', 'dissolved-oxygen', 'level', 'top-up', 'dose'];

/** Depths and shares are other litres in another system. */
function isCopied({ quantity, saidAs }: EntryDraft): boolean {
  return copied.includes(quantity) && saidAs === undefined;
}
