import type { AnswerOf } from '../../spoken/answer-of.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { stretches } from './family-alert.ts';
import { daysText, settledSentence, whoDoes } from './settled.ts';

/** That somebody can go after all, and whose turn it is then. */
export function afterAllText(answer: AnswerOf<'after-all'>, s: Speaker): string {
  const { handle, from, until, was } = answer;
  const { name, verb } = s.person(handle);
  const days = daysText(from, until, s);
  switch (was) {
    case 'hindered':
      return `${settledSentence({ kind: 'can-go', handle, from, until }, s)} ${turnText(answer, s)}`;
    case 'free':
      return `Dagegen sprach nichts: Soweit ich weiß, ${verb('kannst', 'kann')} ${name} ${days} gehen. ${turnText(answer, s)}`;
    case 'away':
      return `${whoDoes(handle, 'bist', 'ist', s)} ${days} weg, soweit ich weiß; geändert ist nichts. Ist das vorbei, sag „${days} zurück“.`;
  }
}

function turnText(
  { handle, from, until, turns, others }: AnswerOf<'after-all'>,
  s: Speaker,
): string {
  const { name, verb } = s.person(handle);
  if (turns.length > 0) {
    return from === until
      ? `Dran ${verb('bist', 'ist')} ${name} dann.`
      : `${s.capital(name)} ${verb('bist', 'ist')} dran: ${stretches(turns, s)}.`;
  }
  const [only, ...more] = others;
  if (only === undefined) return 'Sonst ist niemand eingetragen.';
  if (more.length === 0)
    return `Dann ${s.person(only).verb('gehst', 'geht')} ${s.person(only).name}.`;
  return `Dann gehen ${s.and(others.map((other) => s.person(other).name))}.`;
}
