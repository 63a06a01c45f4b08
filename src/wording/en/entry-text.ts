import type { EntryDraft } from '../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import { referenceMeasure } from '../spoken/reference-measure.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dutyNames, failureNames, productName, recoveryNames } from './names.ts';
import { saidLevelText } from './value-text.ts';

/** What an entry says, without its system and time: `pH 5.8`, `topped up about 12 L`. */
export function entryText(entry: EntryDraft, s: Speaker): string {
  const amount = `${entry.approximate ? 'about ' : ''}${s.amount(
    measureOf(entry.quantity, entry.value, s.units),
  )}`;
  switch (entry.quantity) {
    case 'ph':
      return `pH ${amount}`;
    case 'ec':
      return `EC ${amount}`;
    case 'water-temperature':
      return `water ${amount}`;
    case 'air-temperature':
      return `air ${amount}`;
    case 'humidity':
      return `humidity ${amount}`;
    case 'dissolved-oxygen':
      return `oxygen ${amount}`;
    case 'level':
      return levelText(entry, amount, s);
    case 'top-up':
      return `topped up ${amount}${waterText(entry)}`;
    case 'reservoir-change':
      return `solution changed (${amount})`;
    case 'dose':
      return entry.product === undefined
        ? `dosed ${amount}`
        : `added ${amount} ${productName(entry.product)}`;
    case 'calibration':
      return calibrationText(entry, s);
    case 'fill-time':
      return `fill took ${amount}`;
    case 'aeration':
      return `aeration ${amount}`;
    case 'outage':
      return failureNames[entry.of ?? 'power'];
    case 'restored':
      return recoveryNames[entry.of ?? 'power'];
    case 'harvest':
      return `picked ${amount}`;
    case 'duty-done':
      return `${dutyText(entry)} done`;
    case 'duty-failed':
      return `${dutyText(entry)} not done${entry.note ? ` (${clipped(entry.note, mostQuoted)})` : ''}`;
    case 'note':
      return noteText(entry);
  }
}

/** A level without a system has no litres yet: the words it was said in stand alone. */
function levelText(entry: EntryDraft, amount: string, s: Speaker): string {
  const said = entry.saidAs && saidLevelText(entry.saidAs, s);
  if (said && entry.system === null) return `level ${said}`;
  return `level ${amount}${said && !isFull(entry) ? ` (${said})` : ''}`;
}

/** What that is in litres stands there already. */
function isFull({ saidAs }: EntryDraft): boolean {
  return saidAs?.kind === 'share' && saidAs.share === 1;
}

function calibrationText(entry: EntryDraft, s: Speaker): string {
  const { value, read, probe } = entry;
  const name = probe ?? 'probe';
  const reference = referenceMeasure(value, value, probe, s.greenhouse);
  const told = `${reference.unit === 'pH' ? 'pH ' : ''}${s.amount(reference)}`;
  if (read === undefined) return `${name} calibrated in ${told}`;
  return `${name} showed ${s.number(referenceMeasure(read, value, probe, s.greenhouse))} in ${told}`;
}

function dutyText(entry: EntryDraft): string {
  if (entry.chore !== undefined) return `“${clipped(entry.chore, mostQuoted)}”`;
  if (entry.duty === undefined) return 'work';
  const of = entry.probe === undefined ? '' : ` of the ${entry.probe}`;
  return `${dutyNames[entry.duty]}${of}`;
}

function noteText(entry: EntryDraft): string {
  const quoted = `“${clipped(entry.note ?? '', mostQuoted)}”`;
  if (entry.milestone === 'first-fruit') return `first fruit (${quoted})`;
  if (!entry.isAttached) return `note ${quoted}`;
  if (entry.photo && !entry.note) return 'photo, shown with the steps';
  const of = entry.duty === undefined ? '' : ` of the ${dutyNames[entry.duty]}`;
  return `note ${quoted}${entry.photo ? ', with the photo' : ''}, shown with the steps${of}`;
}

function waterText({ water }: EntryDraft): string {
  if (water === undefined) return '';
  return water === 'rain' ? ' of rain water' : ' of tap water';
}
