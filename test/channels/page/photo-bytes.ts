/** The beginning of a file of its kind, filled up to a length; not a picture that can be drawn. */
function beginning(start: readonly number[], length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  bytes.set(start);
  return bytes;
}

export function jpegBytes(length = 300): Uint8Array {
  return beginning([0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10, ...Buffer.from('JFIF\0')], length);
}

export function pngBytes(length = 300): Uint8Array {
  return beginning([0x89, ...Buffer.from('PNG\r\n\x1a\n')], length);
}

export function webpBytes(length = 300): Uint8Array {
  return beginning(
    [...Buffer.from('RIFF'), 0x24, 0x01, 0x00, 0x00, ...Buffer.from('WEBPVP8 ')],
    length,
  );
}
