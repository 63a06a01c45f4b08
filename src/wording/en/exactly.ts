import type { DutyLine, Reason } from '../../planning/duty-line.ts';
import { measure } from '../spoken/measure.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { signed } from '../spoken/signed.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { volume } from '../spoken/volume.ts';
import { dayAndTime, dayText, everyDays, onDay } from './day-text.ts';
import { quantityNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';

type Of<K extends Reason['kind']> = Extract<Reason, { kind: K }>;

/** The figures that a duty and its day rest on, unrounded, for who asks why exactly. */
export function exactText(line: DutyLine, s: Speaker): string {
  return `Exactly: ${[...figuresOf(line, s), dayFigures(line, s)].join('; ')}.`;
}

function figuresOf({ reason, duty }: DutyLine, s: Speaker): readonly string[] {
  switch (reason.kind) {
    case 'water':
      return waterFigures(reason, s);
    case 'not-measured':
      return checkFigures(reason, s);
    case 'chore':
      return [`to be done ${everyDays(reason.everyDays)}`];
    case 'out-of-range':
      return doseFigures(reason, s);
    case 'before-dose':
      return [
        `${valueText(reason.quantity, reason.value, s)} measured`,
        `wanted first: ${s.and(reason.quantities.map((quantity) => quantityNames[quantity]))}`,
      ];
    case 'after-outage':
      return [
        `over since ${dayAndTime(reason.restoredAtMs, s)}`,
        `to be looked at: ${s.and(reason.quantities.map((quantity) => quantityNames[quantity]))}`,
      ];
    case 'calibration':
      return [
        reason.lastOn === null ? 'never calibrated' : `last ${onDay(reason.lastOn, s)}`,
        `it holds for ${reason.everyDays} days`,
      ];
    case 'change':
      return [
        `the solution is ${reason.ageDays} ${reason.ageDays === 1 ? 'day' : 'days'} old`,
        `${s.amount(volume(reason.toppedUpL, s.units.volume))} topped up since, for ${s.amount(volume(reason.brimL, s.units.volume))} that it holds`,
      ];
    case 'aeration':
      return aerationFigures(reason, duty.minutesPerHour, s);
    case 'clean':
      return cleanFigures(reason, s);
  }
}

function waterFigures(reason: Of<'water'>, s: Speaker): readonly string[] {
  const unit = s.units.volume;
  const [early, likely] = [reason.lowOnEarly, reason.lowOnLikely].map((date) =>
    date === null ? 'not within two months' : onDay(date, s),
  );
  return [
    `${s.amount(volume(reason.litresNow, unit))} left, give or take ${s.amount(volume(reason.litresSd, unit))}`,
    `${s.amount(volume(reason.usePerDayL, unit))} a day`,
    `low mark at the earliest ${early!}, most likely ${likely!}`,
  ];
}

function checkFigures({ rhythm }: Of<'not-measured'>, s: Speaker): readonly string[] {
  if (!rhythm) return ['0 readings of its pH or its EC so far'];
  const { quantity, foreseen, lowest, highest } = rhythm;
  const name = quantityNames[quantity];
  const often = `so ${everyDays(rhythm.everyDays)}`;
  if (!foreseen) return [`fewer than 3 readings show how the ${name} moves here`, often];
  const share = (chance: number) => s.amount(measure(100 * chance, '%', 0, 0));
  return [
    `the ${name} moves by ${signed(measureOf(quantity, foreseen.perDay, s.units), s)} a day`,
    `by then ${valueText(quantity, foreseen.expected, s)} is expected, with a chance of ${share(foreseen.chanceOut)} that it is outside ${rangeText(quantity, lowest, highest, s)}`,
    `from ${share(rhythm.worthALookChance)} on a look is worth while, ${often}`,
  ];
}

function doseFigures(reason: Of<'out-of-range'>, s: Speaker): readonly string[] {
  const { quantity, value, aim, lowest, highest } = reason;
  return [
    `${valueText(quantity, value, s)} measured ${dayAndTime(reason.measuredAtMs, s)}, ${rangeText(quantity, lowest, highest, s)} wanted, ${valueText(quantity, aim, s)} aimed at`,
    `${s.amount(measureOf('dose', reason.wholeMl, s.units))} in all for ${s.amount(volume(reason.litres, s.units.volume))}`,
  ];
}

function aerationFigures(
  { presentMinPerHour, waterC }: Of<'aeration'>,
  wantedMinPerHour: number | undefined,
  s: Speaker,
): readonly string[] {
  const minutes = (value: number) => s.amount(measureOf('aeration', value, s.units));
  return [
    `water at ${s.amount(measureOf('water-temperature', waterC, s.units))}`,
    `air for ${minutes(presentMinPerHour)}`,
    ...(wantedMinPerHour === undefined ? [] : [`${minutes(wantedMinPerHour)} wanted`]),
  ];
}

function cleanFigures({ because }: Of<'clean'>, s: Speaker): readonly string[] {
  switch (because.kind) {
    case 'fill-time': {
      const minutes = (value: number) => s.amount(measureOf('fill-time', value, s.units));
      return [
        `${minutes(because.minutes)} to fill, where ${minutes(because.usualMinutes)} is usual`,
      ];
    }
    case 'low-oxygen':
      return [
        `${s.amount(measureOf('dissolved-oxygen', because.mgPerL, s.units))} of oxygen measured`,
      ];
    case 'interval':
      return [`to be done ${everyDays(because.everyDays)}`];
  }
}

/** When it falls due, and how far that may be moved to suit a trip. */
function dayFigures({ duty, ridesFrom, waitsUntil }: DutyLine, s: Speaker): string {
  const early =
    ridesFrom !== null && ridesFrom < duty.dueOn
      ? `, on a trip made anyway from ${dayText(ridesFrom, s)} on`
      : '';
  const late =
    waitsUntil !== undefined && waitsUntil > duty.dueOn
      ? `, and it may wait until ${dayText(waitsUntil, s)}`
      : '';
  return `due ${s.fullDay(duty.dueOn)}${early}${late}`;
}
