import { InlineKeyboard, InputFile } from 'grammy';
import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';
import { TINY_PICTURE } from './members/tiny-picture.ts';

const NOT_MODIFIED = refusal(
  400,
  'Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
);

test('an edit changes the one message that members see and drops buttons it does not name', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const reply_markup = new InlineKeyboard().text('Done', 'd');
  const sent = await api.sendMessage(asha.id, 'one', { reply_markup });
  await api.editMessageText(asha.id, sent.message_id, 'two', { reply_markup });
  expect(asha.chat.fromBot).toMatchObject([{ text: 'two', buttons: [['Done']], edited: true }]);
  await api.editMessageText(asha.id, sent.message_id, 'two');
  expect(asha.chat.last).toMatchObject({ text: 'two', buttons: [] });
});

test('an edit that changes nothing is refused', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const reply_markup = new InlineKeyboard().text('Done', 'd');
  const { message_id } = await api.sendMessage(asha.id, 'same @someone', { reply_markup });
  await expect(
    api.editMessageText(asha.id, message_id, ' same @someone ', { reply_markup }),
  ).rejects.toMatchObject(NOT_MODIFIED);
  await expect(
    api.editMessageReplyMarkup(asha.id, message_id, { reply_markup }),
  ).rejects.toMatchObject(NOT_MODIFIED);
  await api.editMessageReplyMarkup(asha.id, message_id);
  expect(asha.chat.last).toMatchObject({ text: 'same @someone', buttons: [] });
});

test('only the bot’s own texts that are still there can be edited', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const hers = asha.dm('mine');
  await expect(api.editMessageText(asha.id, hers.id, 'x')).rejects.toMatchObject(
    refusal(400, "Bad Request: message can't be edited"),
  );
  await expect(api.editMessageText(asha.id, 999, 'x')).rejects.toMatchObject(
    refusal(400, 'Bad Request: message to edit not found'),
  );
  const picture = await api.sendPhoto(asha.id, new InputFile(TINY_PICTURE), { caption: 'a' });
  await expect(api.editMessageText(asha.id, picture.message_id, 'x')).rejects.toMatchObject(
    refusal(400, 'Bad Request: there is no text in the message to edit'),
  );
  await api.editMessageCaption(asha.id, picture.message_id, { caption: 'b' });
  expect(asha.chat.last).toMatchObject({ text: 'b', photo: TINY_PICTURE });
});

test('deleting takes a message away for good, within 48 hours', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  const first = await api.sendMessage(asha.id, 'first');
  const second = await api.sendMessage(asha.id, 'second');
  await api.deleteMessage(asha.id, first.message_id);
  expect(asha.chat.fromBot.map((message) => message.text)).toEqual(['second']);
  await expect(api.deleteMessage(asha.id, first.message_id)).rejects.toMatchObject(
    refusal(400, 'Bad Request: message to delete not found'),
  );
  emulator.world.clock.advance(48 * 3600 * 1000);
  await expect(api.deleteMessage(asha.id, second.message_id)).rejects.toMatchObject(
    refusal(400, "Bad Request: message can't be deleted for everyone"),
  );
});

test('in a group the bot deletes others’ messages only as administrator', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha });
  const hers = group.say(asha, 'mine');
  await expect(api.deleteMessage(group.id, hers.id)).rejects.toMatchObject(
    refusal(400, "Bad Request: message can't be deleted"),
  );
  group.promoteBot();
  await api.deleteMessage(group.id, hers.id);
  expect(group.messages.some((message) => message.id === hers.id)).toBe(false);
});

test('a member’s edit reaches the bot with the new text', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const reading = asha.dm('EC 18');
  asha.edit(reading, 'EC 1.8');
  const updates = await api.getUpdates();
  expect(updates[0]?.message?.text).toBe('EC 18');
  expect(updates[1]?.edited_message).toMatchObject({ message_id: reading.id, text: 'EC 1.8' });
  expect(updates[1]?.edited_message?.edit_date).toBeGreaterThan(0);
});

test('reactions are the documented emoji, one from a bot', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const message = asha.dm('done');
  await api.setMessageReaction(asha.id, message.id, [{ type: 'emoji', emoji: '👍' }]);
  expect((await asha.chat.shows((one) => one.reactions.length > 0)).reactions).toEqual(['👍']);
  await api.setMessageReaction(asha.id, message.id, []);
  expect(asha.chat.messages[0]?.reactions).toEqual([]);
  await expect(
    api.setMessageReaction(asha.id, message.id, [{ type: 'emoji', emoji: '🌱' as '👍' }]),
  ).rejects.toMatchObject(refusal(400, 'Bad Request: REACTION_INVALID'));
  await expect(
    api.setMessageReaction(asha.id, 999, [{ type: 'emoji', emoji: '👍' }]),
  ).rejects.toMatchObject(refusal(400, 'Bad Request: message to react not found'));
});
