import type { AnswerOf } from '../../spoken/answer-of.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { stretches } from './family-alert.ts';
import { daysText, settledSentence, whoDoes } from './settled.ts';

/** That somebody can go after all, and whose turn it is then. */
export function afterAllText(answer: AnswerOf<'after-all'>, s: Speaker): string {
  const { handle, from, until, was } = answer;
  const days = daysText(from, until, s);
  switch (was) {
    case 'hindered':
      return `${settledSentence({ kind: 'can-go', handle, from, until }, s)} ${turnText(answer, s)}`;
    case 'free':
      return `Nothing stood against it: ${s.person(handle).name} can go ${days}, by what I know. ${turnText(answer, s)}`;
    case 'away':
      return `${whoDoes(handle, 'are', 'is', s)} away ${days} by what I know, so nothing was changed. Where that is over, say “back ${days}”.`;
  }
}

function turnText(
  { handle, from, until, turns, others }: AnswerOf<'after-all'>,
  s: Speaker,
): string {
  const whose = s.isReader(handle) ? 'your' : `${s.member(handle)}'s`;
  if (turns.length > 0) {
    return from === until
      ? `It is ${whose} turn then.`
      : `${s.capital(whose)} days: ${stretches(turns, s)}.`;
  }
  const [only, ...more] = others;
  if (only === undefined) return 'Nobody else is put down.';
  if (more.length === 0) return `${whoDoes(only, 'go', 'goes', s)} then.`;
  return `${s.capital(s.and(others.map((other) => s.person(other).name)))} go then.`;
}
