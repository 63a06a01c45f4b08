import { expect } from 'vitest';
import { test as base } from '../../telegram-emulator/emulated.ts';
import { flooded } from '../../telegram-emulator/state/fault.ts';
import { SmallHouse } from './small-house.ts';

/** Pictures that are being drawn, each finished when the test says so. */
const drawings: (() => void)[] = [];

const test = base.extend<{ readonly house: SmallHouse }>({
  house: async ({ emulator }, use) => {
    const house = await SmallHouse.open({
      emulator,
      drawPicture: () =>
        new Promise((resolve) => {
          drawings.push(() => {
            resolve(new Uint8Array([1, 2, 3]));
          });
        }),
    });
    await use(house);
    await house.close();
  },
});

test('nothing that waits reaches who was taken out, and the grower hears that it is done', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  await ines.chat.next();
  await bo.chat.next();
  const toBo = ({ payload }: { readonly payload: Readonly<Record<string, unknown>> }) =>
    payload['chat_id'] === bo.id;
  emulator.faults.arm(flooded(8), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === bo.id,
  });
  bo.dm('buckets ph 5.71');
  await expect.poll(() => emulator.calls.of('sendMessage').filter(toBo)).toHaveLength(2);
  ines.dm('remove Bo');
  await ines.chat.next(({ text }) => text.includes('Bo'));
  const parting = await bo.chat.next(({ text }) => text.includes('Ines'));
  expect(bo.chat.fromBot.slice(1).map(({ id }) => id)).toEqual([parting.id]);
  expect(bo.chat.fromBot.some(({ text }) => text.includes('5.71'))).toBe(false);
});

test('a picture that is being drawn does not reach who is taken out meanwhile', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  bo.dm('topped up the buckets 12 l');
  await bo.chat.next(({ replyTo }) => replyTo !== undefined);
  bo.dm('show me the buckets');
  await expect.poll(() => drawings.length).toBe(1);
  ines.dm('remove Bo');
  const parting = await bo.chat.next(({ text }) => text.includes('Ines'));
  for (const finish of drawings) finish();
  ines.dm('buckets ph 5.73');
  await ines.chat.next(({ text }) => text.includes('5.73'));
  await house.stop();
  expect(bo.chat.fromBot.at(-1)?.id).toBe(parting.id);
  expect(emulator.calls.of('sendPhoto')).toEqual([]);
});
