import { isMark, type MeasureTerm, means, type Term } from './term.ts';

/** `ph 5.9 no wait 6.2`: the second number takes the first one's place. */
export function putRight(terms: readonly Term[]): Term[] {
  const kept = [...terms];
  for (let i = 0; i < kept.length; i++) {
    const first = kept[i];
    if (first?.kind !== 'measure') continue;
    const second = correctionAfter(kept, i);
    if (second === null) continue;
    const better = kept[second] as MeasureTerm;
    const unit = better.measure.unit ?? first.measure.unit;
    kept.splice(i, second - i + 1, { ...better, measure: { ...better.measure, unit } });
    i--;
  }
  return kept;
}

/** The number that corrects the one at `i`: after words like `no wait`, with the same unit or none, and no label of its own. */
function correctionAfter(terms: readonly Term[], i: number): number | null {
  let j = i + 1;
  let said = false;
  let strong = false;
  const labels: number[] = [];
  for (; j < terms.length && j <= i + 8; j++) {
    const term = terms[j]!;
    if (means(term, 'no-wait')) {
      said = true;
      strong ||= !means(term, 'filler', 'no', 'meant') || term.text.includes(' ');
    } else if (
      term.kind === 'stop' &&
      (term.cut === 'comma' || term.cut === 'sentence' || term.cut === 'line')
    )
      continue;
    else if (isMark(term, '-', ':', '*')) continue;
    else if (said && means(term, 'ph', 'ec', 'temperature', 'humidity', 'level', 'oxygen'))
      labels.push(j);
    else if (!(said && means(term, 'link', 'filler', 'article', 'pronoun'))) break;
  }
  const first = terms[i] as MeasureTerm;
  const second = terms[j];
  if (!said || second?.kind !== 'measure') return null;
  const sameUnit =
    second.measure.unit === null ||
    JSON.stringify(second.measure.unit) === JSON.stringify(first.measure.unit);
  if (!sameUnit) return null;
  const after = terms[j + 1];
  const isLabelled = means(after, 'ph', 'ec', 'temperature', 'humidity', 'level');
  if (isLabelled && terms[j + 2]?.kind !== 'measure' && !sameLabel(terms, i, after!)) return null;
  return labels.every((label) => sameLabel(terms, i, terms[label]!)) ? j : null;
}

/** Whether the label is the one that the first number has. */
function sameLabel(terms: readonly Term[], i: number, label: Term): boolean {
  for (let j = i + 1; j >= 0 && j > i - 5; j--) {
    const term = terms[j];
    if (term?.kind === 'word' && label.kind === 'word' && term.text === label.text) return true;
  }
  return false;
}
