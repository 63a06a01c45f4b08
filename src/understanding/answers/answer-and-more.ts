import { isReading } from '../../greenhouse/quantity.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { readablesOf } from '../numbers/readables-of.ts';
import {
  type Clause,
  type Frame,
  frameOf,
  isMeasure,
  isPadding,
  measureOf,
} from '../reading/frame.ts';
import { means, type Term } from '../reading/term.ts';
import type { Statement } from '../statement.ts';
import { readAnswer } from './read-answer.ts';

/**
 * `12 l, ph 5.9` after `topped up the dwc`: the first clause answers, and the rest tells more, of the system
 * that was asked about unless it names one. Null: the rest leans on the answer, or tells nothing by itself.
 */
export function answerAndMore(
  frame: Frame,
  readNews: (frame: Frame) => readonly Statement[],
): readonly Statement[] | null {
  const [first, next] = frame.clauses.filter(({ from, to }) => to > from);
  if (!first || !next || first.from > 0) return null;
  const { context, terms } = frame;
  const isOfItsOwn = terms.slice(next.from, next.to).some((term) => isMeasure(term));
  if (!isOfItsOwn && next.closes !== 'question') return null;
  if (isBreathOnly(frame, first)) return null;
  const answer = readAnswer(framed(frame, terms.slice(0, first.to)));
  // `20 ml A and 25 ml B`: an answer that is asked about again was one only in part.
  if (!answer || answer.length === 0 || !answer.every(isSettled)) return null;
  const system = systemAnswered(answer) ?? context.recentSystem;
  const rest = framed(
    { ...frame, context: { ...context, repliedTo: null, openQuestions: [], recentSystem: system } },
    terms.slice(next.from),
  );
  const later = laterValue(rest, answer);
  if (later) return [...answer, later];
  const more = readNews(rest);
  return more.some(isNews) && more.every(isPlain) ? [...answer, ...more] : null;
}

/** `right, ph of the left tub 5.7`: an everyday word before a comma, where no button offers the system that it may name. */
function isBreathOnly({ terms, context }: Frame, { from, to }: Clause): boolean {
  const word = terms[from];
  if (to !== from + 1 || word?.kind !== 'name' || !word.everyday) return false;
  return !context.openQuestions.some(({ doubt }) =>
    doubt.choices.some(
      ({ label }) => label.kind === 'system' && word.systems.includes(label.system),
    ),
  );
}

/** `yes, but 5.6 now`: nothing but a number that holds now, of the one reading that was answered. */
function laterValue(frame: Frame, answer: readonly Statement[]): Statement | null {
  const drafts = answer.flatMap((one) => (one.kind === 'answered' ? one.drafts : []));
  const [draft] = drafts;
  const { terms, context } = frame;
  const at = terms.findIndex(isMeasure);
  const isNow = terms.some((term) => means(term, 'now', 'after'));
  const isAlone = terms.every((term, i) => i === at || term.kind === 'stop' || isPadding(term));
  if (!draft || drafts.length > 1 || !isReading(draft.quantity) || !isNow || !isAlone) return null;
  const [read] = readablesOf(measureOf(frame, at), context.greenhouse.units, draft.quantity);
  if (!read) return null;
  return {
    kind: 'entry',
    draft: { ...draft, value: read.value, atMs: context.writtenAtMs },
    span: { from: terms[at]!.from, to: terms[at]!.to },
    because: ['later value of what was answered'],
    assumptions: [],
  };
}

function framed({ context, lexicon, folded }: Frame, terms: readonly Term[]): Frame {
  return frameOf(context, lexicon, folded, terms);
}

function systemAnswered(answer: readonly Statement[]): SystemId | null {
  const drafts = answer.flatMap((one) =>
    one.kind === 'answered' ? one.drafts : one.kind === 'doubt' ? (one.waiting?.drafts ?? []) : [],
  );
  const systems = new Set(drafts.map(({ system }) => system));
  const [only] = systems;
  return systems.size === 1 ? (only ?? null) : null;
}

function isSettled(statement: Statement): boolean {
  return (
    statement.kind === 'answered' ||
    (statement.kind === 'doubt' && statement.reason.kind === 'out-of-range')
  );
}

function isNews({ kind }: Statement): boolean {
  return kind === 'entry' || kind === 'ask' || kind === 'done' || kind === 'doubt';
}

/** What a number is, or of which system, is in doubt where it leans on what was said before it. */
function isPlain(statement: Statement): boolean {
  if (statement.kind !== 'doubt') return statement.kind !== 'taking-back';
  const { kind } = statement.reason;
  return kind === 'out-of-range' || kind === 'missing-amount' || kind === 'litres-to-brim';
}
