import { isReading, type Quantity } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { type Frame, isName } from '../reading/frame.ts';
import { onceFor } from '../reading/once-for.ts';
import { means, type Term } from '../reading/term.ts';
import type { Ask } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Vocabulary } from '../vocabulary/vocabulary.ts';

/** A reading that a question may be about without saying so. */
interface ReadingTold {
  readonly system: SystemId | null;
  readonly quantity: Quantity;
  readonly value: number;
}

/** `is that too low`: the reading of the message replied to, or the one just told; null: there is none. */
export function readingSpokenOf({ context }: Frame): ReadingTold | null {
  const { repliedTo, justLogged = [] } = context;
  const told = repliedTo?.kind === 'message' ? repliedTo.entries : justLogged;
  return told.find(({ quantity }) => isReading(quantity)) ?? null;
}

/** `it`, and `are they` where that is one phrase. */
export function refersBack(frame: Frame, term: Term): boolean {
  if (means(term, 'pronoun')) return true;
  if (!means(term, 'is-it', 'did', 'done')) return false;
  const space = term.text.lastIndexOf(' ');
  return space > 0 && pronounsOf(frame.lexicon.own.vocabulary).has(term.text.slice(space + 1));
}

const pronounsOf = onceFor(({ words }: Vocabulary) => new Set(words.pronoun));

const ofLate: readonly Ask['kind'][] = [
  'how-long',
  'when-next',
  'last-reading',
  'use',
  'is-it-right',
  'how-much',
  'who',
];

/** `how long does it last`, `how much pH down is that`: of the one system named of late. */
export function withSystemOfLate(ask: Ask, frame: Frame, from: number, to: number): Ask {
  const { recentSystem } = frame.context;
  if (recentSystem === null || !('system' in ask) || ask.system !== null) return ask;
  if (!ofLate.includes(ask.kind) || isOfProbe(ask)) return ask;
  const terms = frame.terms.slice(from, to);
  const has = (...concepts: readonly Concept[]) => terms.some((term) => means(term, ...concepts));
  if (has('all', 'both', 'which', 'the-most', 'other-one') || terms.some(isName)) return ask;
  const refers = terms.some((term) => refersBack(frame, term)) && !has('self', 'member');
  const isOfProduct = ask.kind === 'how-much' && ask.product !== null;
  return refers || isOfProduct ? { ...ask, system: recentSystem } : ask;
}

function isOfProbe(ask: Ask): boolean {
  if (ask.kind === 'when-next') return ask.duty === 'calibration';
  return ask.kind === 'who' && ask.quantity === 'calibration';
}
