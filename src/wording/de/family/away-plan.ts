import type { AwayPlan, Endurance } from '../../../planning/family/away-plan.ts';
import type { PlannedTrip } from '../../../planning/family/away-trips.ts';
import type { AnswerOf } from '../../spoken/answer-of.ts';
import { containersFor, halfText } from '../../spoken/containers-for.ts';
import { measure } from '../../spoken/measure.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { toldDuties } from '../../spoken/told-duties.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { dutyText } from '../duty-text.ts';

import { suppliesText } from './away-supplies.ts';
import { daysText, whoDoes } from './settled.ts';

/** How long everything lasts, what to do first, who goes when with how much, and what is not safe. */
export function awayPlanText(
  { handle, plan, isThought }: AnswerOf<'away-plan'>,
  s: Speaker,
): string {
  const { name, verb } = s.person(handle);
  const heading = isThought
    ? `Wenn ${name} ${daysText(plan.from, plan.until, s)} weg ${verb('wärst', 'wäre')} (noch ist nichts vereinbart):`
    : `${whoDoes(handle, 'bist', 'ist', s)} ${daysText(plan.from, plan.until, s)} weg. Der Plan, jeden Tag erneuert nach Wetter und Logbuch:`;
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
    date === null || date > plan.until
      ? 'über die Rückkehr hinaus'
      : `sicher bis ${s.fullDay(date)}`;
  const { name } = s.system(system);
  if (lasts(asItIs) === lasts(ifFilled)) return `• ${name}: ${lasts(asItIs)}.`;
  const filled = plan.from < s.today ? 'jetzt gefüllt' : 'vorher gefüllt';
  return `• ${name}: so wie es ist ${lasts(asItIs)}, ${filled} ${lasts(ifFilled)}.`;
}

function beforeText(plan: AwayPlan, s: Speaker): readonly string[] {
  const steps = beforeSteps(plan, s);
  return steps.length === 0 ? [] : ['Vor der Abreise:', ...steps];
}

/** On the morning of departure: what is still open. */
export function leavingText(plan: AwayPlan, s: Speaker): string {
  return [
    `Heute geht es los, bis ${s.fullDay(plan.until)}. Vorher ist noch offen:`,
    ...beforeSteps(plan, s),
    ...suppliesText(plan, s),
    'Sag mir, was du getan hast; „Plan“ zeigt die Gänge der anderen.',
  ].join('\n');
}

function beforeSteps({ before }: AwayPlan, s: Speaker): readonly string[] {
  const { fill, lines, timers } = before;
  const steps = [
    ...fill.map(
      ({ system, litres }) => `${s.system(system).name} füllen: etwa ${waterText(litres, s)}.`,
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
      ? [`Luft ${s.amount(measureOf('aeration', aeration.minutesPerHour, s.units))}`]
      : []),
    ...(floods
      ? [`eine Flut alle ${s.number(measure(floods.everyMin / 60, 'none', 0, 1))} Stunden`]
      : []),
  ];
  return `Nachsehen, dass die Zeitschaltuhr von ${name} läuft: ${s.and(parts)}.`;
}

function tripsText({ trips, until }: AwayPlan, s: Speaker): readonly string[] {
  if (trips.length === 0) return [`Für Wasser braucht es bis ${s.fullDay(until)} keinen Gang.`];
  return ['Gänge, nach heutigem Stand:', ...trips.map((trip) => tripText(trip, s))];
}

function tripText({ date, by, topUps, lines }: PlannedTrip, s: Speaker): string {
  const litres = topUps.reduce((sum, each) => sum + each.litres, 0);
  const what = [
    ...topUps.map(
      ({ system, litres: each }) =>
        `${s.system(system).name} ${s.amount(roughVolume(each, s.units.volume))}`,
    ),
  ];
  const water = litres > 0 ? `: zusammen etwa ${waterText(litres, s)} (${what.join(', ')})` : '';
  const others = toldDuties(lines, [], true).map((told) => dutyText(told.lines, s));
  const rest = others.length > 0 ? `; außerdem ${others.join('; ')}` : '';
  return `– ${s.fullDay(date)}, ${by === null ? 'noch niemand' : s.person(by).name}${water}${rest}.`;
}

function unsafeText({ unsafe, trips }: AwayPlan, s: Speaker): readonly string[] {
  if (unsafe.length === 0) {
    return trips.length > 0
      ? ['Ohne diese Gänge wäre es nicht sicher; mit ihnen schon, soweit ich sehe.']
      : [];
  }
  const days = [...new Set(unsafe.map(({ from }) => from))].toSorted();
  return days.map((day) => {
    const low = unsafe.filter(({ from }) => from === day);
    const names = s.and(low.map((each) => s.system(each.system).name));
    const may = low.length === 1 ? 'kann' : 'können';
    return day <= s.today
      ? `So nicht sicher: ${names} ${may} heute knapp werden; jemand muss jetzt hin.`
      : `So nicht sicher: ${names} ${may} ab ${s.fullDay(day)} knapp werden; vorher muss jemand hin.`;
  });
}

/** `43 l (4½ × can)` */
export function waterText(litres: number, s: Speaker): string {
  const told = containersFor(litres, s.greenhouse.containers, 'nearest');
  const amount = s.amount(roughVolume(litres, s.units.volume));
  return told ? `${amount} (${halfText(told.count)} × ${told.container.name})` : amount;
}
