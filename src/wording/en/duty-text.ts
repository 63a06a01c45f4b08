import type { Duty } from '../../greenhouse/duty.ts';
import type { DutyLine } from '../../planning/duty-line.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { containersFor, halfText } from '../spoken/containers-for.ts';
import { depth } from '../spoken/depth.ts';
import { type FillingTo, fillingTo } from '../spoken/filling-to.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { shareOfContainer } from '../spoken/share-of-container.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { carriedVolume, roughVolume } from '../spoken/volume.ts';
import { containerPlural, partNames, productName, quantityNames, strengthNames } from './names.ts';

/**
 * What is to be done, without the reason. Several lines: the same check of several systems, or one
 * dose of several products.
 * `Top up North bench with up to 43 L (4½ cans), to the brim`.
 */
export function dutyText(lines: readonly DutyLine[], s: Speaker): string {
  const [line] = lines;
  if (!line) return '';
  const { duty, reason } = line;
  const where = s.and(lines.map((each) => placeName(each.duty, s)));
  switch (duty.kind) {
    case 'top-up':
      return `Top up ${where}${topUpAmount(line, s)}`;
    case 'check': {
      const quantities = 'quantities' in reason ? reason.quantities : [];
      const what = quantities.map((quantity) => quantityNames[quantity]);
      return what.length > 0 ? `Check ${s.and(what)} of ${where}` : `Check ${where}`;
    }
    case 'dose': {
      const what = s.and(lines.map((each) => doseText(each.duty, s)));
      return `Add ${what} to ${placeName(duty, s)}`;
    }
    case 'reservoir-change': {
      const amount =
        duty.litres === undefined
          ? ''
          : `, about ${s.amount(carriedVolume(duty.litres, s.units.volume))}`;
      return `Change the solution of ${where}${amount}${concentratesText(duty, s)}`;
    }
    case 'calibration':
      return `Calibrate the ${duty.probe ?? 'probe'}`;
    case 'aeration':
      return duty.minutesPerHour === undefined
        ? `Set the aeration of ${where}`
        : `Set the aeration of ${where} to ${s.amount(measureOf('aeration', duty.minutesPerHour, s.units))}`;
    case 'clean':
      return s.capital(cleanText(duty, s));
    case 'chore':
      return s.capital(choreText(duty, s));
  }
}

/** The duty by name only, for a list of what comes later: `top up North bench`. */
export function dutyName(duty: Duty, s: Speaker): string {
  const where = placeName(duty, s);
  switch (duty.kind) {
    case 'top-up':
      return `top up ${where}`;
    case 'check':
      return `check ${where}`;
    case 'dose':
      return `add ${productName(duty.product ?? 'nutrients')} to ${where}`;
    case 'reservoir-change':
      return `change the solution of ${where}`;
    case 'calibration':
      return `calibrate the ${duty.probe ?? 'probe'}`;
    case 'aeration':
      return `set the aeration of ${where}`;
    case 'clean':
      return cleanText(duty, s);
    case 'chore':
      return choreText(duty, s);
  }
}

function placeName(duty: Duty, s: Speaker): string {
  return duty.system === null ? 'the greenhouse' : s.system(duty.system).name;
}

function cleanText(duty: Duty, s: Speaker): string {
  const { parts = [] } = duty;
  const where = placeName(duty, s);
  if (parts.length === 0) return `clean ${where}`;
  return `clean ${s.and(parts.map((part) => partNames[part]))} of ${where}`;
}

function choreText(duty: Duty, s: Speaker): string {
  const name = clipped(duty.chore ?? 'a chore', mostQuoted);
  return duty.system === null ? name : `${name} (${placeName(duty, s)})`;
}

function topUpAmount({ duty, reason }: DutyLine, s: Speaker): string {
  const filling =
    duty.system !== null && reason.kind === 'water'
      ? fillingTo(s.system(duty.system), reason.fillToL)
      : null;
  const amount = duty.litres
    ? ` with ${filling?.kind === 'brim' ? 'up to' : 'about'} ${s.amount(carriedVolume(duty.litres, s.units.volume))}${countText(duty, s)}`
    : '';
  const withWhat = duty.strength
    ? `${amount === '' ? ' with' : `${amount} of`} ${strengthNames[duty.strength]}`
    : amount;
  const to = filling ? fillText(filling, s) : '';
  return `${withWhat}${to}${concentratesText(duty, s)}${shareText(duty, s)}`;
}

function doseText({ mL, product = 'nutrients' }: Duty, s: Speaker): string {
  const amount = mL === undefined ? '' : `${s.amount(measureOf('dose', mL, s.units))} `;
  return `${amount}${productName(product)}`;
}

/** ` (4½ cans)` */
function countText({ system, litres }: Duty, s: Speaker): string {
  if (system === null || litres === undefined) return '';
  const isHeldBack = s.system(system).method === 'non-circulating';
  const told = containersFor(litres, s.greenhouse.containers, isHeldBack ? 'down' : 'nearest');
  return told
    ? ` (${halfText(told.count)} ${containerPlural(told.container.name, told.count)})`
    : '';
}

/** `: 60 mL nutrient A and 60 mL nutrient B` */
function concentratesText({ concentrates = [] }: Duty, s: Speaker): string {
  if (concentrates.length === 0) return '';
  const told = concentrates.map(
    ({ product, mL }) => `${s.amount(measureOf('dose', mL, s.units))} ${productName(product)}`,
  );
  return `: ${s.and(told)}`;
}

/** `, 52 mL of each to a can` */
function shareText(duty: Duty, s: Speaker): string {
  const share = shareOfContainer(duty, s.greenhouse.containers);
  if (!share) return '';
  const { container, mL } = share;
  return `, ${s.amount(measureOf('dose', mL, s.units))} of each to 1 ${containerPlural(container.name, 1)}`;
}

function fillText(filling: FillingTo, s: Speaker): string {
  const unit = s.units.volume;
  switch (filling.kind) {
    case 'brim':
      return ', to the brim';
    case 'just-under-brim':
      return ', to just under the brim';
    case 'level':
      return `, to ${s.amount(roughVolume(filling.litres, unit))} at most, ${s.amount(depth(filling.belowBrimCm, unit))} below the brim`;
  }
}
