import type { AlertTold } from '../../../assistant/replies/family.ts';
import type { HomeStory, Odd, PersonStory } from '../../../planning/family/home-story.ts';
import type { AnswerOf } from '../../spoken/answer-of.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { toldDuties } from '../../spoken/told-duties.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { WITHOUT } from '../advice/advice-alert.ts';
import { hoursText } from '../advice/hours-text.ts';
import { dayAndTime, onDay } from '../day-text.ts';
import { dutyName, dutyText } from '../duty-text.ts';
import { entryText } from '../entry-text.ts';
import { quantityNames } from '../names.ts';
import { valueText } from '../value-text.ts';
import { whoDoes } from './settled.ts';

const mostOdd = 8;

/** What was done by whom, what changed, what is odd, what is next. */
export function homeComingText(
  { story, alerts, today, next }: AnswerOf<'home-coming'>,
  s: Speaker,
): string {
  const days = `${s.fullDay(s.dateOf(story.fromMs))} bis ${s.fullDay(s.dateOf(story.untilMs))}`;
  const people = story.people.map((person) => personText(person, s));
  const changed = story.changed.map(
    ({ system, quantity, before, after }) =>
      `${s.system(system).name} von ${valueText(quantity, before, s)} auf ${valueText(quantity, after, s)}`,
  );
  const more = story.odd.length - mostOdd;
  const odd = [
    ...story.odd.slice(0, mostOdd).map((each) => oddText(each, s)),
    ...(more > 0 ? [`und ${more} weitere`] : []),
    ...alerts.map((each) => alertLine(each, s)),
  ].map((line) => `– ${line}`);
  const unseen = unmeasuredText(story, s);
  return [
    `Willkommen zurück. ${days}:`,
    ...(people.length > 0 ? people : ['Niemand hat etwas eingetragen.']),
    ...(changed.length > 0 ? [`Verändert: ${changed.join('; ')}.`] : []),
    ...(odd.length > 0
      ? ['Einen Blick wert:', ...odd]
      : unseen.length > 0
        ? []
        : ['Nichts Auffälliges.']),
    ...unseen,
    today.length > 0
      ? `Heute: ${toldDuties(today, [], true)
          .map((told) => dutyText(told.lines, s))
          .join('; ')}.`
      : 'Heute steht nichts an.',
    ...(today.length === 0 && next[0]
      ? [`Als Nächstes: ${dutyName(next[0].duty, s)}, ${onDay(next[0].duty.dueOn, s)}.`]
      : []),
  ].join('\n');
}

function personText({ handle, visits, toppedUp, others }: PersonStory, s: Speaker): string {
  const water = toppedUp.map(
    ({ system, litres }) =>
      `${s.system(system).name} ${s.amount(roughVolume(litres, s.units.volume))}`,
  );
  const deeds = [
    ...(water.length > 0 ? [`nachgefüllt: ${s.and(water)}`] : []),
    ...others.map(
      (entry) =>
        `${entryText(entry, s)}${entry.system === null ? '' : ` (${s.system(entry.system).name})`}`,
    ),
  ];
  const days = visits === 1 ? 'an einem Tag' : `an ${visits} Tagen`;
  return `${whoDoes(handle, 'warst', 'war', s)} ${days} da${deeds.length > 0 ? `: ${deeds.join('; ')}` : ''}.`;
}

function oddText(odd: Odd, s: Speaker): string {
  if (odd.kind === 'missed') {
    const days = odd.days === 1 ? 'an einem Tag' : `an ${odd.days} Tagen`;
    return `${s.system(odd.system).name} wurde ${days} nicht nachgefüllt, als es dran war`;
  }
  const { entry } = odd;
  const where = entry.system === null ? '' : `${s.system(entry.system).name}, `;
  const told = `${where}${clipped(entryText(entry, s), mostQuoted * 2)}, ${dayAndTime(entry.atMs, s)}`;
  switch (odd.kind) {
    case 'outage':
      return odd.untilMs === null
        ? `${told}, noch nicht zurück`
        : `${told}, ${hoursText((odd.untilMs - entry.atMs) / 3_600_000)} lang`;
    case 'failed':
      return told;
    case 'outside-range':
      return `${told}: außerhalb seines Bereichs`;
    case 'far-from-expected':
      return `${told}: weit weg vom Wert davor`;
  }
}

function unmeasuredText({ unmeasured }: HomeStory, s: Speaker): readonly string[] {
  const parts = unmeasured.map(({ systems, quantities }) => {
    const what = s.and(quantities.map((each) => quantityNames[each]));
    return `${what} von ${s.and(systems.map((id) => s.system(id).name))}`;
  });
  return parts.length === 0 ? [] : [`Unterdessen nicht gemessen: ${parts.join('; ')}.`];
}

/** What was said unasked, in short. */
function alertLine({ atMs, alert }: AlertTold, s: Speaker): string {
  const when = `Warnung ${dayAndTime(atMs, s)}`;
  if (alert.kind === 'outage-reminder') {
    return `${s.system(alert.prospect.system).name}: ${WITHOUT[alert.of]}, so lange, dass Schaden wahrscheinlich war, ${when}`;
  }
  const { surprise } = alert;
  const name = surprise.system === null ? s.greenhouse.name : s.system(surprise.system).name;
  switch (surprise.kind) {
    case 'use': {
      const [used, expected] = [surprise.usedL, surprise.expectedL].map((litres) =>
        s.amount(roughVolume(litres, s.units.volume)),
      );
      return `${name} hat etwa ${used!} verbraucht, wo etwa ${expected!} zu erwarten waren, ${when}`;
    }
    case 'move':
      return `${name} ging von ${valueText(surprise.quantity, surprise.from, s)} auf ${valueText(surprise.quantity, surprise.to, s)}, schneller als sonst, ${when}`;
    case 'still':
      return `${name} zeigte immer wieder ${valueText(surprise.quantity, surprise.value, s)}, als stünde das Messgerät still, ${when}`;
  }
}
