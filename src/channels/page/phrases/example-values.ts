import { DateTime } from 'luxon';
import type { Duty } from '../../../greenhouse/duty.ts';
import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type { System, SystemId } from '../../../greenhouse/system.ts';

const litresPerUsGallon = 3.785411784;

/** A number as it is typed in a message, `5,8` in German. */
export function typed(value: number, digits: number, language: Language): string {
  return new Intl.NumberFormat(language, {
    maximumFractionDigits: digits,
    useGrouping: false,
  }).format(value);
}

/** Litres in the volume unit that people of this greenhouse speak in, with the unit. */
export function spokenVolume(litres: number, greenhouse: Greenhouse, language: Language): string {
  return greenhouse.units.volume === 'gal'
    ? `${typed(litres / litresPerUsGallon, 1, language)} gal`
    : `${typed(litres, litres < 10 ? 1 : 0, language)} L`;
}

/** A conductivity as the meters of this greenhouse show it, with its unit where it needs one. */
export function spokenEc(msPerCm: number, greenhouse: Greenhouse, language: Language): string {
  const { conductivity, tdsFactor } = greenhouse.units;
  switch (conductivity) {
    case 'mS/cm':
      return typed(msPerCm, 1, language);
    case 'uS/cm':
      return `${typed(msPerCm * 1000, 0, language)} µS/cm`;
    case 'ppm':
      return `${typed(msPerCm * tdsFactor, 0, language)} ppm`;
    case 'CF':
      return `CF ${typed(msPerCm * 10, 0, language)}`;
  }
}

export function middle([lowest, highest]: readonly [number, number]): number {
  return (lowest + highest) / 2;
}

/** A top-up such as that system may get: a tenth of what it holds. */
export function exampleTopUpL(system: System): number {
  return Math.max(1, Math.round(system.brimL / 10));
}

export function systemName(id: SystemId | null, greenhouse: Greenhouse): string {
  return greenhouse.systems.find((system) => system.id === id)?.name ?? '';
}

/** The reference that a probe is most likely held into, as it is typed; none for other probes. */
export function exampleReference(
  probe: string | undefined,
  { probes }: Greenhouse,
  language: Language,
): string {
  const measures = probes.find(({ name }) => name === probe)?.measures ?? [];
  const reference = measures.includes('ph') ? '7.00' : measures.includes('ec') ? '1.413' : '';
  return language === 'de' ? reference.replace('.', ',') : reference;
}

/** The words of a message, without the gaps that a missing system leaves. */
export function joined(...words: readonly string[]): string {
  return words.filter((word) => word !== '').join(' ');
}

/** `Fri 7 May`, `Fr. 7. Mai`: a local date as it is said. */
export function spokenDate(date: Duty['dueOn'], language: Language): string {
  return DateTime.fromISO(date, { zone: 'utc' })
    .setLocale(language === 'en' ? 'en-GB' : 'de')
    .toLocaleString({ weekday: 'short', day: 'numeric', month: 'short' });
}
