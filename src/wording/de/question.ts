import type { Supply } from '../../greenhouse/entry.ts';
import type { Quantity } from '../../greenhouse/quantity.ts';
import type { Doubt } from '../../understanding/doubt.ts';
import type { DoubtReason } from '../../understanding/statement.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import {
  distinct,
  doubtedDrafts,
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
import { partNames, quantitiesWithArticle, quantityNames, volumeNames } from './names.ts';
import { allInBrackets, atSystem, inBrackets } from './place-text.ts';
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
      return `${amount}${allInBrackets(doubt, s)}: ist das jetzt drin, oder hast du das nachgefüllt?`;
    }
    case 'which-product':
      return `${clipped(reason.amount, mostQuoted)}${inBrackets(doubt, s)}: wovon? Zum Beispiel „30 ml Dünger A, ${s.greenhouse.systems[0]?.name ?? 'Tisch'}“.`;
    case 'which-unit': {
      if (isOfVessels(reason))
        return `${s.capital(clipped(reason.value, mostQuoted))}${inBrackets(doubt, s)}: wie viele ${volumeNames[s.units.volume]} sind das?`;
      const found = `${quantityNames[reason.quantity]} ${clipped(reason.value, mostQuoted)}`;
      return `${found}${inBrackets(doubt, s)}: ${s.or(possibleUnits(reason.quantity, s))}?`;
    }
    case 'out-of-range':
      return outOfRange(reason, doubt, s);
    case 'conflict': {
      const values = reason.values.map((value) => valueText(reason.quantity, value, s));
      return `${s.capital(s.and(values))}${inBrackets(doubt, s)}: was stimmt?`;
    }
    case 'missing-amount':
      return missingAmountText(reason, doubt, s);
    case 'litres-to-brim':
      return `Wie viele ${volumeNames[s.units.volume]} waren es${atSystem(doubt, s)} bis zum Rand?`;
    case 'shared-amount': {
      const amount = clipped(reason.amount, mostQuoted);
      return isOfPartsOnly(doubt)
        ? `Je ${amount}${inBrackets(doubt, s)}: wie viel ist das zusammen?`
        : `${amount}: jeweils oder zusammen?`;
    }
    case 'which-time':
      return `„${clipped(reason.written, mostQuoted)}“ kann ich nicht einordnen. Wann war das?`;
    case 'since-when':
      return sinceWhen(reason);
    case 'how-long-out':
      return howLongOut(reason);
    case 'switched-or-failed':
      return `${switchedTexts[reason.of]} Minuten je Stunde trage ich ein, Tageszeiten nicht: eine solche Einstellung kann ich als Notiz behalten.`;
    case 'stopped-altogether':
      return `${stoppedTexts[reason.of]}${inBrackets(doubt, s)} jetzt ganz?`;
    case 'is-it-a-reading':
      return isItAReading(doubt, s);
    case 'shorthand-does-not-fit':
      return 'Diese Zahlen passen nicht zur Reihenfolge pH, EC, Wassertemperatur. Was ist was? Zum Beispiel „pH 5,9, EC 1,7, Wasser 21“.';
    case 'trouble':
      return troubleQuestion(reason, s);
    case 'whose-photo':
      return 'Zu welchem System gehört das Foto? Ich zeige es bei den Schritten seiner Aufgaben.';
    case 'which-duties':
      return `Was ist erledigt? Zum Beispiel „${s.greenhouse.systems[0]?.name ?? 'pH'} erledigt“.`;
    case 'was-it-cleaned': {
      const parts = s.and(reason.parts.map((part) => partNames[part]));
      return reason.system === null
        ? `In welchem System gereinigt: ${parts}? Dann gilt es als erledigt.`
        : `${s.system(reason.system).name}, ${parts}: ist das gereinigt? Dann gilt es als erledigt.`;
    }
    case 'which-failed':
      return `Welche Arbeit ging nicht? Zum Beispiel „${s.greenhouse.systems[0]?.name ?? 'Wanne'} nicht geschafft, der Deckel klemmt“.`;
    case 'why-not':
      return `${s.capital(dutyName(reason.duty, s))}: woran lag es? Ein Wort genügt.`;
    case 'change-set-up':
      return changeQuestion(reason.change, reason.was, s);
    case 'planted-where':
      return `${s.capital(cropText(reason.planting))}: in welches System?`;
    case 'how-much-stock':
      return howMuchStock(reason, s);
    case 'guide':
      return guideText(reason.step, reason.problem, s);
    case 'one-or-two':
      return `${s.member(reason.by)} hat vor wenigen Minuten dasselbe gemeldet. War das eine Füllung, oder waren es zwei? Bis du es sagst, ist deine nicht eingetragen.`;
    case 'away-when':
      return 'Von wann bis wann? Zum Beispiel „von Freitag bis zum 16.“.';
    case 'who-covers':
      return `Weg ${daysText(reason.from, reason.until, s)}. Wer springt ein? Drück einen Knopf, oder sag zum Beispiel „${coverExample(reason.helpers, s)}“.`;
    case 'unclear':
      return 'Das habe ich nicht verstanden. Soll ich es als Notiz behalten?';
  }
}

function whichSystem(reason: Because<'which-system'>, doubt: Doubt, s: Speaker): string {
  // As yet it belongs to no system, whatever the first choice would make of it.
  const found = distinct(
    doubtedDrafts(doubt).map((draft) => entryText({ ...draft, system: null }, s)),
  );
  const written = reason.written === undefined ? null : clipped(reason.written, mostQuoted);
  const asked = written === null ? 'für welches System?' : `welches System ist „${written}“?`;
  if (reason.isNoName && written !== null && found.length > 0) {
    const systems = s.or(systemsOffered(doubt, s).map(({ name }) => name));
    return `${s.capital(found.join('; '))}: „${written}“ kenne ich hier nicht. Ist das ${systems}?`;
  }
  if (reason.ofSeveral)
    return `${s.capital(s.and(found))}: für welche Systeme, in dieser Reihenfolge?`;
  if (found.length > 0) return `${s.capital(found.join('; '))}: ${asked}`;
  if (reason.quantity !== null) return `${quantityNames[reason.quantity]}: ${asked}`;
  return written === null ? 'Welches System meinst du?' : s.capital(asked);
}

function whichQuantity(reason: Because<'which-quantity'>, doubt: Doubt, s: Speaker): string {
  const value = clipped(reason.value, mostQuoted);
  const choices = doubt.choices.flatMap(({ label }) =>
    label.kind === 'quantity' ? [quantitiesWithArticle[label.quantity]] : [],
  );
  if (choices.length > 1)
    return `${s.capital(value)}${inBrackets(doubt, s)}: ist das ${s.or(choices)}?`;
  return `Was ist ${value}${inBrackets(doubt, s)}? Sag es bitte mit einem Wort, zum Beispiel „pH 5,8“.`;
}

function outOfRange(reason: Because<'out-of-range'>, doubt: Doubt, s: Speaker): string {
  const { quantity, value, lowest, highest } = reason;
  const found = `${s.capital(writtenText(quantity, value, s))}${atSystem(doubt, s)}`;
  const possible = rangeText(quantity, lowest, highest, s);
  const likely = doubt.choices.flatMap(({ label }) =>
    label.kind === 'value' ? [choiceText(label, s)] : [],
  );
  const asked = likely.length > 0 ? `Meinst du ${s.or(likely)}?` : 'Was ist der richtige Wert?';
  return `${found} liegt außerhalb des Möglichen (${possible}). ${asked}`;
}

function isItAReading(doubt: Doubt, s: Speaker): string {
  const found = doubtedDrafts(doubt).map((draft) => entryText(draft, s));
  if (found.length === 0) return 'Soll ich das eintragen, oder war es eine Frage?';
  return `Soll ich ${found.join('; ')}${inBrackets(doubt, s)} eintragen, oder war das eine Frage?`;
}

const sinceWhenTexts: Readonly<Record<Supply, string>> = {
  power: 'Seit wann ist der Strom weg?',
  pump: 'Seit wann steht die Pumpe?',
  'air-pump': 'Seit wann steht die Luftpumpe?',
};

const whenOutTexts: Readonly<Record<Because<'how-long-out'>['of'], string>> = {
  power: 'Wann war der Strom weg?',
  pump: 'Wann stand die Pumpe?',
  'air-pump': 'Wann stand die Luftpumpe?',
};

const howLongOutTexts: Readonly<Record<Because<'how-long-out'>['of'], string>> = {
  power: 'Wie lange war der Strom weg?',
  pump: 'Wie lange stand die Pumpe?',
  'air-pump': 'Wie lange stand die Luftpumpe?',
};

const switchedTexts: Readonly<Record<Because<'switched-or-failed'>['of'], string>> = {
  power: 'Ist der Strom ab jetzt nur zu diesen Zeiten abgeschaltet, oder ist er ausgefallen?',
  pump: 'Ist die Pumpe ab jetzt nur zu diesen Zeiten abgeschaltet, oder ist sie ausgefallen?',
  'air-pump':
    'Ist die Luftpumpe ab jetzt nur zu diesen Zeiten abgeschaltet, oder ist sie ausgefallen?',
};

const stoppedTexts: Readonly<Record<Because<'stopped-altogether'>['of'], string>> = {
  power: 'Ist der Strom weg',
  pump: 'Steht die Pumpe',
  'air-pump': 'Steht die Luftpumpe',
};

function howLongOut({ of, isUndated }: Because<'how-long-out'>): string {
  const asked = isUndated
    ? `${whenOutTexts[of]} Zum Beispiel „von 2 bis 4“, oder wie lange: „2 Stunden“.`
    : `${howLongOutTexts[of]} Zum Beispiel „2 Stunden“.`;
  return `${asked} Bis dahin trage ich nichts ein.`;
}

function sinceWhen({ of, written }: Because<'since-when'>): string {
  return `${sinceWhenTexts[of]} „${clipped(written, mostQuoted)}“ kommt heute erst noch, daher habe ich es ab jetzt eingetragen.`;
}

function possibleUnits(quantity: Quantity, s: Speaker): readonly string[] {
  switch (quantity) {
    case 'ec':
      return ['mS/cm', 'µS/cm', 'ppm'];
    case 'water-temperature':
    case 'air-temperature':
      return ['°C', '°F'];
    case 'level':
      return [volumeNames[s.units.volume], '%', s.units.volume === 'gal' ? 'Zoll' : 'cm'];
    case 'harvest':
      return ['g', 'kg'];
    case 'dose':
      return ['ml', 'l'];
    default:
      return [volumeNames[s.units.volume], 'ml'];
  }
}

function coverExample(asked: readonly string[] | undefined, s: Speaker): string {
  const helpers = s.greenhouse.members.filter(({ role, handle }) =>
    asked ? asked.includes(handle) : role === 'helper',
  );
  const [one, other] = helpers.map(({ name }) => name);
  return other === undefined ? (one ?? 'niemand') : `${one} bis Montag, dann ${other}`;
}
