import { nearestTown, type Town, towns } from '../../greenhouse/places/towns.ts';
import { fold } from '../reading/fold.ts';
import { isSlipOf } from '../reading/slip.ts';

const lettersOfBeginning = 4;

/** A town by its name, typing slips and missing accents allowed, or degrees north and east. */
export function readPlace(text: string): Town | null {
  const degrees = readDegrees(text);
  if (degrees) {
    const { timeZone } = nearestTown(degrees.latitude, degrees.longitude);
    return { name: text.trim(), ...degrees, timeZone };
  }
  const said = plain(text);
  if (said === '') return null;
  const named = towns.filter(({ name }) => plain(name) === said);
  if (named[0]) return named[0];
  const slips = towns.filter(({ name }) => isSlipOf(said, plain(name)));
  if (slips.length > 0) return alike(slips);
  if (said.length < lettersOfBeginning) return null;
  return alike(towns.filter(({ name }) => plain(name).startsWith(said)));
}

/** Two names of one town are one town. */
function alike(found: readonly Town[]): Town | null {
  const [first] = found;
  if (!first) return null;
  const isOne = found.every(
    ({ latitude, longitude }) => latitude === first.latitude && longitude === first.longitude,
  );
  return isOne ? first : null;
}

function readDegrees(
  text: string,
): { readonly latitude: number; readonly longitude: number } | null {
  const found =
    /^\s*(-?\d{1,2}(?:\.\d+)?)\s*°?\s*([ns])?\s*[,; ]\s*(-?\d{1,3}(?:\.\d+)?)\s*°?\s*([ewo])?\s*$/i.exec(
      text,
    );
  if (!found) return null;
  const [, north, ns, east, ew] = found;
  const latitude = Number(north) * (ns?.toLowerCase() === 's' ? -1 : 1);
  const longitude = Number(east) * (ew?.toLowerCase() === 'w' ? -1 : 1);
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

/** Small letters without accents and marks; the first part where a land follows a comma. */
function plain(text: string): string {
  return (fold(text).text.split(',')[0] ?? '')
    .replaceAll('ß', 'ss')
    .replaceAll(/ae|oe|ue/g, (two) => two[0]!)
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^\p{L}]+/gu, ' ')
    .trim();
}
