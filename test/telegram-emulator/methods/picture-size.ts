/** A picture's size in pixels. */
export type PictureSize = { readonly widthPx: number; readonly heightPx: number };

/**
 * The size of a PNG or JPEG picture; undefined for anything else.
 * PNG: W3C PNG specification, IHDR chunk. JPEG: ITU-T T.81, frame header (SOF).
 */
export const pictureSize = (bytes: Uint8Array): PictureSize | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length >= 24 && view.getUint32(0) === 0x89504e47) {
    return { widthPx: view.getUint32(16), heightPx: view.getUint32(20) };
  }
  if (bytes.length < 4 || view.getUint16(0) !== 0xffd8) return undefined;
  for (let at = 2; at + 9 < bytes.length; at += 2 + view.getUint16(at + 2)) {
    const marker = view.getUint16(at);
    const isFrame =
      marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);
    if (isFrame) return { widthPx: view.getUint16(at + 7), heightPx: view.getUint16(at + 5) };
  }
  return undefined;
};
