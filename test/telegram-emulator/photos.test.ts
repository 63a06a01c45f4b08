import { InputFile } from 'grammy';
import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';
import { TINY_PICTURE } from './members/tiny-picture.ts';

/** A PNG header that claims a size; the emulator looks no further. */
const pngOf = (widthPx: number, heightPx: number): Uint8Array => {
  const bytes = Uint8Array.from(TINY_PICTURE);
  new DataView(bytes.buffer).setUint32(16, widthPx);
  new DataView(bytes.buffer).setUint32(20, heightPx);
  return bytes;
};

/** The first bytes of a JPEG: start of image, a comment, a baseline frame header. */
const jpegOf = (widthPx: number, heightPx: number): Uint8Array =>
  Uint8Array.of(
    ...[0xff, 0xd8, 0xff, 0xfe, 0, 4, 0x68, 0x69, 0xff, 0xc0, 0, 11, 8],
    ...[heightPx >> 8, heightPx & 255, widthPx >> 8, widthPx & 255, 1, 1, 0x11, 0],
  );

test('a photo with a caption arrives as the bytes that were sent', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const picture = pngOf(1000, 500);
  const sent = await api.sendPhoto(asha.id, new InputFile(picture, 'levels.png'), {
    caption: '<b>Levels</b>',
    parse_mode: 'HTML',
  });
  expect(sent.photo.map(({ width, height }) => [width, height])).toEqual([
    [90, 45],
    [320, 160],
    [800, 400],
    [1000, 500],
  ]);
  expect(asha.chat.last).toMatchObject({
    text: 'Levels',
    entities: [{ type: 'bold', offset: 0, length: 6 }],
    photo: picture,
  });
  const again = await api.sendPhoto(asha.id, sent.photo.at(-1)!.file_id);
  expect(asha.chat.messages.find((one) => one.id === again.message_id)?.photo).toEqual(picture);
});

test('a caption holds 1024 UTF-16 units', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const caption = '🌱'.repeat(512);
  await api.sendPhoto(asha.id, new InputFile(TINY_PICTURE), { caption });
  await expect(
    api.sendPhoto(asha.id, new InputFile(TINY_PICTURE), { caption: `${caption}.` }),
  ).rejects.toMatchObject(refusal(400, 'Bad Request: message caption is too long'));
});

test('what is no picture, too big or out of shape is refused', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const send = (bytes: Uint8Array) => api.sendPhoto(asha.id, new InputFile(bytes));
  await expect(send(Buffer.from('<svg/>'))).rejects.toMatchObject(
    refusal(400, 'Bad Request: IMAGE_PROCESS_FAILED'),
  );
  await expect(send(new Uint8Array())).rejects.toMatchObject(
    refusal(400, 'Bad Request: file must be non-empty'),
  );
  await expect(send(pngOf(9000, 1001))).rejects.toMatchObject(
    refusal(400, 'Bad Request: PHOTO_INVALID_DIMENSIONS'),
  );
  await expect(send(pngOf(2001, 100))).rejects.toMatchObject(
    refusal(400, 'Bad Request: PHOTO_INVALID_DIMENSIONS'),
  );
  await expect(send(new Uint8Array(10 * 1024 * 1024 + 1))).rejects.toMatchObject(
    refusal(
      400,
      'Bad Request: file of size 10485761 bytes is too big for a photo; the maximum size is 10485760 bytes',
    ),
  );
  await expect(api.sendPhoto(asha.id, 'no-such-file')).rejects.toMatchObject(
    refusal(400, 'Bad Request: wrong file identifier/HTTP URL specified'),
  );
});

test('a member’s photo can be fetched by getFile and its path', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const picture = jpegOf(640, 480);
  asha.dm({ photo: picture, caption: 'pH 5,8 @someone' });
  const message = (await api.getUpdates())[0]?.message;
  expect(message).toMatchObject({
    caption: 'pH 5,8 @someone',
    caption_entities: [{ type: 'mention', offset: 7, length: 8 }],
  });
  const largest = message!.photo!.at(-1)!;
  expect(largest).toMatchObject({ width: 640, height: 480, file_size: picture.length });
  const file = await api.getFile(largest.file_id);
  const download = `${emulator.url}/file/bot${emulator.token}/${file.file_path!}`;
  expect(new Uint8Array(await (await fetch(download)).arrayBuffer())).toEqual(picture);
  expect((await fetch(`${download}x`)).status).toBe(404);
  expect((await fetch(download.replace(emulator.token, 'stolen'))).status).toBe(404);
  await expect(api.getFile('unknown')).rejects.toMatchObject(
    refusal(400, 'Bad Request: wrong file_id or the file is temporarily unavailable'),
  );
});
