import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import { isLabel } from '../moods/clause-kinds.ts';
import { type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import type { Named } from './named.ts';
import { numbersCorrected } from './numbers-corrected.ts';
import { nutrientAt, productCorrected } from './product-put-right.ts';
import { productAt } from './products.ts';

/**
 * What would be news by itself and right after a receipt puts it right: `only 20 of B`, `the ec is wrong, 1.9`,
 * `no it was 5.8 after all`, `doch 5,8`.
 */
export function correctOfJustLogged(frame: Frame, named: () => Named): TakingBack | null {
  const { justLogged } = frame.context;
  if (justLogged === undefined) return null;
  const [at, ...others] = frame.places.where(isMeasure);
  if (at === undefined || others.length > 0) return null;
  const product = productCorrected(frame);
  const isOfProduct = product !== null && isLessOfIt(frame, justLogged, product);
  const isPlain =
    isAnotherAmount(frame) || isLessOfOne(frame, justLogged) || isOfFill(frame, justLogged);
  const quantity = isOfProduct ? 'dose' : isPlain ? null : quantityPutRight(frame, justLogged);
  if (quantity === undefined) return null;
  const corrected = numbersCorrected(frame, [at, null], quantity);
  if (corrected === null) return null;
  const { system } = named();
  return { kind: 'correct', ...corrected, system, ...(isOfProduct ? { product } : {}) };
}

/** `only 20 of B`, `von B nur 20`: of one that was just logged. */
function isLessOfIt(frame: Frame, logged: readonly EntryDraft[], product: string): boolean {
  return (
    frame.places.hasAny(['merely']) &&
    logged.some((entry) => entry.quantity === 'dose' && entry.product === product) &&
    frame.terms.every(
      (term, i) =>
        isMeasure(term) ||
        productAt(frame, i) !== null ||
        nutrientAt(frame, i) !== null ||
        isSmall(term, 'merely', 'of', 'from', 'place', 'was', 'add'),
    )
  );
}

/** `no wait, 4 cans`, `ne Moment, 4 Kannen`: nothing but another amount behind words that call the last one off. */
function isAnotherAmount({ terms, places, context }: Frame): boolean {
  if (context.openQuestions.length > 0) return false;
  const [at] = places.where(isMeasure);
  const before = terms.slice(0, at);
  return (
    before.some((term) => means(term, 'called-off', 'said-no')) &&
    terms.every(
      (term) =>
        isMeasure(term) ||
        isSmall(term, 'called-off', 'no-wait', 'said-no', 'sorry', 'was', 'merely'),
    )
  );
}

/** `waren 100 l`, right after new solution whose litres nobody had told. */
function isOfFill({ terms }: Frame, [change, ...others]: readonly EntryDraft[]): boolean {
  const isOpen = change?.quantity === 'reservoir-change' && change.approximate === true;
  return (
    isOpen &&
    others.length === 0 &&
    terms.some((term) => means(term, 'was')) &&
    terms.every((term) => isMeasure(term) || isSmall(term, 'was', 'merely', 'has'))
  );
}

/** `left only 4`, `links nur 4`: of one of several that were told in one. */
function isLessOfOne({ terms, places }: Frame, logged: readonly EntryDraft[]): boolean {
  const [name, ...others] = places.where(isName);
  const named = name === undefined ? undefined : terms[name];
  if (named?.kind !== 'name' || others.length > 0 || !places.hasAny(['merely'])) return false;
  const systems = new Set(logged.map(({ system }) => system));
  return (
    systems.size > 1 &&
    named.systems.every((system) => systems.has(system)) &&
    terms.every(
      (term) =>
        isMeasure(term) ||
        isName(term) ||
        isSmall(term, 'merely', 'place', 'was', 'sorry', 'no-wait'),
    )
  );
}

/** The quantity whose value is told anew, null where no word says which; undefined: nothing is put right. */
function quantityPutRight(
  frame: Frame,
  logged: readonly EntryDraft[],
): Quantity | null | undefined {
  const { terms } = frame;
  const [label, ...others] = frame.places.where(isLabel);
  if (others.length > 0) return undefined;
  const quantity = label === undefined ? null : (quantityOfLabel(terms[label]!) ?? undefined);
  if (quantity === undefined) return undefined;
  if (quantity !== null && !logged.some((entry) => entry.quantity === quantity)) return undefined;
  const isUntrue = quantity !== null && frame.places.hasAny(['untrue']);
  const saysNo = means(terms[0], 'said-no') && frame.places.hasAny(['was', 'after-all']);
  const isAfterAll = means(terms[0], 'called-off') && terms.length === 2;
  if (!isUntrue && !saysNo && !isAfterAll) return undefined;
  const isPlain = terms.every(
    (term) =>
      isMeasure(term) ||
      isLabel(term) ||
      isSmall(term, 'untrue', 'was', 'said-no', 'after-all', 'called-off', 'no-wait'),
  );
  return isPlain ? quantity : undefined;
}

const labelled: readonly (readonly [Concept, Quantity])[] = [
  ['ph', 'ph'],
  ['ec', 'ec'],
  ['temperature', 'water-temperature'],
  ['humidity', 'humidity'],
  ['level', 'level'],
];

function quantityOfLabel(term: Term): Quantity | null {
  return labelled.find(([concept]) => means(term, concept))?.[1] ?? null;
}

function isSmall(term: Term, ...others: readonly Concept[]): boolean {
  if (term.kind === 'stop') return term.cut === 'comma' || term.cut === 'sentence';
  return means(term, 'article', 'pronoun', 'filler', 'link', ...others) && !means(term, 'not');
}
