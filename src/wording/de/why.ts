import type { DutyLine, Reason } from '../../planning/duty-line.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { waterProspect } from '../spoken/water-prospect.ts';
import { adviceWhy, mixWhy } from './advice/why-advice.ts';
import { everyDays, onDay } from './day-text.ts';
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
        ? `${s.capital(everyDays(reason.everyDays))} dran, bisher noch nicht gemacht.`
        : `${s.capital(everyDays(reason.everyDays))} dran, zuletzt ${onDay(reason.lastDoneOn, s)} gemacht.`;
  }
}

/** Begins with a space; empty where the level is known well enough. */
export function levelWanted({ reason }: Pick<DutyLine, 'reason'>): string {
  return reason.kind === 'water' && reason.wantsLevel
    ? ' Sag mir danach, wie hoch das Wasser steht.'
    : '';
}

function measuredText(reason: Extract<Reason, { kind: 'not-measured' }>, s: Speaker): string {
  if (reason.lastOn === null) return 'Noch nicht gemessen.';
  const last = `Zuletzt ${onDay(reason.lastOn, s)} gemessen.`;
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
      ? 'schwankt'
      : `${perDay > 0 ? 'steigt' : 'fällt'} um etwa ${s.amount(step)} am Tag`;
  return `${last} ${name} ${moves} und kann inzwischen außerhalb von ${low} bis ${high} sein.`;
}

type WaterReason = Extract<Reason, { kind: 'water' }>;

function waterText(reason: WaterReason, s: Speaker): string {
  if (!reason.isLevelKnown) return 'Wie voll es ist, hat noch niemand gesagt.';
  const unit = s.units.volume;
  const prospect = waterProspect(reason, s.today);
  const now = s.amount(roughVolume(reason.litresNow, unit));
  const leastL = 'leastL' in prospect ? prospect.leastL : null;
  const least = leastL === null ? '' : ` (vielleicht nur ${s.number(roughVolume(leastL, unit))})`;
  const left = `Noch etwa ${now} drin${least}`;
  const use = `Verbrauch etwa ${s.amount(useRate(reason.usePerDayL, unit))} am Tag`;
  const low = `die untere Marke (${s.amount(volume(reason.lowL, unit))})`;
  switch (prospect.kind) {
    case 'is-low':
      return `${left}, ${low} ist also erreicht; ${use}.`;
    case 'low-today':
      return `${left}, ${use}; ${low} könnte heute erreicht sein.`;
    case 'low-by':
      return `${left}, ${use}; ${low} könnte ${onDay(prospect.date, s)} erreicht sein.`;
    case 'lasts':
      return `${left}, ${use}; das reicht noch mehr als zwei Monate.`;
  }
}
