import { exifOrientation, orientationExif, tiffIn } from './exif-orientation.ts';

/** Second bytes of markers (ITU-T T.81, table B.1); the first is always 0xff. */
const startOfImage = 0xd8;
const endOfImage = 0xd9;
const startOfScan = 0xda;
const comment = 0xfe;
const [application0, application15] = [0xe0, 0xef];
const exifMarker = 0xe1;
/** Within the data of a scan: a stuffed zero, and the marks from which a decoder may start anew. */
const stuffed = 0x00;
const [restart0, restart7] = [0xd0, 0xd7];
/** What a picture cannot be shown right without: its density, its colours' profile and transform. */
const needed = new Map([
  [0xe0, 'JFIF\0'],
  [0xe2, 'ICC_PROFILE\0'],
  [0xee, 'Adobe'],
]);

/** One marker of a JPEG and what belongs to it, from `from` up to `to`. */
interface Segment {
  readonly marker: number;
  readonly from: number;
  readonly to: number;
}

/**
 * A JPEG with only those application segments that are needed to show it, and of its EXIF only the
 * orientation. What follows its end is left out, since phones put further pictures there, each with
 * its own place; so is what is cut off in the middle of a segment. Null: it is no JPEG.
 */
export function bareJpeg(bytes: Uint8Array): Uint8Array | null {
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage) return null;
  const parts: Uint8Array[] = [];
  for (const segment of segmentsOf(bytes)) {
    const part = barePart(segment, bytes.subarray(segment.from, segment.to));
    if (part) parts.push(part);
  }
  return Buffer.concat(parts);
}

function barePart({ marker }: Segment, part: Uint8Array): Uint8Array | null {
  if (marker === comment) return null;
  if (marker < application0 || marker > application15) return part;
  const content = part.subarray(4);
  if (startsWith(content, needed.get(marker))) return part;
  const tiff = marker === exifMarker ? tiffIn(content) : null;
  const orientation = tiff && exifOrientation(tiff);
  return orientation === null ? null : segmentOf(exifMarker, orientationExif(orientation));
}

function segmentOf(marker: number, content: Uint8Array): Uint8Array {
  const length = content.length + 2;
  return Buffer.concat([Buffer.from([0xff, marker, length >> 8, length & 0xff]), content]);
}

function startsWith(content: Uint8Array, name: string | undefined): boolean {
  return name !== undefined && Buffer.from(content).toString('latin1', 0, name.length) === name;
}

/** The segments in their order; a scan is one with the data that follows it. */
function* segmentsOf(bytes: Uint8Array): Generator<Segment> {
  let at = 0;
  while (at < bytes.length) {
    const from = markerFrom(bytes, at);
    if (from === null) return;
    const marker = bytes[from + 1]!;
    const to = segmentEnd(bytes, from, marker);
    if (to === null) return;
    yield { marker, from, to };
    if (marker === endOfImage) return;
    at = to;
  }
}

/** The next marker, behind what is none: fill bytes, which decoders pass over as well. */
function markerFrom(bytes: Uint8Array, at: number): number | null {
  for (let from = at; from + 1 < bytes.length; from += 1) {
    const next = bytes[from + 1]!;
    if (bytes[from] === 0xff && next !== 0xff && next !== stuffed) return from;
  }
  return null;
}

/** Null: it is cut off. */
function segmentEnd(bytes: Uint8Array, from: number, marker: number): number | null {
  if (standsAlone(marker)) return from + 2;
  if (from + 4 > bytes.length) return null;
  const to = from + 2 + (bytes[from + 2]! << 8) + bytes[from + 3]!;
  if (to > bytes.length || to < from + 4) return null;
  return marker === startOfScan ? scanEnd(bytes, to) : to;
}

function standsAlone(marker: number): boolean {
  return marker === startOfImage || marker === endOfImage || isRestart(marker) || marker === 0x01;
}

function isRestart(marker: number): boolean {
  return marker >= restart0 && marker <= restart7;
}

/** Where the data of a scan ends: before the next marker that is no restart, or with the file. */
function scanEnd(bytes: Uint8Array, at: number): number {
  for (let from = at; from + 1 < bytes.length; from += 1) {
    const next = bytes[from + 1]!;
    const isMarker = bytes[from] === 0xff && next !== stuffed && next !== 0xff;
    if (isMarker && !isRestart(next)) return from;
  }
  return bytes.length;
}
