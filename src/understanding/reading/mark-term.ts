import { isLabel } from '../moods/clause-kinds.ts';
import { matchName, nearness } from '../names/match-name.ts';
import { phraseAt, type Reading } from './look-up.ts';
import { markTerm, stopTerm } from './make-term.ts';
import { placeOf } from './place-of.ts';
import { type Cut, means, type Term } from './term.ts';

export const cuts: ReadonlyMap<string, Cut> = new Map([
  [',', 'comma'],
  ['、', 'comma'],
  ['(', 'comma'],
  [')', 'comma'],
  ['|', 'comma'],
  ['•', 'comma'],
  [';', 'semicolon'],
  ['.', 'sentence'],
  ['。', 'sentence'],
  ['!', 'sentence'],
  ['?', 'question'],
]);

const arrows = ['->', '=>', '→', '➡', '⇒', '⟶', '➔', '➜', '➤', '▶', '►', '👉'];

const dashes = ['-', '–', '—'];

const quotes = ['"', "'"];

export function markAt(reading: Reading, at: number, before: readonly Term[]): Term | null {
  const previous = before.at(-1);
  const { tokens, lexicon } = reading;
  const token = tokens[at]!;
  const place = placeOf(tokens, at, 1);
  if (quotes.includes(token.text)) return null;
  if (
    token.text === '.' &&
    previous?.kind === 'word' &&
    token.glued &&
    lexicon.own.abbreviations.has(previous.text)
  )
    return null;
  if (
    token.text === '.' &&
    previous?.kind === 'measure' &&
    token.glued &&
    tokens[at + 1]?.kind === 'word' &&
    tokens[at + 1]!.glued
  )
    return null;
  if (token.text === '.' && token.glued && isPointOfDate(reading, at, before)) return null;
  // `ph... 5.9`: a breath before the value, and no end of anything.
  const isBreath = token.text === '…' || token.text.startsWith('..');
  if (isBreath && isLabel(previous) && tokens[at + 1]?.kind === 'number')
    return markTerm(place, ':');
  const cut = cuts.get(token.text) ?? (isBreath ? 'sentence' : null);
  if (cut) return stopTerm(place, cut);
  if (token.text === '/' && previous?.kind === 'measure' && startsName(reading, at + 1))
    return stopTerm(place, 'comma');
  if (arrows.includes(token.text)) return markTerm(place, '→');
  if (dashes.includes(token.text)) {
    // `dwc - 5.8`, `jars - half full`: a name and what is said of it.
    const separates =
      previous?.kind === 'name' ||
      means(previous, 'level', 'ph', 'ec', 'temperature') ||
      tokens[at + 1]?.kind === 'number' ||
      (tokens[at + 1]?.kind === 'word' && token.glued && tokens[at + 1]!.glued);
    return separates ? markTerm(place, '-') : stopTerm(place, 'comma');
  }
  return markTerm(place);
}

/** `3. Mai`, `am 6.4.`: a point that belongs to the day before it. */
function isPointOfDate(reading: Reading, at: number, before: readonly Term[]): boolean {
  const day = before.at(-1);
  if (day?.kind !== 'measure' || day.measure.unit !== null) return false;
  if (/^\d{1,2}$/.test(day.text))
    return phraseAt(reading, at + 1)?.value.month != null || isDayOfMonth(reading, before);
  return /^\d{1,2}\.\d{1,2}$/.test(day.text) && means(before.at(-2), 'on-day');
}

/** `am 10.`, where a point makes an ordinal. */
function isDayOfMonth({ lexicon }: Reading, before: readonly Term[]): boolean {
  const { ordinalMarks } = lexicon.own.vocabulary;
  return ordinalMarks.includes('.') && means(before.at(-2), 'on-date');
}

function startsName(reading: Reading, at: number): boolean {
  const name =
    reading.tokens[at]?.kind === 'word' ? matchName(reading.tokens, at, reading.lexicon) : null;
  return name !== null && name.near <= nearness.inflected;
}
