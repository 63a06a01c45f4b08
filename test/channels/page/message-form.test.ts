import { describe, expect, it } from 'vitest';
import { messageIdOf, readMessageForm } from '../../../src/channels/page/message-form.ts';
import { en } from '../../../src/channels/page/phrases/en.ts';

const form = { as: 'ines', id: 'abcdefgh', text: 'ph 5.8' };

describe('the form of a message', () => {
  it('takes 4096 characters and says in a sentence when there are more', () => {
    expect(readMessageForm({ ...form, text: 'x'.repeat(4096) }, en)).toMatchObject({ ok: true });
    expect(readMessageForm({ ...form, text: 'x'.repeat(4097) }, en)).toMatchObject({
      ok: false,
      text: 'x'.repeat(4097),
      because: 'The message has 4097 characters; at most 4096 fit. Please send it in parts.',
    });
  });

  it('counts a line end once, though browsers send two characters for it', () => {
    const lines = 'x\r\n'.repeat(2047) + 'x';
    expect(readMessageForm({ ...form, text: lines }, en)).toMatchObject({
      ok: true,
      text: lines.replaceAll('\r\n', '\n'),
    });
  });

  it('says that nothing was typed', () => {
    expect(readMessageForm({ ...form, text: ' \n ' }, en)).toMatchObject({
      ok: false,
      because: en.typeSomething,
    });
  });

  it.each([
    ['no id', { id: undefined }],
    ['an id of another shape', { id: 'a b' }],
    ['a file for a text', { text: new File([], 'x') }],
    ['a waiting time that is no number', { heldMs: 'long' }],
  ])('is not read with %s', (_what, changed) => {
    expect(readMessageForm({ ...form, ...changed }, en)).toMatchObject({
      ok: false,
      because: en.notReadable,
    });
  });

  it('believes at most a week of waiting on the device', () => {
    expect(readMessageForm({ ...form, heldMs: String(1e12) }, en)).toMatchObject({
      heldMs: 7 * 24 * 3_600_000,
    });
  });
});

describe('the id of a message', () => {
  it('is the same for the same sending and another for another text, member or greenhouse', () => {
    const ids = [
      messageIdOf(1, form),
      messageIdOf(1, { ...form, text: 'ph 5.9' }),
      messageIdOf(1, { ...form, as: 'tomas' }),
      messageIdOf(1, { ...form, id: 'hgfedcba' }),
      messageIdOf(2, form),
    ];
    expect(messageIdOf(1, { ...form })).toBe(ids[0]);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
