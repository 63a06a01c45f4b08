import { FormattedString } from '@grammyjs/parse-mode';
import { InlineKeyboard } from 'grammy';
import { describe, expect } from 'vitest';
import { refusal, test } from './emulated.ts';

describe('sendMessage', () => {
  test('shows the member what was sent and answers with the message', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const sent = await api.sendMessage(asha.id, 'Hello\n', {
      reply_markup: new InlineKeyboard()
        .text('Yes', 'y')
        .text('No', 'n')
        .row()
        .url('Read', 'https://example.org'),
    });
    expect(sent).toMatchObject({ text: 'Hello', chat: { id: asha.id, type: 'private' } });
    expect(asha.chat.last).toMatchObject({
      id: sent.message_id,
      text: 'Hello',
      buttons: [['Yes', 'No'], ['Read']],
      edited: false,
    });
  });

  test('takes 4096 UTF-16 units and no more, and no text of blanks', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    await api.sendMessage(asha.id, '🌱'.repeat(2048));
    await expect(api.sendMessage(asha.id, `${'🌱'.repeat(2048)}.`)).rejects.toMatchObject(
      refusal(400, 'Bad Request: message is too long'),
    );
    for (const empty of ['', ' \n ']) {
      await expect(api.sendMessage(asha.id, empty)).rejects.toMatchObject(
        refusal(400, 'Bad Request: message text is empty'),
      );
    }
  });

  test('counts the length after markup is taken out', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const sent = await api.sendMessage(asha.id, `<b>${'x'.repeat(4096)}</b>`, {
      parse_mode: 'HTML',
    });
    expect(sent.text).toHaveLength(4096);
  });

  test('keeps entities where they belong when blanks before them are cut', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const text = FormattedString.join([
      '  🌱 ',
      FormattedString.bold('Barrel'),
      ' see ',
      FormattedString.link('here', 'https://example.org'),
      ' ',
    ]);
    await api.sendMessage(asha.id, text.text, { entities: text.entities });
    expect(asha.chat.last?.text).toBe('🌱 Barrel see here');
    expect(asha.chat.last?.entities).toEqual([
      { type: 'bold', offset: 3, length: 6 },
      { type: 'text_link', offset: 14, length: 4, url: 'https://example.org' },
    ]);
  });

  test.for([
    [
      { type: 'bold', offset: 1, length: 1 },
      'entity begins in a middle of a UTF-16 symbol at byte offset 4',
    ],
    [
      { type: 'bold', offset: 0, length: 1 },
      'entity beginning at UTF-16 offset 0 ends in a middle of a UTF-16 symbol at byte offset 4',
    ],
    [
      { type: 'bold', offset: 0, length: 9 },
      'entity beginning at UTF-16 offset 0 ends after the end of the text at UTF-16 offset 9',
    ],
    [{ type: 'bold', offset: -1, length: 1 }, 'receive an entity with incorrect offset -1'],
    [
      { type: 'loud', offset: 0, length: 2 },
      "can't parse MessageEntity: Unsupported type specified",
    ],
  ] as const)('refuses entity %j', async ([entity, reason], { emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    await expect(
      api.raw.sendMessage({ chat_id: asha.id, text: '🌱 ok', entities: [entity as never] }),
    ).rejects.toMatchObject(refusal(400, `Bad Request: ${reason}`));
  });

  test('reads HTML', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    await api.sendMessage(
      asha.id,
      '🌱 <b>1 &lt; <i>2</i></b> <a href="https://example.org">x</a> <code>/no</code>',
      { parse_mode: 'HTML' },
    );
    expect(asha.chat.last).toMatchObject({
      text: '🌱 1 < 2 x /no',
      entities: [
        { type: 'bold', offset: 3, length: 5 },
        { type: 'italic', offset: 7, length: 1 },
        { type: 'text_link', offset: 9, length: 1, url: 'https://example.org' },
        { type: 'code', offset: 11, length: 3 },
      ],
    });
  });

  test('reads MarkdownV2', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    await api.sendMessage(asha.id, '*b _i_* 1\\.5 [x](https://example.org) `c_d` ~s~ ||h||', {
      parse_mode: 'MarkdownV2',
    });
    expect(asha.chat.last).toMatchObject({
      text: 'b i 1.5 x c_d s h',
      entities: [
        { type: 'bold', offset: 0, length: 3 },
        { type: 'italic', offset: 2, length: 1 },
        { type: 'text_link', offset: 8, length: 1, url: 'https://example.org' },
        { type: 'code', offset: 10, length: 3 },
        { type: 'strikethrough', offset: 14, length: 1 },
        { type: 'spoiler', offset: 16, length: 1 },
      ],
    });
  });

  test.for([
    ['HTML', '<b>x', `can't parse entities: Can't find end tag corresponding to start tag "b"`],
    ['HTML', '🌱<x>y</x>', `can't parse entities: Unsupported start tag "x" at byte offset 4`],
    ['HTML', 'a < b', "can't parse entities: Unclosed start tag at byte offset 2"],
    [
      'HTML',
      '<b>x</i>',
      `can't parse entities: Unmatched end tag at byte offset 4, expected "</b>", found "</i>"`,
    ],
    ['HTML', 'x</i>', "can't parse entities: Unexpected end tag at byte offset 1"],
    ['MarkdownV2', '🌱 *x', "can't parse entities: Can't find end of Bold entity at byte offset 5"],
    [
      'MarkdownV2',
      '1.5',
      "can't parse entities: Character '.' is reserved and must be escaped with the preceding '\\'",
    ],
    ['Rich', 'x', 'unsupported parse_mode'],
  ] as const)('refuses %s markup %j', async ([mode, text, reason], { emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    await expect(
      api.sendMessage(asha.id, text, { parse_mode: mode as 'HTML' }),
    ).rejects.toMatchObject(refusal(400, `Bad Request: ${reason}`));
  });

  test('measures callback data in bytes', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const with64Bytes = new InlineKeyboard().text('ok', 'ü'.repeat(32));
    await api.sendMessage(asha.id, 'x', { reply_markup: with64Bytes });
    for (const data of ['ü'.repeat(33), '']) {
      await expect(
        api.sendMessage(asha.id, 'x', { reply_markup: new InlineKeyboard().text('no', data) }),
      ).rejects.toMatchObject(refusal(400, 'Bad Request: BUTTON_DATA_INVALID'));
    }
    await expect(
      api.raw.sendMessage({
        chat_id: asha.id,
        text: 'x',
        reply_markup: { inline_keyboard: [[{ text: 'no action' } as never]] },
      }),
    ).rejects.toMatchObject(
      refusal(
        400,
        "Bad Request: can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
      ),
    );
  });

  test('replies to a message, or without it if that is allowed and it is gone', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const reading = asha.dm('EC 1.8');
    const reply_parameters = { message_id: reading.id };
    await api.sendMessage(asha.id, 'Noted.', { reply_parameters });
    expect(asha.chat.last?.replyTo).toBe(reading.id);
    asha.remove(reading);
    await expect(api.sendMessage(asha.id, 'Noted.', { reply_parameters })).rejects.toMatchObject(
      refusal(400, 'Bad Request: message to be replied not found'),
    );
    const lenient = { ...reply_parameters, allow_sending_without_reply: true };
    await api.sendMessage(asha.id, 'Noted anyway.', { reply_parameters: lenient });
    expect(asha.chat.last).toMatchObject({ text: 'Noted anyway.', replyTo: undefined });
  });

  test('is refused where there is no such chat', async ({ emulator, api }) => {
    await expect(api.sendMessage(12345, 'x')).rejects.toMatchObject(
      refusal(400, 'Bad Request: chat not found'),
    );
    await expect(api.sendMessage('', 'x')).rejects.toMatchObject(
      refusal(400, 'Bad Request: chat_id is empty'),
    );
    const stranger = emulator.world.user({ name: 'Nobody' });
    await expect(api.sendMessage(stranger.id, 'x')).rejects.toMatchObject(
      refusal(400, 'Bad Request: chat not found'),
    );
  });
});

test('sendChatAction takes the documented actions only', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  expect(await api.sendChatAction(asha.id, 'typing')).toBe(true);
  await expect(api.sendChatAction(asha.id, 'dancing' as 'typing')).rejects.toMatchObject(
    refusal(400, 'Bad Request: wrong parameter action in request'),
  );
});

test('flood limits, if asked for, let a burst through and then name the wait', async ({
  emulator,
  api,
}) => {
  emulator.limitFlood(true);
  const asha = emulator.world.user({ name: 'Asha' });
  asha.start();
  for (let count = 0; count < 3; count += 1) await api.sendMessage(asha.id, `${count}`);
  await expect(api.sendMessage(asha.id, 'too many')).rejects.toMatchObject({
    error_code: 429,
    description: 'Too Many Requests: retry after 3',
    parameters: { retry_after: 3 },
  });
  emulator.world.clock.advance(3000);
  await api.sendMessage(asha.id, 'again');
  expect(asha.chat.fromBot).toHaveLength(4);
});
