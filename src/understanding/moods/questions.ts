import { isVolume } from '../numbers/quantity-of-measure.ts';
import { type Clause, type Frame, isMeasure, isName } from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import { isLabel } from './clause-kinds.ts';
import { questionStart } from './question-start.ts';

/** A stretch that asks: in words, or by a question mark alone. */
export interface Questioned {
  readonly from: number;
  readonly to: number;
  readonly mood: 'question' | 'queried';
}

/** Where the message asks, sentence by sentence. */
export function findQuestions(frame: Frame): readonly Questioned[] {
  return frame.sentences.flatMap((clauses) => questionsOf(frame, clauses));
}

function questionsOf(frame: Frame, clauses: readonly Clause[]): readonly Questioned[] {
  const end = clauses.at(-1)!;
  const asked = end.closes === 'question';
  for (const [n, clause] of clauses.entries()) {
    const start = questionStart(frame, clause, asked, n === clauses.length - 1);
    if (start === null) continue;
    if (asked) return [{ from: start, to: end.to, mood: 'question' }];
    const last = lastOfQuestion(frame, clauses, n);
    const rest = clauses.slice(clauses.indexOf(last) + 1);
    return [
      { from: start, to: last.to, mood: 'question' },
      ...(rest.length > 0 ? questionsOf(frame, rest) : []),
    ];
  }
  if (!asked) return [];
  if (isTag(frame, end)) return [{ from: end.from, to: end.to, mood: 'question' }];
  const first = clauses[0]!;
  const hasNumbers = frame.terms.slice(first.from, end.to).some(isMeasure);
  // `dwc ph?` asks, `dwc ph 5.4?` wants to know whether to log it.
  return [{ from: first.from, to: end.to, mood: hasNumbers ? 'queried' : 'question' }];
}

/** `…, ok?`: asks about what was said before. */
function isTag(frame: Frame, clause: Clause): boolean {
  const words = frame.terms.slice(clause.from, clause.to);
  return (
    clause.opens !== 'start' &&
    words.length > 0 &&
    words.every((term) => means(term, 'judged', 'filler', 'yes', 'said-no'))
  );
}

/** Without a question mark a question ends where a clause says something of its own. */
function lastOfQuestion(frame: Frame, clauses: readonly Clause[], n: number): Clause {
  let last = clauses[n]!;
  for (const clause of clauses.slice(n + 1)) {
    const tells =
      (clause.opens !== 'and' || isOfItsOwn(frame, clauses[n]!, clause)) &&
      !isProductToo(frame, clauses[n]!, clause) &&
      tellsSomething(frame, clause);
    if (tells || clause.opens === 'but') break;
    last = clause;
  }
  return last;
}

/** `what's due, and log ph 5.9 for the gutters`: a reading of a system, where the question was of no value. */
function isOfItsOwn(frame: Frame, question: Clause, clause: Clause): boolean {
  const has = (test: (term: Term) => boolean, { from, to }: Clause): boolean =>
    frame.terms.slice(from, to).some(test);
  const isFull = has(isLabel, clause) && has(isName, clause);
  return isFull && !has(isLabel, question) && !has(isMeasure, question) && !has(isName, question);
}

/** `how much A and B for EC 2.0 in the buckets`: a second product that is asked about, of which no amount is told. */
function isProductToo({ terms }: Frame, question: Clause, { from, to }: Clause): boolean {
  return (
    isProduct(terms[from]) &&
    terms.slice(question.from, question.to).some(asksAmount) &&
    !terms.slice(from, to).some(isAmount)
  );
}

function asksAmount(term: Term): boolean {
  return means(term, 'how-much');
}

function isAmount(term: Term): boolean {
  return isMeasure(term) && isVolume(term.measure);
}

function isProduct(term: Term | undefined): boolean {
  if (term?.kind !== 'word') return false;
  return term.word.product !== null || term.word.shyProduct !== null || term.word.anyProduct;
}

function tellsSomething(frame: Frame, clause: Clause): boolean {
  const terms = frame.terms.slice(clause.from, clause.to);
  return terms.some(isMeasure) && terms.some((term) => isLabel(term) || isName(term));
}
