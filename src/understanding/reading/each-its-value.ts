import { isLabel } from '../moods/clause-kinds.ts';
import { measureTerm, stopTerm } from './make-term.ts';
import { type MeasureTerm, means, type NameTerm, type Term } from './term.ts';

/**
 * `Wanne und Tisch pH 6 bzw. 5,8`, `bench and gutters 10 and 5 l respectively`: each of two systems with its own value,
 * as if it stood beside its name.
 */
export function withEachItsValue(terms: readonly Term[]): readonly Term[] {
  const said = terms.findIndex((term) => means(term, 'or-each', 'respectively'));
  if (said < 0) return terms;
  const second = secondValue(terms, said);
  if (second === null) return terms;
  const first = second - 2;
  const names = twoNamesBefore(terms, first);
  if (!names) return terms;
  const [a, b] = names;
  const [one, other] = [terms[first] as MeasureTerm, terms[second] as MeasureTerm];
  const unit = one.measure.unit ?? other.measure.unit;
  const between = terms.slice(b + 1, first);
  const rest = terms.slice(second + 1).filter((term) => !means(term, 'respectively'));
  return [
    ...terms.slice(0, a + 1),
    ...between,
    measureTerm(one, { ...one.measure, unit }),
    stopTerm(terms[first + 1]!, 'and'),
    terms[b]!,
    ...between.filter(isLabel),
    other,
    ...rest,
  ];
}

/** Of two values, with nothing but their joint between them, the second. */
function secondValue(terms: readonly Term[], said: number): number | null {
  const at = terms.findIndex(
    (term, i) =>
      term.kind === 'measure' && terms[i - 2]?.kind === 'measure' && isJoint(terms[i - 1]),
  );
  if (at < 0) return null;
  return means(terms[said], 'respectively') || means(terms[at - 1], 'or-each') ? at : null;
}

function isJoint(term: Term | undefined): boolean {
  return (term?.kind === 'stop' && term.cut === 'and') || means(term, 'or-each');
}

/** The only two names before the values, joined to each other. */
function twoNamesBefore(terms: readonly Term[], to: number): readonly [number, number] | null {
  const names = terms.flatMap((term, i) => (i < to && term.kind === 'name' ? [i] : []));
  const [a, b, ...others] = names;
  if (a === undefined || b === undefined || others.length > 0) return null;
  const isSure = [a, b].every((i) => (terms[i] as NameTerm).sure);
  const joint = terms.slice(a + 1, b);
  const isJoined =
    joint.some(isJoint) && joint.every((term) => isJoint(term) || means(term, 'article', 'place'));
  const isDirect = !terms
    .slice(b + 1, to)
    .some(({ kind }) => kind === 'measure' || kind === 'stop');
  return isSure && isJoined && isDirect ? [a, b] : null;
}
