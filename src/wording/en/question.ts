import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../../understanding/doubt.ts';
import type { DoubtReason } from '../../understanding/statement.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import {
  distinct,
  doubtedDrafts,
  doubtedSystem,
  isOfPartsOnly,
  isOfVessels,
  systemsOffered,
} from '../spoken/doubted.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { troubleQuestion } from './advice/trouble-text.ts';
import { choiceText } from './button.ts';
import { dutyName } from './duty-text.ts';
import { entryText } from './entry-text.ts';
import { daysText } from './family/settled.ts';
import { changeQuestion } from './keeping/change-text.ts';
import { cropText } from './keeping/crop-text.ts';
import { guideText } from './keeping/guide-text.ts';
import { howMuchStock } from './keeping/stock-text.ts';
import { missingAmountText } from './missing-amount.ts';
import { partNames, quantityNames, volumeNames } from './names.ts';
import { forSystem, inSystems } from './place-text.ts';
import { rangeText, valueText, writtenText } from './value-text.ts';

type Because<Kind extends DoubtReason['kind']> = Extract<DoubtReason, { kind: Kind }>;

/** Says what was found and asks for the one thing that is missing. */
export function questionText(doubt: Doubt, s: Speaker): string {
  const { reason } = doubt;
  switch (reason.kind) {
    case 'which-system':
      return whichSystem(reason, doubt, s);
    case 'which-quantity':
      return whichQuantity(reason, doubt, s);
    case 'in-it-or-added': {
      const amount = s.amount(measureOf('top-up', reason.litres, s.units));
      return `${amount}${inSystems(doubt, s)}: is that what is in it now, or what you added?`;
    }
    case 'which-product':
      return `${clipped(reason.amount, mostQuoted)}${forSystem(doubt, s)}: of which product? For example “30 mL nutrient A to ${s.greenhouse.systems[0]?.name ?? 'the bench'}”.`;
    case 'which-unit': {
      if (isOfVessels(reason))
        return `${s.capital(clipped(reason.value, mostQuoted))}${forSystem(doubt, s)}: how many ${volumeNames[s.units.volume]} is that?`;
      const found = `${s.capital(quantityNames[reason.quantity])} ${clipped(reason.value, mostQuoted)}`;
      return `${found}${forSystem(doubt, s)}: in ${s.or(possibleUnits(reason.quantity, s))}?`;
    }
    case 'out-of-range':
      return outOfRange(reason, doubt, s);
    case 'conflict': {
      const values = reason.values.map((value) => valueText(reason.quantity, value, s));
      return `${s.capital(s.and(values))}${forSystem(doubt, s)}: which one is right?`;
    }
    case 'missing-amount':
      return missingAmountText(reason, doubt, s);
    case 'litres-to-brim':
      return `How many ${volumeNames[s.units.volume]} did it take to fill ${doubtedSystem(doubt, s)?.name ?? 'it'} to the brim?`;
    case 'shared-amount': {
      const amount = clipped(reason.amount, mostQuoted);
      return isOfPartsOnly(doubt)
        ? `${amount} each${forSystem(doubt, s)}: how much is that in all?`
        : `${amount}: for each of them, or in all?`;
    }
    case 'which-time':
      return `I can't place “${clipped(reason.written, mostQuoted)}”. When was that?`;
    case 'since-when':
      return sinceWhen(reason);
    case 'how-long-out':
      return howLongOut(reason);
    case 'switched-or-failed':
      return `Is the ${supplyNames[reason.of]} only switched off at such times from now on, or is it out? I log minutes an hour, but no times of day: such a setting I can keep as a note.`;
    case 'stopped-altogether':
      return `Has the ${supplyNames[reason.of]}${forSystem(doubt, s)} stopped altogether?`;
    case 'is-it-a-reading':
      return isItAReading(doubt, s);
    case 'shorthand-does-not-fit':
      return 'These numbers do not fit the order pH, EC, water temperature. Which is which? For example “pH 5.9, EC 1.7, water 21”.';
    case 'trouble':
      return troubleQuestion(reason, s);
    case 'whose-photo':
      return 'Which system is the photo for? I show it with the steps of its work.';
    case 'which-duties':
      return `Which work is done? For example “did ${s.greenhouse.systems[0]?.name ?? 'the bench'}”.`;
    case 'was-it-cleaned': {
      const parts = s.and(reason.parts.map((part) => partNames[part]));
      const asked =
        reason.system === null
          ? `Of which system did you clean ${parts}?`
          : `Did you clean ${parts} of ${s.system(reason.system).name}?`;
      return `${asked} Then I count it as done.`;
    }
    case 'which-failed':
      return `Which work could not be done? For example “couldn't do ${s.greenhouse.systems[0]?.name ?? 'the bench'}, the lid is stuck”.`;
    case 'why-not':
      return `${s.capital(dutyName(reason.duty, s))}: what got in the way? A word is enough.`;
    case 'change-set-up':
      return changeQuestion(reason.change, reason.was, s);
    case 'planted-where':
      return `${s.capital(cropText(reason.planting))}: in which system?`;
    case 'how-much-stock':
      return howMuchStock(reason, s);
    case 'guide':
      return guideText(reason.step, reason.problem, s);
    case 'one-or-two':
      return `${s.member(reason.by)} told me the same a few minutes ago. Was that one top-up, or two? Until you say, yours is not logged.`;
    case 'away-when':
      return 'From when to when? For example “from Friday to the 16th”.';
    case 'who-covers':
      return `Away ${daysText(reason.from, reason.until, s)}. Who steps in? Press a button, or say for example “${coverExample(reason.helpers, s)}”.`;
    case 'unclear':
      return 'I did not understand that. Shall I keep it as a note?';
  }
}

function whichSystem(reason: Because<'which-system'>, doubt: Doubt, s: Speaker): string {
  // As yet it belongs to no system, whatever the first choice would make of it.
  const found = distinct(
    doubtedDrafts(doubt).map((draft) => entryText({ ...draft, system: null }, s)),
  );
  const written = reason.written === undefined ? null : clipped(reason.written, mostQuoted);
  const asked = written === null ? 'for which system?' : `which system is “${written}”?`;
  if (reason.isNoName && written !== null && found.length > 0) {
    const systems = s.or(systemsOffered(doubt, s).map(({ name }) => name));
    return `${s.capital(found.join(', '))}: I know no “${written}” here. Is that ${systems}?`;
  }
  if (reason.ofSeveral) return `${s.capital(s.and(found))}: for which systems, in this order?`;
  if (found.length > 0) return `${s.capital(found.join(', '))}: ${asked}`;
  if (reason.quantity === null)
    return written === null ? 'Which system do you mean?' : s.capital(asked);
  return `${s.capital(quantityNames[reason.quantity])}: ${asked}`;
}

function whichQuantity(reason: Because<'which-quantity'>, doubt: Doubt, s: Speaker): string {
  const value = clipped(reason.value, mostQuoted);
  const choices = doubt.choices.flatMap(({ label }) =>
    label.kind === 'quantity' ? [quantityNames[label.quantity]] : [],
  );
  if (choices.length > 1)
    return `${s.capital(value)}${forSystem(doubt, s)}: is that the ${s.or(choices)}?`;
  return `What is ${value}${forSystem(doubt, s)}? Please say it with a word, for example “pH 5.8”.`;
}

function outOfRange(reason: Because<'out-of-range'>, doubt: Doubt, s: Speaker): string {
  const { quantity, value, lowest, highest } = reason;
  const found = `${s.capital(writtenText(quantity, value, s))}${forSystem(doubt, s)}`;
  const possible = rangeText(quantity, lowest, highest, s);
  const likely = doubt.choices.flatMap(({ label }) =>
    label.kind === 'value' ? [choiceText(label, s)] : [],
  );
  const asked = likely.length > 0 ? `Did you mean ${s.or(likely)}?` : 'What is the right value?';
  return `${found} is outside what is possible (${possible}). ${asked}`;
}

function isItAReading(doubt: Doubt, s: Speaker): string {
  const found = doubtedDrafts(doubt).map((draft) => entryText(draft, s));
  if (found.length === 0) return 'Should I log that, or was it a question?';
  return `Should I log ${found.join(', ')}${forSystem(doubt, s)}, or was that a question?`;
}

const supplyNames = { power: 'power', pump: 'pump', 'air-pump': 'air pump' };

function howLongOut({ of, isUndated }: Because<'how-long-out'>): string {
  const asked = isUndated
    ? `When was the ${supplyNames[of]} out? For example “from 2 to 4”, or how long: “2 hours”.`
    : `How long was the ${supplyNames[of]} out? For example “2 hours”.`;
  return `${asked} Until you say, it is not logged.`;
}

function sinceWhen({ of, written }: Because<'since-when'>): string {
  return `Since when is the ${supplyNames[of]} out? “${clipped(written, mostQuoted)}” is still to come today, so I logged it from now.`;
}

function possibleUnits(quantity: Quantity, s: Speaker): readonly string[] {
  switch (quantity) {
    case 'ec':
      return ['mS/cm', 'µS/cm', 'ppm'];
    case 'water-temperature':
    case 'air-temperature':
      return ['°C', '°F'];
    case 'level':
      return [volumeNames[s.units.volume], '%', s.units.volume === 'gal' ? 'inches' : 'cm'];
    case 'harvest':
      return ['g', 'kg'];
    case 'dose':
      return ['mL', 'L'];
    default:
      return [volumeNames[s.units.volume], 'mL'];
  }
}

function coverExample(asked: readonly string[] | undefined, s: Speaker): string {
  const helpers = s.greenhouse.members.filter(({ role, handle }) =>
    asked ? asked.includes(handle) : role === 'helper',
  );
  const [one, other] = helpers.map(({ name }) => name);
  return other === undefined ? (one ?? 'nobody') : `${one} until Monday, then ${other}`;
}
