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
          ({ handle }) => `${s.capital(s.person(handle).name)} had taken it and need not now.`,
        ),
        ...(answer.unjoined ?? []).map(
          (handle) =>
            `${s.member(handle)} has not joined yet and hears nothing from me: please pass it on, or invite them.`,
        ),
      ].join('\n');
    case 'after-all':
      return afterAllText(answer, s);
    case 'unsettled':
      return `Taken back: ${answer.items.map((item) => settledSentence(item, s)).join(' ')}`;
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
      if (answer.isChoice) return 'Which of these?';
      return `For which system? For example “how do I top up ${s.greenhouse.systems[0]?.name ?? 'the bench'}”.`;
    case 'danger':
      return dangerAnswer(answer.of, answer.told, s);
    case 'back-when':
      return backWhenText(answer, s);
    case 'who-is-away':
      return whoIsAwayText(answer, s);
    case 'one-chore':
      return oneChoreText(answer, s);
    case 'nobody-away':
      return 'Nobody is away. Tell me for example “away from Friday to the 16th”.';
  }
}

function whoIsAwayText(
  { absences }: Extract<FamilyAnswer, { kind: 'who-is-away' }>,
  s: Speaker,
): string {
  if (absences.length === 0) return 'Nobody is away, as far as I know.';
  return absences
    .map(({ handle, from, until }) => {
      const since = from > s.today ? ` from ${s.fullDay(from)}` : '';
      return `${whoDoes(handle, 'are', 'is', s)} away${since} until ${s.fullDay(until)}.`;
    })
    .join('\n');
}

/** Whoever is away may come back sooner: what to say then. */
function backWhenText(
  { handle, until }: Extract<FamilyAnswer, { kind: 'back-when' }>,
  s: Speaker,
): string {
  if (until === null) return `${whoDoes(handle, 'are', 'is', s)} not away, as far as I know.`;
  return `${whoDoes(handle, 'are', 'is', s)} away until ${s.fullDay(until)}. For another day, say for example “back on Friday”; “we're back” once it is so.`;
}

/** What can be handed over, by what is to be said for it. */
function oneChoreText(
  { handle, date }: Extract<FamilyAnswer, { kind: 'one-chore' }>,
  s: Speaker,
): string {
  const [name, day] = [s.member(handle), s.weekday(date)];
  return `I cannot hand over a single chore, so nothing is changed. “${name} goes on ${day}” hands over the work of that day; with the name of a system, for example “can ${name} do ${s.greenhouse.systems[0]?.name ?? 'it'} on ${day}”, only what is due there.`;
}

/** The caption of a photo. */
function photoText({ system, text }: Extract<FamilyAnswer, { kind: 'photo' }>, s: Speaker): string {
  const place = system === null ? s.greenhouse.name : s.system(system).name;
  return text === '' ? `Photo: ${place}` : `Photo: ${place}, ${text}`;
}
