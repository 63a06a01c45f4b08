import type { AnswerOf } from '../spoken/answer-of.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dayAndTime } from './day-text.ts';

const supplyNames = { power: 'power', pump: 'pump', 'air-pump': 'air pump' };

/** I see no pump: what I was told of it. */
export function supplyAnswer({ of, outages }: AnswerOf<'supply'>, s: Speaker): string {
  const name = supplyNames[of];
  if (outages.length === 0)
    return `Nobody has told me that the ${name} was off, so I take it to be on. I cannot see it from here.`;
  return outages
    .map(({ system, sinceMs, untilMs }) => {
      const where = system === null ? '' : ` (${s.system(system).name})`;
      const since = `off since ${dayAndTime(sinceMs, s)}`;
      return untilMs === null
        ? `The ${name}${where} has been ${since}, by the log. Say “${name} back” once it is.`
        : `The ${name}${where} is on, by the log: off ${dayAndTime(sinceMs, s)}, back ${dayAndTime(untilMs, s)}.`;
    })
    .join('\n');
}

/** What notes tell of where a thing is, or how to keep it for the next who asks. */
export function whereAnswer({ what, notes }: AnswerOf<'where'>, s: Speaker): string {
  if (notes.length === 0)
    return `Nobody has told me where that is. Keep it for the next who asks: “note: ${what} is in …”.`;
  return notes.map(({ note, atMs }) => `${note ?? ''} (noted ${dayAndTime(atMs, s)})`).join('\n');
}
