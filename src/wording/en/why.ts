import type { DutyLine, Reason } from '../../planning/duty-line.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { waterProspect } from '../spoken/water-prospect.ts';
import { adviceWhy, mixWhy } from './advice/why-advice.ts';
import { dayText, everyDays, onDay } from './day-text.ts';
import { quantityNames } from './names.ts';

/** The numbers behind a duty, in one sentence. `tellsBasis`: see `adviceWhy`. */
export function whyText(
  { reason }: Pick<DutyLine, 'reason'>,
  s: Speaker,
  tellsBasis = true,
): string {
  switch (reason.kind) {
    case 'out-of-range':
    case 'before-dose':
    case 'after-outage':
    case 'calibration':
    case 'change':
    case 'aeration':
    case 'clean':
      return adviceWhy(reason, s, tellsBasis);
    case 'water':
      return `${waterText(reason, s)}${levelWanted({ reason })}${reason.mix ? ` ${mixWhy(reason.mix, s, tellsBasis)}` : ''}`;
    case 'not-measured':
      return measuredText(reason, s);
    case 'chore':
      return reason.lastDoneOn === null
        ? `To be done ${everyDays(reason.everyDays)}, and not done yet.`
        : `To be done ${everyDays(reason.everyDays)}, last done ${onDay(reason.lastDoneOn, s)}.`;
  }
}

/** Begins with a space; empty where the level is known well enough. */
export function levelWanted({ reason }: Pick<DutyLine, 'reason'>): string {
  return reason.kind === 'water' && reason.wantsLevel
    ? ' Afterwards tell me how high the water stands.'
    : '';
}

function measuredText(reason: Extract<Reason, { kind: 'not-measured' }>, s: Speaker): string {
  if (reason.lastOn === null) return 'Not measured yet.';
  const last = `Last measured ${onDay(reason.lastOn, s)}.`;
  if (!reason.drift) return last;
  const { quantity, perDay, lowest, highest } = reason.drift;
  const [low, high] = s.range(
    measureOf(quantity, lowest, s.units),
    measureOf(quantity, highest, s.units),
  );
  const name = quantityNames[quantity];
  const step = measureOf(quantity, Math.abs(perDay), s.units);
  const moves =
    Number(step.value.toFixed(1)) === 0
      ? 'wanders'
      : `${perDay > 0 ? 'rises' : 'falls'} about ${s.amount(step)} a day`;
  return `${last} The ${name} ${moves} and may be outside ${low} to ${high} by now.`;
}

type WaterReason = Extract<Reason, { kind: 'water' }>;

function waterText(reason: WaterReason, s: Speaker): string {
  if (!reason.isLevelKnown) return 'Nobody has said yet how full it is.';
  const unit = s.units.volume;
  const prospect = waterProspect(reason, s.today);
  const now = s.amount(roughVolume(reason.litresNow, unit));
  const leastL = 'leastL' in prospect ? prospect.leastL : null;
  const least = leastL === null ? '' : ` (perhaps only ${s.number(roughVolume(leastL, unit))})`;
  const left = `About ${now} left${least}`;
  const use = `it drinks about ${s.amount(useRate(reason.usePerDayL, unit))} a day`;
  const low = `the low mark (${s.amount(volume(reason.lowL, unit))})`;
  switch (prospect.kind) {
    case 'is-low':
      return `${left}, which is no more than ${low}, and ${use}.`;
    case 'low-today':
      return `${left} and ${use}, so it could reach ${low} today.`;
    case 'low-by':
      return `${left} and ${use}, so it could reach ${low} by ${dayText(prospect.date, s)}.`;
    case 'lasts':
      return `${left} and ${use}, so ${low} is more than two months away.`;
  }
}
