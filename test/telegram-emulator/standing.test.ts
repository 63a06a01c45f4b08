import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';

test('the bot cannot write first, but may once it was started', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha', language: 'de', username: 'asha' });
  emulator.world.group({ owner: asha });
  await expect(api.sendMessage(asha.id, 'hello')).rejects.toMatchObject(
    refusal(403, "Forbidden: bot can't initiate conversation with a user"),
  );
  asha.start('invite_abc-1');
  const message = (await api.getUpdates()).at(-1)?.message;
  expect(message).toMatchObject({
    text: '/start invite_abc-1',
    entities: [{ type: 'bot_command', offset: 0, length: 6 }],
    from: { id: asha.id, first_name: 'Asha', username: 'asha', language_code: 'de' },
    chat: { id: asha.id, type: 'private' },
  });
  await api.sendMessage(asha.id, 'hello');
});

test('blocking refuses the bot and tells it, and so does unblocking', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  asha.block();
  expect(() => asha.dm('hm')).toThrow('blocked');
  await expect(api.sendMessage(asha.id, 'hello')).rejects.toMatchObject(
    refusal(403, 'Forbidden: bot was blocked by the user'),
  );
  expect((await api.getUpdates()).at(-1)?.my_chat_member).toMatchObject({
    chat: { id: asha.id },
    old_chat_member: { status: 'member' },
    new_chat_member: { status: 'kicked' },
  });
  asha.start();
  await api.sendMessage(asha.id, 'welcome back');
  const [, , unblocked, started] = await api.getUpdates();
  expect(unblocked?.my_chat_member?.new_chat_member.status).toBe('member');
  expect(started?.message?.text).toBe('/start');
});

test('a deactivated account refuses the bot', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  asha.deactivate();
  await expect(api.sendMessage(asha.id, 'hello')).rejects.toMatchObject(
    refusal(403, 'Forbidden: user is deactivated'),
  );
});

test.for(['group', 'supergroup'] as const)(
  'joining a %s, being muted, promoted and kicked is told to the bot and shows in its calls',
  async (kind, { emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha, kind });
    await api.sendMessage(group.id, 'hello');
    group.muteBot();
    await expect(api.sendMessage(group.id, 'hello')).rejects.toMatchObject(
      refusal(400, 'Bad Request: not enough rights to send text messages to the chat'),
    );
    group.demoteBot();
    group.promoteBot();
    group.kickBot();
    await expect(api.sendMessage(group.id, 'hello')).rejects.toMatchObject(
      refusal(403, `Forbidden: bot was kicked from the ${kind} chat`),
    );
    const standings = (await api.getUpdates())
      .map((update) => update.my_chat_member?.new_chat_member.status)
      .filter((status) => status !== undefined);
    expect(standings).toEqual(['member', 'restricted', 'member', 'administrator', 'kicked']);
    const before = emulator.pendingCount();
    group.say(asha, `/hello@${emulator.username}`);
    expect(emulator.pendingCount()).toBe(before);
    group.addBot();
    await api.sendMessage(group.id, 'back again');
  },
);

test('a chat that the bot has left is closed to it', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha });
  await api.leaveChat(group.id);
  await expect(api.sendMessage(group.id, 'x')).rejects.toMatchObject(
    refusal(403, 'Forbidden: bot is not a member of the group chat'),
  );
  expect((await api.getUpdates()).at(-1)?.my_chat_member?.new_chat_member.status).toBe('left');
});

test('getChat and getChatMember tell of chats and people', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const bo = emulator.world.user({ name: 'Bo' });
  const group = emulator.world.group({ title: 'Quarry Lane', owner: asha, members: [bo] });
  expect(await api.getChat(group.id)).toMatchObject({ type: 'group', title: 'Quarry Lane' });
  const status = async (userId: number) => (await api.getChatMember(group.id, userId)).status;
  expect(await status(asha.id)).toBe('creator');
  expect(await status(bo.id)).toBe('member');
  group.remove(bo, asha);
  expect(await status(bo.id)).toBe('kicked');
  expect(await status(emulator.world.user({ name: 'Cy' }).id)).toBe('left');
  expect(await status((await api.getMe()).id)).toBe('member');
  await expect(api.getChatMember(group.id, 1)).rejects.toMatchObject(
    refusal(400, 'Bad Request: user not found'),
  );
});
