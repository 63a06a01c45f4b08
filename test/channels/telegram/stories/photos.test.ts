import { afterEach, expect, it, vi } from 'vitest';
import { TINY_PICTURE } from '../../../telegram-emulator/members/tiny-picture.ts';
import { pictureSize } from '../../../telegram-emulator/methods/picture-size.ts';
import { refused, serverError } from '../../../telegram-emulator/state/fault.ts';
import type { Mode } from '../running-bot.ts';
import { ChildHouse, hears } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

it.each<Mode>(['polling', 'webhook'])(
  'a photo that was attached is kept, comes with the instructions and is shown on the page, by %s',
  async (mode) => {
    const house = await ChildHouse.open(mode);
    closing.push(() => house.close());
    const { emulator, bot } = house;
    await bot.start();
    const ines = await house.grower('Ines');
    const uwe = await house.helper(ines, 'Uwe', 'de');

    // The platform is not well at first; the photo is fetched all the same.
    emulator.faults.arm(serverError(), { method: 'getFile' });
    ines.dm({ photo: TINY_PICTURE, caption: 'gutters: this is the tap' });
    await hears(ines, ({ text }) => text.includes('this is the tap'));
    await emulator.calls.until(
      ({ method, outcome }) => method === 'getFile' && outcome?.kind === 'ok',
      20_000,
    );
    const isPhoto = ({ photo }: { photo: Uint8Array | undefined }) => photo !== undefined;
    uwe.dm('wie fülle ich gutter run auf');
    const first = await hears(uwe, isPhoto);
    expect(first.text).toContain('this is the tap');
    expect(first.photo).toEqual(TINY_PICTURE);

    // Should the platform forget its own name for it, what was kept is sent.
    emulator.faults.arm(refused(400, 'Bad Request: wrong file identifier/HTTP URL specified'), {
      method: 'sendPhoto',
    });
    uwe.dm('wie fülle ich gutter run auf');
    expect((await hears(uwe, isPhoto)).photo).toEqual(TINY_PICTURE);

    const page = /at (http:\/\/\S+)\//u.exec(bot.output)![1]!;
    const form = new URLSearchParams({
      as: 'ines',
      id: 'photo-1234',
      text: 'how do I top up the gutters',
    });
    const origin = { Origin: page };
    await fetch(`${page}/messages`, {
      method: 'POST',
      body: form,
      headers: origin,
      redirect: 'manual',
    });
    const chat = await (await fetch(page)).text();
    const path = /src="(\/photos\/\d+)"/u.exec(chat)![1]!;
    const shown = await fetch(`${page}${path}`);
    expect(shown.headers.get('content-type')).toBe('image/jpeg');
    expect(pictureSize(new Uint8Array(await shown.arrayBuffer()))).toEqual(
      pictureSize(TINY_PICTURE),
    );

    // What was attached on the page comes in the chat as well, and without the photo where the platform takes none.
    const attached = new FormData();
    for (const [name, value] of [
      ['id', 'photo-form-1'],
      ['system', systemNamed(await (await fetch(`${page}/set-up`)).text(), 'Gutter run')],
      ['note', 'up to the black mark'],
    ] as const) {
      attached.set(name, value);
    }
    attached.set('photo', new File([Uint8Array.from(TINY_PICTURE)], 'mark.png'));
    const kept = await fetch(`${page}/set-up/photos`, {
      method: 'POST',
      body: attached,
      headers: origin,
    });
    expect(kept.status).toBe(200);
    const isMark = ({ text }: { text: string }) =>
      text.includes('up to the black mark') && !text.includes('this is the tap');
    uwe.dm('wie fülle ich gutter run auf');
    expect((await hears(uwe, isMark)).photo).toEqual(TINY_PICTURE);
    emulator.faults.arm(refused(400, 'Bad Request: PHOTO_INVALID_DIMENSIONS'), {
      method: 'sendPhoto',
      skip: 1,
    });
    uwe.dm('wie fülle ich gutter run auf');
    expect((await hears(uwe, isMark)).photo).toBeUndefined();
    expect(bot.output).not.toContain(emulator.token);
  },
);

function systemNamed(html: string, name: string): string {
  return new RegExp(`<option value="([^"]+)"\\s*>${name}<`).exec(html)![1]!;
}
