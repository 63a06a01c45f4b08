import type { FamilyAnswer } from '../../../assistant/replies/family.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dangerAnswer } from '../advice/trouble-text.ts';
import { afterAllText } from './after-all.ts';
import { awayPlanText } from './away-plan.ts';
import { homeComingText } from './home-coming.ts';
import { howToText } from './how-to.ts';
import { myTurnsText, rosterText } from './roster.ts';
import { settledSentence, settledText, whoDoes } from './settled.ts';

/** Who goes when, what an absence needs, how a duty is done. */
export function familyAnswer(answer: FamilyAnswer, s: Speaker): string {
  switch (answer.kind) {
    case 'settled':
      return [
        ...answer.items.map((item) => settledText(item, s)),
        ...answer.instead.map(
          ({ handle }) =>
            `${whoDoes(handle, 'hattest', 'hatte', s)} es übernommen und ${s.person(handle).verb('brauchst', 'braucht')} nun nicht.`,
        ),
        ...(answer.unjoined ?? []).map(
          (handle) =>
            `${s.member(handle)} ist noch nicht beigetreten und hört von mir nichts: Bitte gib es weiter, oder lade ein.`,
        ),
      ].join('\n');
    case 'after-all':
      return afterAllText(answer, s);
    case 'unsettled':
      return `Zurückgenommen: ${answer.items.map((item) => settledSentence(item, s)).join(' ')}`;
    case 'away-plan':
      return awayPlanText(answer, s);
    case 'home-coming':
      return homeComingText(answer, s);
    case 'roster':
      return rosterText(answer, s);
    case 'my-turns':
      return myTurnsText(answer, s);
    case 'how-to':
      return howToText(answer.how, s);
    case 'photo':
      return photoText(answer, s);
    case 'no-such-duty':
      if (answer.isChoice) return 'Was davon?';
      return `Für welches System? Zum Beispiel „wie fülle ich ${s.greenhouse.systems[0]?.name ?? 'die Wanne'} auf“.`;
    case 'danger':
      return dangerAnswer(answer.of, answer.told, s);
    case 'back-when':
      return backWhenText(answer, s);
    case 'who-is-away':
      return whoIsAwayText(answer, s);
    case 'one-chore':
      return oneChoreText(answer, s);
    case 'nobody-away':
      return 'Niemand ist verreist. Sag zum Beispiel „von Freitag bis zum 16. weg“.';
  }
}

function whoIsAwayText(
  { absences }: Extract<FamilyAnswer, { kind: 'who-is-away' }>,
  s: Speaker,
): string {
  if (absences.length === 0) return 'Niemand ist verreist, soviel ich weiß.';
  return absences
    .map(({ handle, from, until }) => {
      const since = from > s.today ? `von ${s.fullDay(from)} ` : '';
      return `${whoDoes(handle, 'bist', 'ist', s)} ${since}bis ${s.fullDay(until)} weg.`;
    })
    .join('\n');
}

/** Whoever is away may come back sooner: what to say then. */
function backWhenText(
  { handle, until }: Extract<FamilyAnswer, { kind: 'back-when' }>,
  s: Speaker,
): string {
  if (until === null)
    return `${whoDoes(handle, 'bist', 'ist', s)} nicht verreist, soviel ich weiß.`;
  return `${whoDoes(handle, 'bist', 'ist', s)} bis ${s.fullDay(until)} weg. Für einen anderen Tag sag zum Beispiel „am Freitag zurück“; „wieder da“, sobald es so weit ist.`;
}

/** What can be handed over, by what is to be said for it. */
function oneChoreText(
  { handle, date }: Extract<FamilyAnswer, { kind: 'one-chore' }>,
  s: Speaker,
): string {
  const [name, day] = [s.member(handle), s.weekday(date)];
  return `Eine einzelne Arbeit kann ich nicht übergeben, es bleibt also alles, wie es ist. „${name} geht am ${day}“ übergibt die Arbeit dieses Tages; mit dem Namen eines Systems, zum Beispiel „kann ${name} am ${day} ${s.greenhouse.systems[0]?.name ?? 'es'} machen“, nur das, was dort fällig ist.`;
}

/** The caption of a photo. */
function photoText({ system, text }: Extract<FamilyAnswer, { kind: 'photo' }>, s: Speaker): string {
  const place = system === null ? s.greenhouse.name : s.system(system).name;
  return text === '' ? `Foto: ${place}` : `Foto: ${place}, ${text}`;
}
