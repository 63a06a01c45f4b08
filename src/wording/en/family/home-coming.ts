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
  const days = `${s.fullDay(s.dateOf(story.fromMs))} to ${s.fullDay(s.dateOf(story.untilMs))}`;
  const people = story.people.map((person) => personText(person, s));
  const changed = story.changed.map(
    ({ system, quantity, before, after }) =>
      `${s.system(system).name} ${valueText(quantity, before, s)} → ${valueText(quantity, after, s)}`,
  );
  const more = story.odd.length - mostOdd;
  const odd = [
    ...story.odd.slice(0, mostOdd).map((each) => oddText(each, s)),
    ...(more > 0 ? [`and ${more} more`] : []),
    ...alerts.map((each) => alertLine(each, s)),
  ].map((line) => `– ${line}`);
  const unseen = unmeasuredText(story, s);
  return [
    `Welcome back. ${days}:`,
    ...(people.length > 0 ? people : ['Nobody logged anything.']),
    ...(changed.length > 0 ? [`Changed: ${changed.join('; ')}.`] : []),
    ...(odd.length > 0 ? ['Worth a look:', ...odd] : unseen.length > 0 ? [] : ['Nothing odd.']),
    ...unseen,
    today.length > 0
      ? `Today: ${toldDuties(today, [], true)
          .map((told) => dutyText(told.lines, s))
          .join('; ')}.`
      : 'Nothing is due today.',
    ...(today.length === 0 && next[0]
      ? [`Next: ${dutyName(next[0].duty, s)}, ${onDay(next[0].duty.dueOn, s)}.`]
      : []),
  ].join('\n');
}

function personText({ handle, visits, toppedUp, others }: PersonStory, s: Speaker): string {
  const water = toppedUp.map(
    ({ system, litres }) =>
      `${s.system(system).name} ${s.amount(roughVolume(litres, s.units.volume))}`,
  );
  const deeds = [
    ...(water.length > 0 ? [`topped up ${s.and(water)}`] : []),
    ...others.map(
      (entry) =>
        `${entryText(entry, s)}${entry.system === null ? '' : ` (${s.system(entry.system).name})`}`,
    ),
  ];
  const days = visits === 1 ? 'on one day' : `on ${visits} days`;
  return `${whoDoes(handle, 'were', 'was', s)} there ${days}${deeds.length > 0 ? `: ${deeds.join('; ')}` : ''}.`;
}

function oddText(odd: Odd, s: Speaker): string {
  if (odd.kind === 'missed') {
    const days = odd.days === 1 ? 'on one day' : `on ${odd.days} days`;
    return `${s.system(odd.system).name} was not topped up ${days} when it was due`;
  }
  const { entry } = odd;
  const where = entry.system === null ? '' : `${s.system(entry.system).name}, `;
  const told = `${where}${clipped(entryText(entry, s), mostQuoted * 2)}, ${dayAndTime(entry.atMs, s)}`;
  switch (odd.kind) {
    case 'outage':
      return odd.untilMs === null
        ? `${told}, not back yet`
        : `${told}, for ${hoursText((odd.untilMs - entry.atMs) / 3_600_000)}`;
    case 'failed':
      return told;
    case 'outside-range':
      return `${told}: outside its range`;
    case 'far-from-expected':
      return `${told}: far from the reading before`;
  }
}

function unmeasuredText({ unmeasured }: HomeStory, s: Speaker): readonly string[] {
  const parts = unmeasured.map(({ systems, quantities }) => {
    const what = s.and(quantities.map((each) => quantityNames[each]));
    return `${what} of ${s.and(systems.map((id) => s.system(id).name))}`;
  });
  return parts.length === 0 ? [] : [`Not measured meanwhile: ${parts.join('; ')}.`];
}

/** What was said unasked, in short. */
function alertLine({ atMs, alert }: AlertTold, s: Speaker): string {
  const when = `alert ${dayAndTime(atMs, s)}`;
  if (alert.kind === 'outage-reminder') {
    return `${s.system(alert.prospect.system).name}: ${WITHOUT[alert.of]} for so long that harm was likely, ${when}`;
  }
  const { surprise } = alert;
  const name = surprise.system === null ? s.greenhouse.name : s.system(surprise.system).name;
  switch (surprise.kind) {
    case 'use': {
      const [used, expected] = [surprise.usedL, surprise.expectedL].map((litres) =>
        s.amount(roughVolume(litres, s.units.volume)),
      );
      return `${name} used about ${used!} where about ${expected!} was to be expected, ${when}`;
    }
    case 'move':
      return `${name} went from ${valueText(surprise.quantity, surprise.from, s)} to ${valueText(surprise.quantity, surprise.to, s)} faster than usual, ${when}`;
    case 'still':
      return `${name} showed ${valueText(surprise.quantity, surprise.value, s)} again and again, as if the meter stood still, ${when}`;
  }
}
