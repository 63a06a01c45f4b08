import { opensAsAsked } from '../moods/opens-as-asked.ts';
import { type Frame, isMeasure } from '../reading/frame.ts';
import { onceFor } from '../reading/once-for.ts';
import { means, type Term } from '../reading/term.ts';
import type { Ask, Statement } from '../statement.ts';
import type { Vocabulary } from '../vocabulary/vocabulary.ts';
import type { TopicAsked } from '../wishes/wish.ts';

/**
 * `does tap water work`, `my kid wants to help, is that ok`: a question that asks for nothing in the log, but has a
 * topic that there is something to say of. Only where nothing else was understood.
 */
export function withTopic(frame: Frame, statements: readonly Statement[]): readonly Statement[] {
  if (!statements.every(isWeak) || frame.terms.some(isMeasure)) return statements;
  if (!asks(frame, statements)) return statements;
  const topic = topicIn(frame);
  const isOfWork = statements.some(isOfWhatIsDue);
  if (topic === null || (isOfWork && !besideWork.includes(topic))) return statements;
  const span = { from: 0, to: frame.folded.text.length };
  return [{ kind: 'ask', ask: { kind: 'topic', of: topic }, span, because: ['topic'] }];
}

/** What may be asked in the same breath as what to do. */
const besideWork: readonly TopicAsked[] = ['putting-right', 'privacy', 'overdosing', 'sureness'];

function isWeak(statement: Statement): boolean {
  if (statement.kind === 'doubt') return statement.reason.kind === 'unclear';
  return statement.kind === 'passed-over' || (statement.kind === 'ask' && isVague(statement.ask));
}

/** It names nothing that it would be about. */
function isVague(ask: Ask): boolean {
  switch (ask.kind) {
    case 'unknown':
    case 'how-is-it-going':
    case 'which-value':
      return true;
    case 'why':
      return ask.system === null && ask.duty === undefined && ask.probe === undefined;
    case 'what-is-due':
    case 'show':
    case 'how-long':
      return ask.system === null;
    default:
      return false;
  }
}

function isOfWhatIsDue(statement: Statement): boolean {
  return statement.kind === 'ask' && statement.ask.kind === 'what-is-due';
}

function asks(frame: Frame, statements: readonly Statement[]): boolean {
  const { asksReader } = frame.lexicon.own.vocabulary;
  if (statements.some(({ kind }) => kind === 'ask') || opensAsAsked(frame)) return true;
  if (frame.terms.some((term) => term.kind === 'stop' && term.cut === 'question')) return true;
  // `erzählst du das der Mama`: whatever the verb, it is asked of whoever reads it.
  const words = frame.folded.text.toLowerCase().split(notAWord).filter(Boolean);
  if (asksReader.includes(words.slice(0, 2).join(' '))) return true;
  // `does tap water work`, `geht auch Leitungswasser`.
  const first = frame.terms.find((term) => !means(term, 'filler', 'greeting', 'member'));
  if (first && (isAsking(first) || means(first, 'is-it', 'runs'))) return true;
  // `meine Tochter will helfen, darf sie das`.
  const opens = frame.clauses.some(
    ({ from, to }) => from < to && means(frame.terms[from], 'is-it'),
  );
  return statements.every(({ kind }) => kind === 'doubt') && (opens || frame.terms.some(isAsking));
}

function isAsking(term: Term): boolean {
  return means(term, 'what', 'how', 'why', 'who', 'which', 'help', 'due');
}

function topicIn({ folded, lexicon }: Frame): TopicAsked | null {
  const said = ` ${folded.text.toLowerCase().split(notAWord).filter(Boolean).join(' ')} `;
  for (const { vocabulary } of [lexicon.own, ...lexicon.others])
    for (const [phrase, topic] of phrasesOf(vocabulary)) if (said.includes(phrase)) return topic;
  return null;
}

const notAWord = /[^\p{L}\p{N}']+/u;

/** Each with a blank before and after, so that whole words are found. */
const phrasesOf = onceFor(({ topics }: Vocabulary) =>
  (Object.entries(topics) as [TopicAsked, readonly string[]][]).flatMap(([topic, phrases]) =>
    phrases.map((phrase) => [` ${phrase} `, topic] as const),
  ),
);
