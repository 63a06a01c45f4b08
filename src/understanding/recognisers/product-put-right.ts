import type { Frame } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { TakingBack } from '../statement.ts';
import { besideCorrection, isMeasureOrName } from './beside-correction.ts';
import { productAt } from './products.ts';

/** `sorry, B was 25`: a nutrient by its short name, where that is no article. */
export function nutrientAt({ terms }: Frame, i: number): string | null {
  const term = terms[i];
  const short = term?.kind === 'word' ? term.word.shyProduct : null;
  if (short === null || short.startsWith('ph-')) return null;
  const isArticle = means(term, 'article') && !means(terms[i + 1], 'link', 'was');
  return isArticle ? null : short;
}

/** The one product that a corrected amount is of. */
export function productCorrected(frame: Frame): string | null {
  const products = new Set(
    frame.terms.flatMap((_, i) => productAt(frame, i) ?? nutrientAt(frame, i) ?? []),
  );
  return products.size === 1 ? [...products][0]! : null;
}

/** `down, not up`, `pH minus mein ich`: nothing but another product than was told. */
export function otherProduct({ terms, places }: Frame): TakingBack | null {
  const isSaid = terms.some((term) =>
    means(term, 'not', 'instead-of', 'meant', 'sorry', 'no-wait'),
  );
  if (!isSaid || places.hasWhere(isMeasureOrName, 0, terms.length)) return null;
  const said = terms.flatMap((term, i) => {
    const product = productSaid(term);
    return product === null ? [] : [{ product, i }];
  });
  if (!terms.every((term) => productSaid(term) !== null || mayStandBeside(term))) return null;
  const givenUp = said.filter(({ i }) => isGivenUp(terms, i));
  const meant = said.filter((each) => !givenUp.includes(each));
  if (meant.length !== 1 || givenUp.length > 1) return null;
  return {
    kind: 'other-product',
    product: meant[0]!.product,
    from: givenUp[0]?.product ?? null,
  };
}

function productSaid(term: Term): string | null {
  if (term.kind !== 'word' || means(term, 'article')) return null;
  return term.word.product ?? term.word.shyProduct;
}

function isGivenUp(terms: readonly Term[], i: number): boolean {
  const lead = means(terms[i - 1], 'article', 'ph') ? terms[i - 2] : terms[i - 1];
  return means(lead, 'not') || (means(lead, 'instead-of') && !means(lead, 'link', 'did-not'));
}

function mayStandBeside(term: Term): boolean {
  if (term.kind === 'stop') return term.cut !== 'question';
  if (term.kind === 'mark') return term.text !== '?';
  return means(term, 'ph', ...besideCorrection);
}
