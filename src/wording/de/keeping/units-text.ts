import type {
  ConductivityUnit,
  SpokenUnits,
  TemperatureUnit,
  VolumeUnit,
} from '../../../greenhouse/greenhouse.ts';
import type { Speaker } from '../../spoken/speaker.ts';

const volumes: Readonly<Record<VolumeUnit, string>> = { L: 'Liter', gal: 'US-Gallonen' };
const temperatures: Readonly<Record<TemperatureUnit, string>> = { C: '°C', F: '°F' };
const conductivities: Readonly<Record<ConductivityUnit, string>> = {
  'mS/cm': 'mS/cm',
  'uS/cm': 'µS/cm',
  ppm: 'ppm',
  CF: 'CF',
};

/** `US-Gallonen und °F` */
export function unitsText(
  { volume, temperature, conductivity, tdsFactor }: Partial<SpokenUnits>,
  s: Speaker,
): string {
  return s.and([
    ...(volume ? [volumes[volume]] : []),
    ...(temperature ? [temperatures[temperature]] : []),
    ...(conductivity === 'ppm'
      ? [`ppm (${tdsFactor ?? s.units.tdsFactor} für 1 mS/cm)`]
      : conductivity
        ? [conductivities[conductivity]]
        : []),
  ]);
}
