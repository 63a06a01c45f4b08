const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** The length and the name before a chunk's content, and the check sum behind it. */
const frameBytes = 12;
const lastChunk = 'IEND';
/** What tells of the picture rather than how to show it (PNG specification, third edition, 11.3). */
const telling = new Set(['tEXt', 'zTXt', 'iTXt', 'eXIf', 'tIME']);

/**
 * A PNG without its texts, its EXIF, its time, and what programs add for themselves. What follows its
 * end, or is cut off in the middle of a chunk, is left out. Null: it is no PNG.
 */
export function barePng(bytes: Uint8Array): Uint8Array | null {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (!file.subarray(0, signature.length).equals(signature)) return null;
  const parts: Uint8Array[] = [signature];
  let at = signature.length;
  while (at + frameBytes <= file.length) {
    const to = at + frameBytes + file.readUInt32BE(at);
    if (to > file.length) break;
    const name = file.toString('latin1', at + 4, at + 8);
    if (!telling.has(name) && !isPrivate(name)) parts.push(file.subarray(at, to));
    if (name === lastChunk) break;
    at = to;
  }
  return Buffer.concat(parts);
}

/** By the case of its second letter, a chunk that no specification knows. */
function isPrivate(name: string): boolean {
  return /^[a-z][a-z]/u.test(name);
}
