import type { EntryDraft } from '../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { referenceMeasure } from '../spoken/reference-measure.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dutyNames, failureNames, productName, recoveryNames } from './names.ts';
import { saidLevelText } from './value-text.ts';

/** What an entry says, without its system and time: `pH 5,8`, `etwa 12 l nachgefüllt`. */
export function entryText(entry: EntryDraft, s: Speaker): string {
  const amount = `${entry.approximate ? 'etwa ' : ''}${s.amount(
    measureOf(entry.quantity, entry.value, s.units),
  )}`;
  switch (entry.quantity) {
    case 'ph':
      return `pH ${amount}`;
    case 'ec':
      return `EC ${amount}`;
    case 'water-temperature':
      return `Wasser ${amount}`;
    case 'air-temperature':
      return `Luft ${amount}`;
    case 'humidity':
      return `Luftfeuchte ${amount}`;
    case 'dissolved-oxygen':
      return `Sauerstoff ${amount}`;
    case 'level':
      return levelText(entry, amount, s);
    case 'top-up':
      return `${amount}${waterText(entry)} nachgefüllt`;
    case 'reservoir-change':
      return `Lösung gewechselt (${amount})`;
    case 'dose':
      return entry.product === undefined
        ? `${amount} zugegeben`
        : `${amount} ${productName(entry.product)} zugegeben`;
    case 'calibration':
      return calibrationText(entry, s);
    case 'fill-time':
      return `Füllen dauerte ${amount}`;
    case 'aeration':
      return `Belüftung ${amount}`;
    case 'outage':
      return failureNames[entry.of ?? 'power'];
    case 'restored':
      return recoveryNames[entry.of ?? 'power'];
    case 'harvest':
      return `${amount} geerntet`;
    case 'duty-done':
      return `${dutyText(entry)} erledigt`;
    case 'duty-failed':
      return `${dutyText(entry)} nicht erledigt${entry.note ? ` (${clipped(entry.note, mostQuoted)})` : ''}`;
    case 'note':
      return noteText(entry);
  }
}

/** A level without a system has no litres yet: the words it was said in stand alone. */
function levelText(entry: EntryDraft, amount: string, s: Speaker): string {
  const said = entry.saidAs && saidLevelText(entry.saidAs, s);
  if (said && entry.system === null) return `Stand ${said}`;
  return `Stand ${amount}${said && !isFull(entry) ? ` (${said})` : ''}`;
}

/** What that is in litres stands there already. */
function isFull({ saidAs }: EntryDraft): boolean {
  return saidAs?.kind === 'share' && saidAs.share === 1;
}

function calibrationText(entry: EntryDraft, s: Speaker): string {
  const { value, read, probe } = entry;
  const name = probe ?? 'Messgerät';
  const reference = referenceMeasure(value, value, probe, s.greenhouse);
  const told = `${reference.unit === 'pH' ? 'pH ' : ''}${s.amount(reference)}`;
  if (read === undefined) return `${name} kalibriert in ${told}`;
  return `${name} zeigte ${s.number(referenceMeasure(read, value, probe, s.greenhouse))} in ${told}`;
}

function dutyText(entry: EntryDraft): string {
  if (entry.chore !== undefined) return `„${clipped(entry.chore, mostQuoted)}“`;
  if (entry.duty === undefined) return 'Arbeit';
  const of = entry.probe === undefined ? '' : ` (${entry.probe})`;
  return `${dutyNames[entry.duty]}${of}`;
}

function noteText(entry: EntryDraft): string {
  const quoted = `„${clipped(entry.note ?? '', mostQuoted)}“`;
  if (entry.milestone === 'first-fruit') return `erste Frucht (${quoted})`;
  if (!entry.isAttached) return `Notiz ${quoted}`;
  if (entry.photo && !entry.note) return 'Foto, steht bei den Schritten';
  const of = entry.duty === undefined ? '' : ` (${dutyNames[entry.duty]})`;
  return `Notiz ${quoted}${entry.photo ? ', mit dem Foto' : ''}, steht bei den Schritten${of}`;
}

function waterText({ water }: EntryDraft): string {
  if (water === undefined) return '';
  return water === 'rain' ? ' Regenwasser' : ' Leitungswasser';
}
