import type { Scenario } from '../../greenhouse/scenario.ts';
import { SPELL_DAYS } from '../../planning/what-if/weather-if.ts';
import { EVAPORATED_SHARE, type SystemIf, type WhatIf } from '../../planning/what-if/what-if.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate } from '../spoken/volume.ts';
import { chanceTold, systemsAtRisk } from '../spoken/what-if-told.ts';
import { onDay } from './day-text.ts';

/** How it would go, with the figures; nothing is settled by asking. */
export function whatIfText(told: WhatIf, s: Speaker): string {
  const { scenario } = told;
  if (told.systems.every(({ isLevelKnown }) => !isLevelKnown)) return nothingKnown(s);
  switch (scenario.kind) {
    case 'go-on':
      return [
        `If the next trip is ${onDay(scenario.on, s)}: ${riskText(told, s)}`,
        carryText(told, s),
        tripsText(told, s),
        ...guessText(told, s),
      ].join(' ');
    case 'fill-all':
      return [
        `If everything is filled today: that takes ${fillsText(told, s)}.`,
        nextText(told, s),
        tripsText(told, s),
        ...guessText(told, s),
      ].join(' ');
    case 'weather':
      return [
        `${weatherText(scenario, s)}: ${usesText(told, s)}.`,
        nextText(told, s),
        s.capital(riskText(told, s)),
        ...guessText(told, s),
      ].join(' ');
    case 'floods':
      return floodsText(told, scenario.times, s);
  }
}

function nothingKnown(s: Speaker): string {
  const first = s.greenhouse.systems[0]!;
  return `Nobody has said yet how full anything is, so I cannot tell. Tell me first, like “${first.name} ${s.amount(measureOf('level', first.brimL, s.units))}”.`;
}

function riskText(told: WhatIf, s: Speaker): string {
  const { low, nearest } = systemsAtRisk(told);
  if (low.length > 0) return low.map((each) => lowText(each, s)).join(' ');
  if (!nearest) return nothingKnown(s);
  return `nothing should run low before that. ${s.system(nearest.system).name} is the nearest, with ${chanceText(nearest.chanceLow)}.`;
}

function lowText({ system, chanceLow, lowOnLikely }: SystemIf, s: Speaker): string {
  const when = lowOnLikely === null ? '' : `, most likely ${onDay(lowOnLikely, s)}`;
  const { name } = s.system(system);
  return chanceLow >= 0.5
    ? `${name} would run low before that${when} (${chanceText(chanceLow)}).`
    : `${name} could run low before that (${chanceText(chanceLow)}).`;
}

function chanceText(chance: number): string {
  const told = chanceTold(chance);
  switch (told.kind) {
    case 'hardly':
      return 'a chance under 1 in 100';
    case 'one-in':
      return `a chance of about 1 in ${told.n}`;
    case 'in-ten':
      return `a chance of about ${told.n} in 10`;
    case 'nearly-certain':
      return 'nearly certain';
  }
}

function carryText(told: WhatIf, s: Speaker): string {
  return `You would then fill in ${fillsText(told, s)}.`;
}

function fillsText({ systems }: WhatIf, s: Speaker): string {
  const all = systems.reduce((sum, { fillL }) => sum + fillL, 0);
  const each = systems.map(
    ({ system, fillL }) =>
      `${s.system(system).name} ${s.amount(roughVolume(fillL, s.units.volume))}`,
  );
  const whole = `about ${s.amount(roughVolume(all, s.units.volume))}`;
  return each.length > 1 ? `${whole} in all (${each.join(', ')})` : whole;
}

function tripsText({ tripsPlanned, tripsInstead, withinDays }: WhatIf, s: Speaker): string {
  const weeks = s.number(measureOf('note', withinDays / 7, s.units));
  if (tripsPlanned === tripsInstead) {
    return `Over ${weeks} weeks it stays at ${trips(tripsPlanned)}.`;
  }
  return `Over ${weeks} weeks that makes ${trips(tripsInstead)} instead of ${tripsPlanned}.`;
}

function trips(count: number): string {
  return count === 1 ? '1 trip' : `${count} trips`;
}

function nextText({ planned, instead, scenario }: WhatIf, s: Speaker): string {
  const then = scenario.kind === 'fill-all' ? 'The trip after that' : 'The next trip';
  if (instead === null) return `${then} would be more than two months away.`;
  if (instead === planned) return `${then} stays ${onDay(instead, s)}.`;
  const was = planned === null || scenario.kind === 'fill-all' ? '' : `, not ${onDay(planned, s)}`;
  return `${then} would be ${onDay(instead, s)}${was}.`;
}

function weatherText({ way, tMaxC }: Extract<Scenario, { kind: 'weather' }>, s: Speaker): string {
  const degrees =
    tMaxC === null
      ? `it gets ${way}`
      : `it reaches ${s.amount(measureOf('air-temperature', Math.round(tMaxC), s.units))}`;
  return `If ${degrees} for ${SPELL_DAYS} days`;
}

function usesText({ systems }: WhatIf, s: Speaker): string {
  const rate = (litres: number) => s.amount(useRate(litres, s.units.volume));
  const each = systems.map(
    ({ system, usePerDayL, usePerDayIfL }) =>
      `${s.system(system).name} ${rate(usePerDayIfL)} a day instead of ${rate(usePerDayL)}`,
  );
  return s.and(each);
}

function floodsText(told: WhatIf, times: number, s: Speaker): string {
  const flooded = told.systems.filter(({ system }) => s.system(system).floods !== null);
  if (flooded.length === 0) return 'None of your systems floods, so nothing would change.';
  const lines = flooded.map(({ system, usePerDayL, usePerDayIfL }) => {
    const { name, floods } = s.system(system);
    const [low, high] = [usePerDayL, usePerDayIfL].toSorted((a, b) => a - b);
    const everyH = (floods!.everyMin / 60 / times).toFixed(1).replace(/\.0$/, '');
    return `${name} would flood every ${everyH} h and use between ${s.amount(useRate(low!, s.units.volume))} and ${s.amount(useRate(high!, s.units.volume))} a day, where it is about ${s.amount(useRate(usePerDayL, s.units.volume))} now.`;
  });
  const share = Math.round(100 * EVAPORATED_SHARE);
  const caution =
    times < 1
      ? ' In pebbles, a flood every 3 to 4 h by day is usual; on a hot day roots can dry out in between, so look at them.'
      : ' Roots should not stand long in water, so keep each flood short.';
  return `${lines.join(' ')} Plants drink what they drink: floods change only what evaporates, at most about ${share} % of it. I have learned nothing yet of how your bench answers, so this is a bound and no measurement.${caution}`;
}

function guessText({ systems }: WhatIf, s: Speaker): readonly string[] {
  const guessed = systems.filter(({ isLevelKnown }) => !isLevelKnown);
  if (guessed.length === 0) return [];
  const names = s.and(guessed.map(({ system }) => s.system(system).name));
  return [
    `Nobody has told me yet how full ${names} ${guessed.length > 1 ? 'are' : 'is'}, so I only guess there.`,
  ];
}
