import type { SystemId } from '../../greenhouse/system.ts';
import { isVolume, round } from '../numbers/quantity-of-measure.ts';
import { type Frame, isMeasure, isName, measureOf } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Statement, TakingBack } from '../statement.ts';
import { numbersCorrected } from './numbers-corrected.ts';

/**
 * `the can in the jars was a jug`: what was poured into a system was another amount; `oh no, those jugs went in the jars`:
 * it went into another system. Of a vessel spoken of as known, so that no more was poured.
 */
export function vesselTold(frame: Frame): TakingBack | null {
  const said = knownVessel(frame);
  if (!said) return null;
  const { system, name, vessel } = said;
  const { terms, places } = frame;
  const verb = terms.findIndex((term, i) => i > vessel && isTelling(term));
  const [amount, ...amounts] = places.where(isMeasure);
  if (verb < 0 || amounts.length > 0) return null;
  if (amount === undefined)
    return verb < name && saysWhere(terms, verb, name)
      ? { kind: 'move', system, quantity: 'top-up' }
      : null;
  const isOfIt = name < verb && verb < amount && isVolume(measureOf(frame, amount));
  const corrected = isOfIt ? numbersCorrected(frame, [amount, null], 'top-up') : null;
  return corrected && { kind: 'correct', ...corrected, system };
}

interface KnownVessel {
  readonly system: SystemId;
  /** The places of the system's name and of the vessel. */
  readonly name: number;
  readonly vessel: number;
}

/** A vessel that is spoken of as known, and the one system named. */
function knownVessel({ terms, places }: Frame): KnownVessel | null {
  const [name, ...names] = places.where(isName);
  const called = terms[name ?? -1];
  if (name === undefined || names.length > 0 || called?.kind !== 'name') return null;
  const [system] = called.systems;
  if (!called.sure || called.systems.length !== 1 || system === undefined) return null;
  const vessel = terms.findIndex((term) => !isExcuse(term)) + 1;
  if (!isKnown(terms[vessel - 1]) || !means(terms[vessel], 'vessel')) return null;
  if (!terms.slice(vessel + 1).every(mayFollow)) return null;
  return { system, name, vessel };
}

/**
 * `oh, the jug went in the jars`, after `two cans and a jug` went into another: of what was told only the one vessel
 * goes there, and the rest stays. Null: it is all of it, or something else.
 */
export function vesselMoved(frame: Frame): readonly Statement[] | null {
  const { justLogged = [] } = frame.context;
  const [told, ...others] = justLogged;
  if (told?.quantity !== 'top-up' || others.length > 0) return null;
  const said = knownVessel(frame);
  if (!said || said.system === told.system || vesselTold(frame)?.kind !== 'move') return null;
  const litres = litresOf(frame, frame.terms[said.vessel]!);
  const left = litres === null ? 0 : round(told.value - litres);
  if (litres === null || left <= 0) return null;
  const span = { from: 0, to: frame.folded.text.length };
  const because = ['one vessel of it went elsewhere'];
  const { system, value, atMs } = told;
  const back: TakingBack = {
    kind: 'correct',
    said: left,
    to: [{ quantity: 'top-up', value: left }],
    from: [{ quantity: 'top-up', value }],
    system,
  };
  return [
    { kind: 'taking-back', back, span, because },
    {
      kind: 'entry',
      draft: { system: said.system, quantity: 'top-up', value: litres, atMs },
      span,
      because,
      assumptions: [],
    },
  ];
}

/** What one of it holds; null: nobody has said, or it is several. */
function litresOf({ lexicon, context }: Frame, { text }: Term): number | null {
  const { containers } = context.greenhouse;
  return lexicon.containers.has(text)
    ? (containers.find(({ name }) => name.toLowerCase() === text)?.litres ?? null)
    : null;
}

function isExcuse(term: Term): boolean {
  return (
    term.kind === 'stop' ||
    (means(term, 'sorry', 'no-wait', 'said-no', 'filler') && !means(term, 'article'))
  );
}

/** `the`, `those`; not `a`. */
function isKnown(term: Term | undefined): boolean {
  return means(term, 'article', 'pronoun') && !means(term, 'indefinite');
}

function isTelling(term: Term): boolean {
  return (
    means(term, 'was', 'goes-in') ||
    (means(term, 'took') && !means(term, 'place')) ||
    (means(term, 'add') && means(term, 'received'))
  );
}

/** `went in the jars`, `were for the jars`. */
function saysWhere(terms: readonly Term[], verb: number, name: number): boolean {
  const isIn = means(terms[verb], 'received', 'goes-in');
  return isIn || terms.slice(verb + 1, name).some((term) => means(term, 'place'));
}

function mayFollow(term: Term): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'sentence';
  return (
    isName(term) ||
    isMeasure(term) ||
    isTelling(term) ||
    means(term, 'article', 'place', 'filler', 'pronoun', 'merely')
  );
}
