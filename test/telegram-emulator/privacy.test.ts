import type { Api } from 'grammy';
import { describe, expect } from 'vitest';
import { test } from './emulated.ts';
import { startEmulator } from './emulator.ts';

const heard = async (api: Api): Promise<readonly (string | undefined)[]> =>
  (await api.getUpdates())
    .map((update) => update.edited_message ?? update.message)
    .filter((message) => message?.text !== undefined)
    .map((message) => message?.text);

describe('in a group with privacy mode', () => {
  test('the bot hears commands, mentions and replies meant for it, and nothing else', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const bo = emulator.world.user({ name: 'Bo' });
    const group = emulator.world.group({ owner: asha, members: [bo] });
    const me = `@${emulator.username}`;
    const sent = await api.sendMessage(group.id, 'Morning round');
    const [round] = group.fromBot;
    group.say(bo, 'just talking');
    group.say(bo, 'mail me@example.org or @somebody_else');
    const chat = group.say(asha, 'talking too');
    group.say(bo, 'reply to Asha', { replyTo: chat });
    group.say(bo, '/today@some_other_bot');
    group.say(bo, 'see /today later');
    expect(await heard(api)).toEqual([]);

    group.say(bo, '/today');
    group.say(bo, `/today${me} please`);
    group.say(bo, `EC 1.8 ${me.toUpperCase()}`);
    const answer = group.say(bo, 'done', { replyTo: round! });
    group.say(asha, 'really?', { replyTo: answer });
    expect(await heard(api)).toEqual([
      '/today',
      `/today${me} please`,
      `EC 1.8 ${me.toUpperCase()}`,
      'done',
      'really?',
    ]);
    expect(sent.message_id).toBe(round?.id);
  });

  test('plain commands go to whichever bot wrote last', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha });
    group.otherBotSpeaks('hi, other bot here');
    group.say(asha, '/not_for_us');
    await api.sendMessage(group.id, 'and I am here');
    group.say(asha, '/for_us');
    expect(await heard(api)).toEqual(['/for_us']);
  });

  test('an edit that brings the bot in is heard, and later edits of that message too', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha });
    const message = group.say(asha, 'EC 1.8');
    asha.edit(message, `EC 1.8 @${emulator.username}`);
    asha.edit(message, 'EC 1.9');
    expect(await heard(api)).toEqual([`EC 1.8 @${emulator.username}`, 'EC 1.9']);
  });

  test('service messages come through', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const bo = emulator.world.user({ name: 'Bo' });
    const group = emulator.world.group({ owner: asha });
    await api.getUpdates({ offset: -1 });
    group.add(bo, asha);
    group.remove(bo);
    const updates = await api.getUpdates();
    expect(updates.at(-2)?.message?.new_chat_members).toMatchObject([{ first_name: 'Bo' }]);
    expect(updates.at(-1)?.message?.left_chat_member).toMatchObject({ first_name: 'Bo' });
    expect(() => group.say(bo, 'still here?')).toThrow('Bo cannot write in Family');
  });

  test('an administrator bot hears everything, reactions too', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha, bot: 'administrator' });
    await api.getUpdates({ allowed_updates: ['message', 'message_reaction', 'chat_member'] });
    const message = group.say(asha, 'just talking');
    asha.react(message, '👍');
    group.add(emulator.world.user({ name: 'Bo' }), asha);
    const updates = await api.getUpdates({ offset: -4 });
    expect(updates.map((update) => Object.keys(update)[1])).toEqual([
      'message',
      'message_reaction',
      'message',
      'chat_member',
    ]);
  });

  test('mentions can be held back as well', async () => {
    const emulator = await startEmulator({ mentionsPassPrivacy: false });
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha });
    const before = emulator.pendingCount();
    group.say(asha, `hello @${emulator.username}`);
    expect(emulator.pendingCount()).toBe(before);
    await emulator.stop();
  });
});

describe('in a group without privacy mode', () => {
  test('the bot hears everything', async ({ emulator, api }) => {
    emulator.world.setPrivacy(false);
    const asha = emulator.world.user({ name: 'Asha' });
    const group = emulator.world.group({ owner: asha });
    group.say(asha, 'just talking');
    expect(await heard(api)).toEqual(['just talking']);
  });

  test('a group joined under the other setting keeps to it', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const open = emulator.world.group({ owner: asha, privacy: false });
    const closed = emulator.world.group({ owner: asha, privacy: true });
    emulator.world.setPrivacy(false);
    open.say(asha, 'heard');
    closed.say(asha, 'not heard');
    expect(await heard(api)).toEqual(['heard']);
  });
});
