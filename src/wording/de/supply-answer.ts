import type { AnswerOf } from '../spoken/answer-of.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dayAndTime } from './day-text.ts';

const off = { power: 'Strom weg', pump: 'Pumpe aus', 'air-pump': 'Luftpumpe aus' };
const back = { power: 'Strom wieder da', pump: 'Pumpe läuft', 'air-pump': 'Luftpumpe läuft' };

/** I see no pump: what I was told of it. */
export function supplyAnswer({ of, outages }: AnswerOf<'supply'>, s: Speaker): string {
  if (outages.length === 0)
    return `„${off[of]}“ hat mir niemand gemeldet, also rechne ich nicht damit. Sehen kann ich es von hier nicht.`;
  return outages
    .map(({ system, sinceMs, untilMs }) => {
      const where = system === null ? '' : ` (${s.system(system).name})`;
      const since = dayAndTime(sinceMs, s);
      return untilMs === null
        ? `Laut Logbuch seit ${since}: ${off[of]}${where}. Sag „${back[of]}“, sobald es so weit ist.`
        : `Laut Logbuch: ${back[of]}${where}. Zuletzt ${off[of]}: ${since}; wieder da: ${dayAndTime(untilMs, s)}.`;
    })
    .join('\n');
}

/** What notes tell of where a thing is, or how to keep it for the next who asks. */
export function whereAnswer({ what, notes }: AnswerOf<'where'>, s: Speaker): string {
  if (notes.length === 0)
    return `Wo das ist, hat mir niemand gesagt. Für den Nächsten, der fragt: „Notiz: ${what} ist in …“.`;
  return notes.map(({ note, atMs }) => `${note ?? ''} (notiert ${dayAndTime(atMs, s)})`).join('\n');
}
