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
import { partNames, productName, quantityNames, strengthNames } from './names.ts';

/**
 * What is to be done, without the reason. Several lines: the same check of several systems, or one
 * dose of several products.
 * The system comes first, since the article that its name would need is unknown:
 * `Nordtisch: bis zu 43 l (4½ × Kanne) nachfüllen, bis zum Rand`.
 */
export function dutyText(lines: readonly DutyLine[], s: Speaker): string {
  const [line] = lines;
  if (!line) return '';
  const { duty, reason } = line;
  const where = s.and(lines.map((each) => placeName(each.duty, s)));
  switch (duty.kind) {
    case 'top-up':
      return `${where}: ${topUpText(line, s)}`;
    case 'check': {
      const quantities = 'quantities' in reason ? reason.quantities : [];
      const what = quantities.map((quantity) => quantityNames[quantity]);
      return `${where}: ${what.length > 0 ? `${s.and(what)} messen` : 'messen'}`;
    }
    case 'dose': {
      const what = s.and(lines.map((each) => doseText(each.duty, s)));
      return `${placeName(duty, s)}: ${what} zugeben`;
    }
    case 'reservoir-change': {
      const amount =
        duty.litres === undefined
          ? ''
          : `, etwa ${s.amount(carriedVolume(duty.litres, s.units.volume))}`;
      return `${where}: Lösung wechseln${amount}${concentratesText(duty, s)}`;
    }
    case 'calibration':
      return `Kalibrieren: ${duty.probe ?? 'Messgerät'}`;
    case 'aeration':
      return duty.minutesPerHour === undefined
        ? `${where}: Belüftung einstellen`
        : `${where}: Belüftung auf ${s.amount(measureOf('aeration', duty.minutesPerHour, s.units))} stellen`;
    case 'clean':
      return cleanText(duty, s);
    case 'chore':
      return choreText(duty, s);
  }
}

/** The duty by name only, for a list of what comes later: `Nordtisch nachfüllen`. */
export function dutyName(duty: Duty, s: Speaker): string {
  const where = placeName(duty, s);
  switch (duty.kind) {
    case 'top-up':
      return `${where} nachfüllen`;
    case 'check':
      return `${where} messen`;
    case 'dose':
      return `${where}: ${productName(duty.product ?? 'Dünger')} zugeben`;
    case 'reservoir-change':
      return `${where}: Lösung wechseln`;
    case 'calibration':
      return `${duty.probe ?? 'Messgerät'} kalibrieren`;
    case 'aeration':
      return `${where}: Belüftung einstellen`;
    case 'clean':
      return cleanText(duty, s);
    case 'chore':
      return choreText(duty, s);
  }
}

function placeName(duty: Duty, s: Speaker): string {
  return duty.system === null ? 'Gewächshaus' : s.system(duty.system).name;
}

function doseText({ mL, product = 'Dünger' }: Duty, s: Speaker): string {
  const amount = mL === undefined ? '' : `${s.amount(measureOf('dose', mL, s.units))} `;
  return `${amount}${productName(product)}`;
}

function cleanText(duty: Duty, s: Speaker): string {
  const { parts = [] } = duty;
  const where = placeName(duty, s);
  if (parts.length === 0) return `${where} reinigen`;
  return `${where}: ${s.and(parts.map((part) => partNames[part]))} reinigen`;
}

function choreText(duty: Duty, s: Speaker): string {
  const name = s.capital(clipped(duty.chore ?? 'Aufgabe', mostQuoted));
  return duty.system === null ? name : `${name} (${placeName(duty, s)})`;
}

function topUpText({ duty, reason }: DutyLine, s: Speaker): string {
  const filling =
    duty.system !== null && reason.kind === 'water'
      ? fillingTo(s.system(duty.system), reason.fillToL)
      : null;
  const amount = duty.litres
    ? `${filling?.kind === 'brim' ? 'bis zu' : 'etwa'} ${s.amount(carriedVolume(duty.litres, s.units.volume))}${countText(duty, s)} `
    : '';
  const what = duty.strength ? `${strengthNames[duty.strength]} ` : '';
  const to = filling ? fillText(filling, s) : '';
  return `${amount}${what}nachfüllen${to}${concentratesText(duty, s)}${shareText(duty, s)}`;
}

/** `, mit 60 ml Dünger A und 60 ml Dünger B` */
function concentratesText({ concentrates = [] }: Duty, s: Speaker): string {
  if (concentrates.length === 0) return '';
  const told = concentrates.map(
    ({ product, mL }) => `${s.amount(measureOf('dose', mL, s.units))} ${productName(product)}`,
  );
  return `, mit ${s.and(told)}`;
}

/** `, je 52 ml auf 1 Kanne` */
function shareText(duty: Duty, s: Speaker): string {
  const share = shareOfContainer(duty, s.greenhouse.containers);
  if (!share) return '';
  return `, je ${s.amount(measureOf('dose', share.mL, s.units))} auf 1 ${share.container.name}`;
}

/** ` (4½ × Kanne)`: a count that needs no plural, since a household's own word may have any. */
function countText({ system, litres }: Duty, s: Speaker): string {
  if (system === null || litres === undefined) return '';
  const isHeldBack = s.system(system).method === 'non-circulating';
  const told = containersFor(litres, s.greenhouse.containers, isHeldBack ? 'down' : 'nearest');
  return told ? ` (${halfText(told.count)} × ${told.container.name})` : '';
}

function fillText(filling: FillingTo, s: Speaker): string {
  const unit = s.units.volume;
  switch (filling.kind) {
    case 'brim':
      return ', bis zum Rand';
    case 'just-under-brim':
      return ', bis knapp unter den Rand';
    case 'level':
      return `, höchstens auf ${s.amount(roughVolume(filling.litres, unit))}, ${s.amount(depth(filling.belowBrimCm, unit))} unter dem Rand`;
  }
}
