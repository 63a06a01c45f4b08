import type { DutyLine, Reason } from '../../planning/duty-line.ts';
import { measure } from '../spoken/measure.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { signed } from '../spoken/signed.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { volume } from '../spoken/volume.ts';
import { dayAndTime, everyDays, onDay, untilDay } from './day-text.ts';
import { quantitiesWithArticle, quantityNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';

type Of<K extends Reason['kind']> = Extract<Reason, { kind: K }>;

/** The figures that a duty and its day rest on, unrounded, for who asks why exactly. */
export function exactText(line: DutyLine, s: Speaker): string {
  return `Genau: ${[...figuresOf(line, s), dayFigures(line, s)].join('; ')}.`;
}

function figuresOf({ reason, duty }: DutyLine, s: Speaker): readonly string[] {
  switch (reason.kind) {
    case 'water':
      return waterFigures(reason, s);
    case 'not-measured':
      return checkFigures(reason, s);
    case 'chore':
      return [`${everyDays(reason.everyDays)} dran`];
    case 'out-of-range':
      return doseFigures(reason, s);
    case 'before-dose':
      return [
        `${valueText(reason.quantity, reason.value, s)} gemessen`,
        `zuerst gebraucht: ${s.and(reason.quantities.map((quantity) => quantityNames[quantity]))}`,
      ];
    case 'after-outage':
      return [
        `vorbei: ${dayAndTime(reason.restoredAtMs, s)}`,
        `zu prüfen: ${s.and(reason.quantities.map((quantity) => quantityNames[quantity]))}`,
      ];
    case 'calibration':
      return [
        reason.lastOn === null ? 'noch nie kalibriert' : `zuletzt ${onDay(reason.lastOn, s)}`,
        `sie hält ${reason.everyDays} Tage`,
      ];
    case 'change':
      return [
        `die Lösung ist ${reason.ageDays} ${reason.ageDays === 1 ? 'Tag' : 'Tage'} alt`,
        `${s.amount(volume(reason.toppedUpL, s.units.volume))} seither nachgefüllt, bei ${s.amount(volume(reason.brimL, s.units.volume))} Inhalt`,
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
    date === null ? 'nicht in zwei Monaten' : onDay(date, s),
  );
  return [
    `${s.amount(volume(reason.litresNow, unit))} drin, plus/minus ${s.amount(volume(reason.litresSd, unit))}`,
    `${s.amount(volume(reason.usePerDayL, unit))} am Tag`,
    `untere Marke frühestens ${early!}, voraussichtlich ${likely!}`,
  ];
}

function checkFigures({ rhythm }: Of<'not-measured'>, s: Speaker): readonly string[] {
  if (!rhythm) return ['bisher 0 Messungen von pH oder EC'];
  const { quantity, foreseen, lowest, highest } = rhythm;
  const name = quantitiesWithArticle[quantity];
  const often = `also ${everyDays(rhythm.everyDays)}`;
  if (!foreseen) return [`weniger als 3 Messungen zeigen, wie sich ${name} hier bewegt`, often];
  const share = (chance: number) => s.amount(measure(100 * chance, '%', 0, 0));
  return [
    `${name} bewegt sich um ${signed(measureOf(quantity, foreseen.perDay, s.units), s)} am Tag`,
    `bis dahin ist ${valueText(quantity, foreseen.expected, s)} zu erwarten, mit ${share(foreseen.chanceOut)} Wahrscheinlichkeit außerhalb von ${rangeText(quantity, lowest, highest, s)}`,
    `ab ${share(rhythm.worthALookChance)} lohnt ein Blick, ${often}`,
  ];
}

function doseFigures(reason: Of<'out-of-range'>, s: Speaker): readonly string[] {
  const { quantity, value, aim, lowest, highest } = reason;
  return [
    `${valueText(quantity, value, s)} gemessen ${dayAndTime(reason.measuredAtMs, s)}, ${rangeText(quantity, lowest, highest, s)} gewünscht, Ziel ${valueText(quantity, aim, s)}`,
    `${s.amount(measureOf('dose', reason.wholeMl, s.units))} insgesamt für ${s.amount(volume(reason.litres, s.units.volume))}`,
  ];
}

function aerationFigures(
  { presentMinPerHour, waterC }: Of<'aeration'>,
  wantedMinPerHour: number | undefined,
  s: Speaker,
): readonly string[] {
  const minutes = (value: number) => s.amount(measureOf('aeration', value, s.units));
  return [
    `Wasser bei ${s.amount(measureOf('water-temperature', waterC, s.units))}`,
    `Luft ${minutes(presentMinPerHour)}`,
    ...(wantedMinPerHour === undefined ? [] : [`${minutes(wantedMinPerHour)} gewünscht`]),
  ];
}

function cleanFigures({ because }: Of<'clean'>, s: Speaker): readonly string[] {
  switch (because.kind) {
    case 'fill-time': {
      const minutes = (value: number) => s.amount(measureOf('fill-time', value, s.units));
      return [
        `${minutes(because.minutes)} bis es voll war, üblich sind ${minutes(because.usualMinutes)}`,
      ];
    }
    case 'low-oxygen':
      return [
        `${s.amount(measureOf('dissolved-oxygen', because.mgPerL, s.units))} Sauerstoff gemessen`,
      ];
    case 'interval':
      return [`${everyDays(because.everyDays)} dran`];
  }
}

/** When it falls due, and how far that may be moved to suit a trip. */
function dayFigures({ duty, ridesFrom, waitsUntil }: DutyLine, s: Speaker): string {
  const early =
    ridesFrom !== null && ridesFrom < duty.dueOn
      ? `, auf einem Weg, der ohnehin gemacht wird, schon ${onDay(ridesFrom, s)}`
      : '';
  const late =
    waitsUntil !== undefined && waitsUntil > duty.dueOn
      ? `, und es kann ${untilDay(waitsUntil, s)} warten`
      : '';
  return `fällig am ${s.fullDay(duty.dueOn)}${early}${late}`;
}
