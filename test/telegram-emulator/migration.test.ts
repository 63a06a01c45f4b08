import { expect } from 'vitest';
import { test } from './emulated.ts';

const UPGRADED = 'Bad Request: group chat was upgraded to a supergroup chat';

test('a group that becomes a supergroup tells so on both sides and refuses its old id', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha });
  await api.sendMessage(group.id, 'before');
  const bigger = group.upgrade();
  const [farewell, welcome] = (await api.getUpdates()).slice(-2);
  expect(farewell?.message).toMatchObject({
    chat: { id: group.id, type: 'group' },
    migrate_to_chat_id: bigger.id,
  });
  expect(welcome?.message).toMatchObject({
    chat: { id: bigger.id, type: 'supergroup' },
    migrate_from_chat_id: group.id,
  });
  for (const call of [api.sendMessage(group.id, 'x'), api.getChat(group.id)]) {
    await expect(call).rejects.toMatchObject({
      error_code: 400,
      description: UPGRADED,
      parameters: { migrate_to_chat_id: bigger.id },
    });
  }
  await api.sendMessage(bigger.id, 'after');
  expect(bigger.fromBot.map((message) => message.text)).toEqual(['after']);
  expect(bigger.say(asha, 'hello').chatId).toBe(bigger.id);
  expect(() => group.say(asha, 'hello')).toThrow('cannot write');
});

test('a silent upgrade is found out by the refusal alone', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha });
  const before = emulator.pendingCount();
  const bigger = group.upgrade({ silently: true });
  expect(emulator.pendingCount()).toBe(before);
  await expect(api.sendMessage(group.id, 'x')).rejects.toMatchObject({
    parameters: { migrate_to_chat_id: bigger.id },
  });
});

test('a supergroup counts its own messages, other chats share one count', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const first = asha.start();
  const group = emulator.world.group({ owner: asha });
  const sent = await api.sendMessage(group.id, 'x');
  expect(sent.message_id).toBeGreaterThan(first.id);
  const bigger = group.upgrade();
  expect((await api.sendMessage(bigger.id, 'x')).message_id).toBe(2);
});
