import { exifOrientation, orientationExif, tiffIn } from './exif-orientation.ts';

/** `RIFF`, the length of the rest, `WEBP`. */
const headerBytes = 12;
/** A chunk's name and the length of its content. */
const frameBytes = 8;
/** What shows the picture (RFC 9649, 2.6 and 2.7). */
const showing = new Set(['VP8 ', 'VP8L', 'VP8X', 'ICCP', 'ANIM', 'ANMF', 'ALPH']);
/** In the flags of `VP8X`: whether EXIF and XMP are there. */
const [hasExif, hasXmp] = [0x08, 0x04];

/**
 * A WebP with only what shows the picture, and of its EXIF only the orientation. What is cut off in
 * the middle of a chunk is left out. Null: it is no WebP.
 */
export function bareWebp(bytes: Uint8Array): Uint8Array | null {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isWebp = file.toString('latin1', 0, 4) === 'RIFF' && name(file, 8) === 'WEBP';
  if (!isWebp) return null;
  const parts: Buffer[] = [];
  let orientation: number | null = null;
  for (let at = headerBytes; at + frameBytes <= file.length; ) {
    const length = file.readUInt32LE(at + 4);
    const content = file.subarray(at + frameBytes, at + frameBytes + length);
    if (content.length < length) break;
    const kind = name(file, at);
    if (showing.has(kind)) parts.push(chunk(kind, content));
    if (kind === 'EXIF') orientation = exifOrientation(tiffIn(content) ?? content);
    at += frameBytes + length + (length % 2);
  }
  if (orientation !== null) parts.push(chunk('EXIF', orientationExif(orientation)));
  return whole(parts, orientation !== null);
}

function name(file: Buffer, at: number): string {
  return file.toString('latin1', at, at + 4);
}

/** Padded to an even length, as each chunk is. */
function chunk(kind: string, content: Buffer): Buffer {
  const frame = Buffer.alloc(frameBytes);
  frame.write(kind, 'latin1');
  frame.writeUInt32LE(content.length, 4);
  return Buffer.concat([frame, content, Buffer.alloc(content.length % 2)]);
}

function whole(parts: readonly Buffer[], isTurned: boolean): Buffer {
  const body = Buffer.concat(parts);
  if (name(body, 0) === 'VP8X' && body.length > frameBytes) {
    const others = body[frameBytes]! & ~(hasExif | hasXmp);
    body[frameBytes] = isTurned ? others | hasExif : others;
  }
  const header = Buffer.alloc(headerBytes);
  header.write('RIFF', 'latin1');
  header.writeUInt32LE(body.length + 4, 4);
  header.write('WEBP', 8, 'latin1');
  return Buffer.concat([header, body]);
}
