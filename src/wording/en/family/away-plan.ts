import type { AwayPlan, Endurance } from '../../../planning/family/away-plan.ts';
import type { PlannedTrip } from '../../../planning/family/away-trips.ts';
import type { AnswerOf } from '../../spoken/answer-of.ts';
import { containersFor, halfText } from '../../spoken/containers-for.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { toldDuties } from '../../spoken/told-duties.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { dutyText } from '../duty-text.ts';
import { containerPlural } from '../names.ts';
import { suppliesText } from './away-supplies.ts';
import { daysText, whoDoes } from './settled.ts';

/** How long everything lasts, what to do first, who goes when with how much, and what is not safe. */
export function awayPlanText(
  { handle, plan, isThought }: AnswerOf<'away-plan'>,
  s: Speaker,
): string {
  const heading = isThought
    ? `If ${s.person(handle).name} were away ${daysText(plan.from, plan.until, s)} (nothing is settled yet):`
    : `${whoDoes(handle, 'are', 'is', s)} away ${daysText(plan.from, plan.until, s)}. The plan, renewed every day with the weather and the log:`;
  return [
    heading,
    ...plan.systems.map((each) => enduranceText(each, plan, s)),
    ...beforeText(plan, s),
    ...suppliesText(plan, s),
    ...tripsText(plan, s),
    ...unsafeText(plan, s),
  ].join('\n');
}

function enduranceText(
  { system, asItIs, ifFilled }: Endurance,
  plan: AwayPlan,
  s: Speaker,
): string {
  const lasts = (date: Endurance['asItIs']): string =>
    date === null || date > plan.until ? 'beyond your return' : `safely until ${s.fullDay(date)}`;
  const { name } = s.system(system);
  if (lasts(asItIs) === lasts(ifFilled)) return `• ${name}: lasts ${lasts(asItIs)}.`;
  const filled = plan.from < s.today ? 'filled now' : 'filled before';
  return `• ${name}: as it is, it lasts ${lasts(asItIs)}; ${filled}, ${lasts(ifFilled)}.`;
}

function beforeText(plan: AwayPlan, s: Speaker): readonly string[] {
  const steps = beforeSteps(plan, s);
  return steps.length === 0 ? [] : ['Before leaving:', ...steps];
}

/** On the morning of departure: what is still open. */
export function leavingText(plan: AwayPlan, s: Speaker): string {
  return [
    `You leave today, until ${s.fullDay(plan.until)}. Still open before you go:`,
    ...beforeSteps(plan, s),
    ...suppliesText(plan, s),
    'Tell me what you did; “plan” shows the trips of the others.',
  ].join('\n');
}

function beforeSteps({ before }: AwayPlan, s: Speaker): readonly string[] {
  const { fill, lines, timers } = before;
  const steps = [
    ...fill.map(
      ({ system, litres }) => `Fill ${s.system(system).name}: about ${waterText(litres, s)}.`,
    ),
    ...toldDuties(lines, [], true).map((told) => `${dutyText(told.lines, s)}.`),
    ...timers.map((system) => timerText(system, s)),
  ];
  return steps.map((step) => `– ${step}`);
}

function timerText(system: AwayPlan['systems'][number]['system'], s: Speaker): string {
  const { name, aeration, floods } = s.system(system);
  const parts = [
    ...(aeration
      ? [`air ${s.amount(measureOf('aeration', aeration.minutesPerHour, s.units))}`]
      : []),
    ...(floods ? [`a flood every ${Math.round(floods.everyMin / 6) / 10} h`] : []),
  ];
  return `See that the timer of ${name} runs: ${s.and(parts)}.`;
}

function tripsText({ trips, until }: AwayPlan, s: Speaker): readonly string[] {
  if (trips.length === 0) return [`No trip is needed for water until ${s.fullDay(until)}.`];
  return ['Trips, as things stand:', ...trips.map((trip) => tripText(trip, s))];
}

function tripText({ date, by, topUps, lines }: PlannedTrip, s: Speaker): string {
  const litres = topUps.reduce((sum, each) => sum + each.litres, 0);
  const what = [
    ...topUps.map(
      ({ system, litres: each }) =>
        `${s.system(system).name} ${s.amount(roughVolume(each, s.units.volume))}`,
    ),
  ];
  const water = litres > 0 ? `: about ${waterText(litres, s)} in all (${what.join(', ')})` : '';
  const others = toldDuties(lines, [], true).map((told) => lowered(dutyText(told.lines, s)));
  const rest = others.length > 0 ? `; also ${others.join('; ')}` : '';
  return `– ${s.fullDay(date)}, ${by === null ? 'nobody yet' : s.person(by).name}${water}${rest}.`;
}

function lowered(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

function unsafeText({ unsafe, trips }: AwayPlan, s: Speaker): readonly string[] {
  if (unsafe.length === 0) {
    return trips.length > 0
      ? ['Without these trips it would not be safe; with them it is, as far as I can see.']
      : [];
  }
  const days = [...new Set(unsafe.map(({ from }) => from))].toSorted();
  return days.map((day) => {
    const names = unsafe
      .filter(({ from }) => from === day)
      .map((each) => s.system(each.system).name);
    return day <= s.today
      ? `Not safe as it is: ${s.and(names)} may run low today; somebody has to go now.`
      : `Not safe as planned: ${s.and(names)} may run low from ${s.fullDay(day)}; somebody has to go before that.`;
  });
}

/** `43 L (4½ cans)` */
export function waterText(litres: number, s: Speaker): string {
  const told = containersFor(litres, s.greenhouse.containers, 'nearest');
  const amount = s.amount(roughVolume(litres, s.units.volume));
  return told
    ? `${amount} (${halfText(told.count)} ${containerPlural(told.container.name, told.count)})`
    : amount;
}
