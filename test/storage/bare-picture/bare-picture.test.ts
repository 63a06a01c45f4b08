import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { barePicture } from '../../../src/storage/bare-picture/bare-picture.ts';

const latin1 = (text: string) => Buffer.from(text, 'latin1');
const bare = (bytes: Uint8Array) => Buffer.from(barePicture(bytes));

function jpegSegment(marker: number, content: Buffer): Buffer {
  const length = content.length + 2;
  return Buffer.concat([Buffer.from([0xff, marker, length >> 8, length & 0xff]), content]);
}

interface ExifOptions {
  readonly isLittle?: boolean;
  readonly orientation?: number;
}

/** EXIF as a phone writes it: the maker, the way up, and a directory with the position. */
function exif({ isLittle = false, orientation }: ExifOptions = {}): Buffer {
  const tiff = Buffer.alloc(256);
  const short = (value: number, at: number) =>
    isLittle ? tiff.writeUInt16LE(value, at) : tiff.writeUInt16BE(value, at);
  const long = (value: number, at: number) =>
    isLittle ? tiff.writeUInt32LE(value, at) : tiff.writeUInt32BE(value, at);
  tiff.write(isLittle ? 'II' : 'MM', 'latin1');
  short(42, 2);
  long(8, 4);
  const entries: [tag: number, type: number, count: number, value: number][] = [
    [0x010f, 2, 11, 200],
    ...(orientation === undefined
      ? []
      : [[0x0112, 3, 1, orientation] as [number, number, number, number]]),
    [0x8825, 4, 1, 100],
  ];
  short(entries.length, 8);
  for (const [n, [tag, type, count, value]] of entries.entries()) {
    const at = 10 + n * 12;
    short(tag, at);
    short(type, at + 2);
    long(count, at + 4);
    if (type === 3) short(value, at + 8);
    else long(value, at + 8);
  }
  short(2, 100);
  short(0x0001, 102);
  short(2, 104);
  long(2, 106);
  tiff.write('N\0', 110, 'latin1');
  short(0x0002, 114);
  short(5, 116);
  long(3, 118);
  long(150, 122);
  for (const [n, value] of [51, 1, 30, 1, 26, 1].entries()) long(value, 150 + n * 4);
  tiff.write('PhoneMaker\0', 200, 'latin1');
  return Buffer.concat([latin1('Exif\0\0'), tiff]);
}

const soi = Buffer.from([0xff, 0xd8]);
const eoi = Buffer.from([0xff, 0xd9]);
const jfif = jpegSegment(0xe0, latin1('JFIF\0\x01\x02\0\0\x01\0\x01\0\0'));
const profile = jpegSegment(0xe2, latin1('ICC_PROFILE\0\x01\x01colours'));
const adobe = jpegSegment(0xee, latin1('Adobe\0\x64\0\0\0\0\x01'));
const table = jpegSegment(0xdb, Buffer.alloc(65, 7));
const frame = jpegSegment(0xc0, latin1('\x08\0\x10\0\x10\x01\x01\x11\0'));
const scan = Buffer.concat([
  jpegSegment(0xda, latin1('\x01\x01\0\0\x3f\0')),
  // A stuffed 0xff, a restart, fill bytes before the next marker.
  Buffer.from([0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56, 0x78, 0xff]),
]);
const picture = [table, frame, scan];

/** A JPEG of these segments, from the first to the end of the image. */
const jpegOf = (...parts: readonly Buffer[]) => Buffer.concat([soi, ...parts, eoi]);

/** The orientation by a reader of its own: the one entry of a bare EXIF in Motorola order. */
function orientationIn(jpeg: Buffer): number | null {
  const at = jpeg.indexOf('Exif\0\0MM', 0, 'latin1');
  if (at < 0) return null;
  const entry = jpeg.indexOf(Buffer.from([0x01, 0x12, 0x00, 0x03]), at);
  return entry < 0 ? null : jpeg.readUInt16BE(entry + 8);
}

describe('a JPEG as it is kept', () => {
  it.each([true, false])(
    'tells no position any more, but which way is up (little-endian: %s)',
    (isLittle) => {
      for (const orientation of [2, 3, 4, 5, 6, 7, 8]) {
        const taken = jpegOf(jpegSegment(0xe1, exif({ isLittle, orientation })), jfif, ...picture);
        const kept = bare(taken);
        expect(orientationIn(kept)).toBe(orientation);
        expect(kept.includes('PhoneMaker')).toBe(false);
        expect(kept.length).toBe(taken.length - (256 - 26));
        expect(kept.subarray(-Buffer.concat([jfif, ...picture, eoi]).length)).toEqual(
          Buffer.concat([jfif, ...picture, eoi]),
        );
      }
    },
  );

  it.each([undefined, 1, 0, 9])(
    'needs no EXIF where it is shown as it stands (%s)',
    (orientation) => {
      const more = orientation === undefined ? {} : { orientation };
      const taken = jpegOf(jfif, jpegSegment(0xe1, exif(more)), ...picture);
      expect(bare(taken)).toEqual(jpegOf(jfif, ...picture));
    },
  );

  it('keeps its density, colours and data, and nothing that others wrote into it', () => {
    const told = [
      jpegSegment(0xe1, latin1('http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>51.44</x:xmpmeta>')),
      jpegSegment(0xed, latin1('Photoshop 3.0\x008BIM city')),
      jpegSegment(0xe2, latin1('MPF\0II*\0')),
      jpegSegment(0xe0, latin1('JFXX\0thumbnail')),
      jpegSegment(0xe5, latin1('maker notes')),
      jpegSegment(0xfe, latin1('taken at the back door')),
    ];
    expect(bare(jpegOf(jfif, ...told, profile, adobe, ...picture))).toEqual(
      jpegOf(jfif, profile, adobe, ...picture),
    );
  });

  it('keeps every scan of a progressive one, and leaves out what stands between them', () => {
    const between = jpegSegment(0xfe, latin1('at home'));
    const tables = jpegSegment(0xc4, Buffer.alloc(20, 1));
    const taken = jpegOf(jfif, table, frame, scan, between, tables, scan, tables, scan);
    expect(bare(taken)).toEqual(jpegOf(jfif, table, frame, scan, tables, scan, tables, scan));
  });

  it('ends with its picture: what phones put behind it has a place of its own', () => {
    const second = jpegOf(jpegSegment(0xe1, exif({ orientation: 6 })), ...picture);
    const taken = Buffer.concat([jpegOf(jfif, ...picture), second, latin1('video')]);
    expect(bare(taken)).toEqual(jpegOf(jfif, ...picture));
  });

  it('is kept as far as it came where it is cut off, and no half of its EXIF', () => {
    const taken = jpegOf(jfif, jpegSegment(0xe1, exif({ orientation: 6 })), ...picture);
    const position = taken.indexOf('PhoneMaker');
    expect(bare(taken.subarray(0, position + 5))).toEqual(Buffer.concat([soi, jfif]));
    expect(bare(taken.subarray(0, -4))).toEqual(bare(taken).subarray(0, -4));
  });

  it('is kept from any EXIF, however broken, without a word of it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (noise) => {
        const broken = Buffer.concat([latin1('Exif\0\0II*\0'), noise, latin1('PhoneMaker')]);
        const kept = bare(jpegOf(jpegSegment(0xe1, broken), ...picture));
        expect(kept.includes('PhoneMaker')).toBe(false);
        expect(kept.subarray(-Buffer.concat([...picture, eoi]).length)).toEqual(
          Buffer.concat([...picture, eoi]),
        );
      }),
    );
  });

  it('is the same when it is kept a second time', () => {
    const once = bare(jpegOf(jpegSegment(0xe1, exif({ orientation: 8 })), jfif, ...picture));
    expect(bare(once)).toEqual(once);
  });
});

describe('a PNG as it is kept', () => {
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const chunk = (name: string, content: string) => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(content.length);
    return Buffer.concat([length, latin1(name), latin1(content), Buffer.alloc(4, 9)]);
  };
  const [head, gamma, data, end] = [
    chunk('IHDR', 'size and kind'),
    chunk('gAMA', '0000'),
    chunk('IDAT', 'picture'),
    chunk('IEND', ''),
  ];

  it('has no texts, position or time in it, and is otherwise the same', () => {
    const told = ['tEXt', 'zTXt', 'iTXt', 'eXIf', 'tIME', 'caBX'].map((name) =>
      chunk(name, 'home'),
    );
    const taken = Buffer.concat([start, head, gamma, ...told, data, end, latin1('behind')]);
    expect(bare(taken)).toEqual(Buffer.concat([start, head, gamma, data, end]));
  });

  it('is kept as far as it came where it is cut off', () => {
    const taken = Buffer.concat([start, head, data.subarray(0, 9)]);
    expect(bare(taken)).toEqual(Buffer.concat([start, head]));
  });
});

describe('a WebP as it is kept', () => {
  const chunk = (name: string, content: Buffer) => {
    const length = Buffer.alloc(4);
    length.writeUInt32LE(content.length);
    return Buffer.concat([latin1(name), length, content, Buffer.alloc(content.length % 2)]);
  };
  const webp = (...chunks: readonly Buffer[]) => {
    const body = Buffer.concat([latin1('WEBP'), ...chunks]);
    const length = Buffer.alloc(4);
    length.writeUInt32LE(body.length);
    return Buffer.concat([latin1('RIFF'), length, body]);
  };
  const extended = (flags: number) =>
    chunk('VP8X', Buffer.from([flags, 0, 0, 0, 1, 0, 0, 1, 0, 0]));
  const data = chunk('VP8 ', latin1('picture'));

  it('has no position in it, and says so', () => {
    const xmp = chunk('XMP ', latin1('<x:xmpmeta/>'));
    const taken = webp(extended(0x1c), data, chunk('EXIF', exif({ orientation: 1 })), xmp);
    expect(bare(taken)).toEqual(webp(extended(0x10), data));
  });

  it('still tells which way is up', () => {
    const taken = webp(extended(0x08), data, chunk('EXIF', exif({ orientation: 6 }).subarray(6)));
    const kept = bare(taken);
    expect(orientationIn(kept)).toBe(6);
    expect(kept.includes('PhoneMaker')).toBe(false);
    expect(kept.subarray(12, 30)).toEqual(extended(0x08));
    expect(kept.readUInt32LE(4)).toBe(kept.length - 8);
  });

  it('is the same where there was nothing to leave out', () => {
    expect(bare(webp(data))).toEqual(webp(data));
  });
});

it('what is no picture that is known stays as it is', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 40 }), (bytes) => {
      fc.pre(bytes[0] !== 0xff && bytes[0] !== 0x89 && bytes[0] !== 0x52);
      expect(barePicture(bytes)).toBe(bytes);
    }),
  );
});
