/** Photos of any length in the shape of their kind, with nothing but zeros for what they show. */

/** A JPEG of one scan: its head, its data, its end (ITU-T T.81, B.1.1). */
export function jpegBytes(length = 300): Uint8Array {
  const head = [0xff, 0xd8, 0xff, 0xe0, 0x00, 0x10, ...Buffer.from('JFIF\0'), ...zeros(9)];
  const scan = [0xff, 0xda, 0x00, 0x02];
  return filled([...head, ...scan], [0xff, 0xd9], length);
}

/** A PNG of one chunk of data and its end, their check sums left at zero. */
export function pngBytes(length = 300): Uint8Array {
  const head = [0x89, ...Buffer.from('PNG\r\n\x1a\n')];
  const end = [...zeros(4), ...Buffer.from('IEND'), ...zeros(4)];
  const data = Buffer.alloc(8);
  data.writeUInt32BE(length - head.length - 12 - end.length);
  data.write('IDAT', 4, 'latin1');
  return filled([...head, ...data], end, length);
}

/** A WebP of one chunk of data; of an even length. */
export function webpBytes(length = 300): Uint8Array {
  const head = Buffer.alloc(20);
  head.write('RIFF', 0, 'latin1');
  head.writeUInt32LE(length - 8, 4);
  head.write('WEBPVP8 ', 8, 'latin1');
  head.writeUInt32LE(length - 20, 16);
  return filled([...head], [], length);
}

function filled(start: readonly number[], end: readonly number[], length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  bytes.set(start);
  bytes.set(end, length - end.length);
  return bytes;
}

function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
}
