import type { EntryDraft, LevelSaidAs, SaidIn } from '../../greenhouse/entry.ts';
import { believable, type Quantity } from '../../greenhouse/quantity.ts';
import { litresAtDepth, type System } from '../../greenhouse/system.ts';
import type { Readable, TakingBack } from '../statement.ts';

type Correcting = Extract<TakingBack, { kind: 'correct' }>;

/** What an entry says once it is put right; unsure: the number may be in its unit or in another. */
export type CorrectedValue = Pick<EntryDraft, 'value' | 'saidAs' | 'saidIn'> | 'unsure';

/** `no, 4` after `3 cans` is four cans; null: the number cannot be read as the entry's quantity. */
export function correctedValue(
  entry: EntryDraft,
  { to, bare, level }: Correcting,
  system: System | null,
): CorrectedValue | null {
  if (level && entry.quantity === 'level') return system && levelIn(system, level.to, entry);
  const plain = readingFor(entry, to);
  const own = bare ? inItsUnit(entry, bare.to, system) : null;
  if (!own || !isBelieved(entry, own.value, system)) return plain && { value: plain.value };
  if (!plain || own.value === plain.value) return own;
  // Of a temperature the number itself tells the unit.
  if (entry.quantity === 'water-temperature' || entry.quantity === 'air-temperature')
    return { value: plain.value };
  const [ownTimes, plainTimes] = [timesOff(entry, own.value), timesOff(entry, plain.value)];
  if (ownTimes <= surelyTimes) return own;
  if (ownTimes <= perhapsTimes && ownTimes <= plainTimes) return own;
  return 'unsure';
}

/** Whether the value that a correction gives up is the entry's. */
export function isCorrectedBy(
  entry: EntryDraft,
  { from, bare, level }: Correcting,
  system: System | null,
): boolean {
  if (level?.from && entry.quantity === 'level' && system)
    return isAbout(levelIn(system, level.from, entry).value, entry);
  return isGivenUp(entry, from ?? [], bare?.from ?? null, system);
}

/** Whether a value that was told, however it can be read, is the entry's. */
export function isGivenUp(
  entry: EntryDraft,
  given: readonly Readable[],
  bare: number | null = null,
  system: System | null = null,
): boolean {
  const own = bare === null ? null : inItsUnit(entry, bare, system);
  const values = given.flatMap(({ quantity, value }) =>
    quantity === entry.quantity ? [value] : [],
  );
  return [...values, ...(own ? [own.value] : [])].some((value) => isAbout(value, entry));
}

function isAbout(value: number, { value: told }: EntryDraft): boolean {
  return Math.abs(value - told) <= 0.005 * Math.abs(value);
}

/** What the corrected number means for this entry by itself, if it can be read as its quantity. */
export function readingFor(entry: EntryDraft, to: readonly Readable[]): Readable | null {
  return to.find((reading) => reading.quantity === entry.quantity) ?? null;
}

/** So far a slip may lead away from what was meant, in each quantity's unit; for amounts, by this share. */
const slips: Partial<Record<Quantity, number>> = {
  ph: 1,
  ec: 0.5,
  'water-temperature': 4,
  'air-temperature': 5,
  humidity: 15,
  'dissolved-oxygen': 2,
};
const slipShare = 0.5;

/** How many slips a corrected value is away from what an entry says. */
export function slipsAway({ quantity, value }: EntryDraft, corrected: number): number {
  const slip = slips[quantity] ?? Math.max(slipShare * Math.abs(value), 1e-9);
  return Math.abs(corrected - value) / slip;
}

/** So many times as much, or as little, a slip is surely of the same unit; of more it may be. */
const surelyTimes = 2;
const perhapsTimes = 4;

function timesOff({ value: was }: EntryDraft, value: number): number {
  if (was <= 0 || value <= 0) return Number.POSITIVE_INFINITY;
  return Math.max(was / value, value / was);
}

function isBelieved({ quantity }: EntryDraft, value: number, system: System | null): boolean {
  const bounds = believable(quantity, system);
  return !bounds || (value >= bounds[0] && value <= bounds[1]);
}

/** The number as one of the unit that the entry was said in; null: it was said in its quantity's own. */
function inItsUnit(
  { saidIn, saidAs }: EntryDraft,
  number: number,
  system: System | null,
): Exclude<CorrectedValue, 'unsure'> | null {
  if (saidIn) return { value: inUnit(saidIn, number), saidIn };
  if (!saidAs || !system) return null;
  switch (saidAs.kind) {
    case 'depth':
      return { value: litresAtDepth(system, number), saidAs: { ...saidAs, cm: number } };
    case 'below-brim':
      return {
        value: system.brimL - litresAtDepth(system, number),
        saidAs: { ...saidAs, cm: number },
      };
    case 'share': {
      const share = number / 100;
      return share <= 1 ? { value: system.brimL * share, saidAs: { ...saidAs, share } } : null;
    }
  }
}

/** A share or a depth in a system; of what was told from the brim downwards, from the brim too. */
function levelIn(
  system: System,
  level: LevelSaidAs,
  { saidAs }: EntryDraft,
): Exclude<CorrectedValue, 'unsure'> {
  if (level.kind === 'share') return { value: system.brimL * level.share, saidAs: level };
  const litres = litresAtDepth(system, level.cm);
  if (saidAs?.kind !== 'below-brim') return { value: litres, saidAs: level };
  return { value: system.brimL - litres, saidAs: { kind: 'below-brim', cm: level.cm } };
}

function inUnit({ perUnit, zeroAt }: SaidIn, number: number): number {
  return Number(((number - zeroAt) * perUnit).toPrecision(12));
}
