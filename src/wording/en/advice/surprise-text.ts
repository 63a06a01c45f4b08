import type { Method } from '../../../greenhouse/system.ts';
import type {
  MoveSurprise,
  StillSurprise,
  Surprise,
  UseSurprise,
} from '../../../planning/surprises/surprise.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { dayText, onDay } from '../day-text.ts';
import { quantityNames } from '../names.ts';
import { rangeText, valueText } from '../value-text.ts';
import { hoursText } from './hours-text.ts';

/** What does not fit, what is known, and what to look at. */
export function surpriseText(surprise: Surprise, s: Speaker): string {
  switch (surprise.kind) {
    case 'use':
      return useText(surprise, s);
    case 'move':
      return moveText(surprise, s);
    case 'still':
      return stillText(surprise, s);
  }
}

/** Further off, no estimate is good to the hour. */
const COUNTED_HOURS = 12;
/** Less than this is no figure: readings are no finer. */
const HARDLY_ANY_L = 0.5;

function useText(surprise: UseSurprise, s: Speaker): string {
  const { name, method } = s.system(surprise.system);
  const [used, expected] = [surprise.usedL, surprise.expectedL].map((litres) =>
    s.amount(roughVolume(litres, s.units.volume)),
  );
  const since = dayText(s.dateOf(surprise.fromMs), s);
  if (surprise.way === 'below') {
    return `${name} has used ${surprise.usedL < HARDLY_ANY_L ? 'hardly any water' : `only about ${used!}`} since ${since}, where about ${expected!} was to be expected. ${dryUp[method]} Or did somebody top it up without telling me?`;
  }
  const low = lowText(surprise.lowAtMs, s);
  return `${name} has lost about ${used!} since ${since}, where about ${expected!} was to be expected in this weather.${low} Please look for a leak: ${leaks[method]}. If a figure was a slip, just tell me the right one.`;
}

function lowText(lowAtMs: number | null, s: Speaker): string {
  if (lowAtMs === null) return '';
  if (lowAtMs <= s.nowMs) return ' It is likely down to its low mark by now.';
  const hours = (lowAtMs - s.nowMs) / 3_600_000;
  const when =
    hours < COUNTED_HOURS
      ? `in about ${hoursText(hours)}`
      : `some time ${onDay(s.dateOf(lowAtMs), s)}`;
  return ` Going on like this it is low ${when}.`;
}

export const leaks: Readonly<Record<Method, string>> = {
  'flood-and-drain': 'hoses, the drain fitting, a bench that runs over, water on the floor',
  'deep-water-culture': 'the tubs and their fittings, an air hose that draws water out, wet floor',
  'nutrient-film': 'the ends and joints of the gutters, the return hose, wet floor',
  'non-circulating': 'a cracked jar, a wet shelf',
  drip: 'a dripper or hose that came off, the return, wet floor',
  aeroponic: 'nozzles that came off, the lid, the return, wet floor',
};

export const dryUp: Readonly<Record<Method, string>> = {
  'flood-and-drain':
    'Please look whether it still floods, whether the filter is clear, and at the roots: brown and slimy ones no longer drink.',
  'deep-water-culture':
    'Please look whether the air runs, and at the roots: brown and slimy ones no longer drink.',
  'nutrient-film':
    'Please look whether water runs in every gutter, whether the filter is clear, and at the roots: brown and slimy ones no longer drink.',
  'non-circulating':
    'Please look at the roots: some must hang in air, and brown, slimy ones no longer drink.',
  drip: 'Please look whether every dripper runs, whether the filter is clear, and at the roots: brown and slimy ones no longer drink.',
  aeroponic:
    'Please look whether every nozzle sprays, whether the filter is clear, and at the roots: brown and slimy ones no longer drink.',
};

function moveText(surprise: MoveSurprise, s: Speaker): string {
  const { quantity, from, to, usualPerDay } = surprise;
  const { name, ph, ecMsPerCm } = s.system(surprise.system);
  const [lowest, highest] = quantity === 'ph' ? ph : ecMsPerCm;
  const way = to > from ? 'risen' : 'fallen';
  const bounds = rangeText(quantity, lowest, highest, s);
  const pace = s.amount(measureOf(quantity, usualPerDay, s.units));
  const span = `${s.number(measureOf(quantity, from, s.units))} to ${s.amount(measureOf(quantity, to, s.units))}`;
  const look = looks[quantity][to > from ? 'up' : 'down'];
  return `The ${quantityNames[quantity]} of ${name} has ${way} from ${span} since ${dayText(s.dateOf(surprise.fromMs), s)} (${bounds} is wanted), and it mostly moves no more than about ${pace} a day. ${look} Measure once more before you dose.`;
}

const looks = {
  ph: {
    down: 'Please look at the roots and for dead leaves in the water: what rots makes it sour.',
    up: 'Please look for algae and for light on the water, and at new pebbles or wool: all of these drive it up.',
  },
  ec: {
    down: 'The plants take more food than water, or plain water comes in from somewhere.',
    up: 'The plants take more water than food, as in heat, or a mix was too strong: plain water is best next time.',
  },
} as const;

function stillText(surprise: StillSurprise, s: Speaker): string {
  const { quantity, value, by, times, system } = surprise;
  const where =
    system === null
      ? 'the greenhouse'
      : s.and([system, ...surprise.elsewhere].map((id) => s.system(id).name));
  const since = dayText(s.dateOf(surprise.fromMs), s);
  const name = quantityNames[quantity];
  const shown = valueText(quantity, value, s);
  return by === 'sensor'
    ? `The ${name} sensor of ${where} has shown ${shown} since ${since} and does not move. It may be stuck, dry or cut off. Please measure by hand once and look at it.`
    : `${shown} was measured ${times} times in a row at ${where} since ${since}; real water moves a little. Please see whether the meter still answers, in plain water or a reference.`;
}
