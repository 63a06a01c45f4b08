import { expect } from 'vitest';
import { test } from './emulated.ts';

test('next reads on through posts and edits as they looked, and skips what does not fit', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const sent = await api.sendMessage(asha.id, 'one');
  await api.editMessageText(asha.id, sent.message_id, 'one, edited');
  await api.sendMessage(asha.id, 'two');
  await api.sendMessage(asha.id, 'three');
  expect((await asha.chat.next()).text).toBe('one');
  expect(await asha.chat.next()).toMatchObject({ text: 'one, edited', edited: true });
  expect((await asha.chat.next((message) => message.text.startsWith('t'))).text).toBe('two');
  expect((await asha.chat.next((message) => message.text === 'three')).text).toBe('three');
  await expect(asha.chat.next(undefined, 20)).rejects.toThrow('the bot said nothing');
});

test('next waits for what is still to come and says what came instead', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const waiting = asha.chat.next((message) => message.text === 'later');
  await api.sendMessage(asha.id, 'sooner');
  await api.sendMessage(asha.id, 'later');
  expect((await waiting).text).toBe('later');
  await api.sendMessage(asha.id, 'something else');
  await expect(asha.chat.next((message) => message.text === 'never', 20)).rejects.toThrow(
    'the bot posted "something else"',
  );
});

test('catching up leaves only what comes after', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  await api.sendMessage(asha.id, 'old');
  asha.chat.catchUp();
  await api.sendMessage(asha.id, 'new');
  expect((await asha.chat.next()).text).toBe('new');
});

test('members’ messages of any kind reach the bot', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.dm({ content: { location: { latitude: 46.9, longitude: 7.4 } } });
  expect((await api.getUpdates())[0]?.message?.location).toEqual({
    latitude: 46.9,
    longitude: 7.4,
  });
});
