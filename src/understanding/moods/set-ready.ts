import { type Clause, clauseHas, type Frame, isMeasure, isVolumeTerm } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';

/**
 * Where a clause begins to tell of what only stands ready: `5 ml ph down measured out for the dwc`, `put 2 cans out for
 * the bench`. Whether it went in nobody says. Null: it tells of something else, or of what went in as well.
 */
export function onlyReady(frame: Frame, clause: Clause): number | null {
  if (!clauseHas(frame, clause, 'set-ready', 'put-by')) return null;
  const [from, end] = [putBy(frame, clause), frame.sentences[clause.sentence]!.at(-1)!.to];
  if (from !== null) return goesIn(frame, clause.to, end) ? null : from;
  const isReady = clauseHas(frame, clause, 'set-ready');
  if (!isReady || !frame.places.hasWhere(isVolumeTerm, clause.from, clause.to)) return null;
  return goesIn(frame, frame.sentences[clause.sentence]![0]!.from, end) ? null : clause.from;
}

function goesIn(frame: Frame, from: number, to: number): boolean {
  return clauseHas(frame, { from, to }, 'add', 'goes-in', 'top-up');
}

/** The verb of `put 5 ml out`, `put 20 ml A and 20 ml B aside`: with what stood out at its end, it did not go in. */
function putBy(frame: Frame, clause: Clause): number | null {
  const { terms } = frame;
  let by = clause.from;
  while (by < clause.to && !means(terms[by], 'put-by')) by++;
  // `put 5 ml out of the bottle into the dwc`, `poured 2 cans out into the bench`.
  if (by === clause.to || means(terms[by + 1], 'of', 'where-to')) return null;
  let i = by - 1;
  while (i >= 0 && isOfAmount(terms[i]!)) i--;
  return frame.places.hasWhere(isMeasure, i, by) && means(terms[i], 'add') ? i : null;
}

/** What stands between the verb and its `out`: the amounts and their products. */
function isOfAmount(term: Term): boolean {
  if (term.kind === 'measure') return true;
  if (term.kind === 'stop') return term.cut === 'and' || term.cut === 'comma';
  if (term.kind !== 'word') return false;
  const { product, shyProduct, anyProduct } = term.word;
  if (product !== null || shyProduct !== null || anyProduct) return true;
  return means(term, 'of', 'each', 'both', 'article', 'water', 'about', 'another', 'solution');
}
