/** How the content of a segment with EXIF begins (CIPA DC-008, 4.5.4); a TIFF structure follows. */
const exifName = 'Exif\0\0';
const orientationTag = 0x0112;
const shortType = 3;
const entryBytes = 12;
/** 1 is as it stands; the others are turned, mirrored or both. */
const [asItStands, lastOrientation] = [1, 8];

/** The TIFF structure in the content of an EXIF segment; null: it is no EXIF. */
export function tiffIn(content: Uint8Array): Buffer | null {
  const bytes = Buffer.from(content.buffer, content.byteOffset, content.byteLength);
  const isExif = bytes.toString('latin1', 0, exifName.length) === exifName;
  return isExif ? bytes.subarray(exifName.length) : null;
}

/**
 * The way up of a picture, 2 to 8, from its EXIF. Null: it says nothing of that, or that the picture
 * is shown as it stands.
 */
export function exifOrientation(tiff: Buffer): number | null {
  const byteOrder = tiff.toString('latin1', 0, 2);
  if (tiff.length < 8 || (byteOrder !== 'II' && byteOrder !== 'MM')) return null;
  const isLittle = byteOrder === 'II';
  const short = (at: number): number | null => {
    if (at + 2 > tiff.length) return null;
    return isLittle ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at);
  };
  const directory = isLittle ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4);
  const entries = short(directory) ?? 0;
  for (let n = 0; n < entries; n += 1) {
    const at = directory + 2 + n * entryBytes;
    if (short(at) !== orientationTag) continue;
    const value = short(at + 2) === shortType ? short(at + 8) : null;
    return value !== null && value > asItStands && value <= lastOrientation ? value : null;
  }
  return null;
}

/** The content of an EXIF segment that tells the orientation and nothing else. */
export function orientationExif(orientation: number): Buffer {
  const tiff = Buffer.alloc(26);
  tiff.write('MM', 'latin1');
  tiff.writeUInt16BE(42, 2);
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(1, 8);
  tiff.writeUInt16BE(orientationTag, 10);
  tiff.writeUInt16BE(shortType, 12);
  tiff.writeUInt32BE(1, 14);
  tiff.writeUInt16BE(orientation, 18);
  return Buffer.concat([Buffer.from(exifName, 'latin1'), tiff]);
}
