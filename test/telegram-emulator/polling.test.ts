import { Api } from 'grammy';
import { describe, expect } from 'vitest';
import { refusal, test } from './emulated.ts';

describe('getUpdates', () => {
  test('keeps updates until an offset confirms them', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.dm('one');
    asha.dm('two');
    const first = await api.getUpdates();
    expect(first.map((update) => update.message?.text)).toEqual(['one', 'two']);
    expect(await api.getUpdates()).toEqual(first);
    const rest = await api.getUpdates({ offset: first[0]!.update_id + 1 });
    expect(rest.map((update) => update.message?.text)).toEqual(['two']);
    expect(await api.getUpdates({ offset: first[1]!.update_id + 1 })).toEqual([]);
    expect(emulator.pendingCount()).toBe(0);
  });

  test('hands out at most 100 at a time, or fewer if asked', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    for (let count = 0; count < 130; count += 1) asha.dm(`message ${count}`);
    expect(await api.getUpdates()).toHaveLength(100);
    expect(await api.getUpdates({ limit: 7 })).toHaveLength(7);
    expect((await api.getUpdates({ offset: -3 })).map((update) => update.message?.text)).toEqual([
      'message 127',
      'message 128',
      'message 129',
    ]);
    expect(emulator.pendingCount()).toBe(3);
  });

  test('waits for an update and answers as soon as there is one', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const waiting = api.getUpdates({ timeout: 30 });
    await expect.poll(() => emulator.calls.of('getUpdates').length).toBe(1);
    asha.dm('hello');
    expect((await waiting)[0]?.message?.text).toBe('hello');
  });

  test('answers with nothing when its time is over', async ({ emulator, api }) => {
    emulator.pace.longPollFactor = 0.001;
    expect(await api.getUpdates({ timeout: 30 })).toEqual([]);
  });

  test('ends the call that waits when a second one comes', async ({ emulator, api }) => {
    const first = expect(api.getUpdates({ timeout: 30 })).rejects.toMatchObject(
      refusal(
        409,
        'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
      ),
    );
    await expect.poll(() => emulator.calls.of('getUpdates').length).toBe(1);
    const second = api.getUpdates({ timeout: 30 });
    await first;
    emulator.world.user({ name: 'Asha' }).dm('for the second');
    expect((await second)[0]?.message?.text).toBe('for the second');
  });

  test('forgets a caller that hung up', async ({ emulator, api }) => {
    const leaving = new AbortController();
    const address = `${emulator.url}/bot${emulator.token}/getUpdates?timeout=30`;
    const left = expect(fetch(address, { signal: leaving.signal })).rejects.toThrow();
    await expect.poll(() => emulator.calls.of('getUpdates').length).toBe(1);
    leaving.abort();
    await left;
    await expect.poll(() => emulator.calls.of('getUpdates')[0]?.outcome?.kind).toBe('dropped');
    emulator.world.user({ name: 'Asha' }).dm('still here');
    expect(await api.getUpdates()).toHaveLength(1);
  });

  test('is refused while a webhook is set, and setting one ends the wait', async ({
    emulator,
    api,
  }) => {
    const waiting = expect(api.getUpdates({ timeout: 30 })).rejects.toMatchObject(
      refusal(409, 'Conflict: terminated by setWebhook request'),
    );
    await expect.poll(() => emulator.calls.of('getUpdates').length).toBe(1);
    await api.setWebhook('http://127.0.0.1:9/nobody-there');
    await waiting;
    await expect(api.getUpdates()).rejects.toMatchObject(
      refusal(
        409,
        "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
      ),
    );
    await api.deleteWebhook();
    expect(await api.getUpdates()).toEqual([]);
  });

  test('sends reactions only to a bot that asked for them, and remembers the choice', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    const message = asha.dm('hello');
    asha.react(message, '👍');
    expect(await api.getUpdates()).toHaveLength(1);
    await api.getUpdates({ allowed_updates: ['message_reaction'] });
    asha.react(message, '🔥');
    asha.dm('not wanted');
    const updates = await api.getUpdates();
    expect(updates.at(-1)?.message_reaction).toMatchObject({
      message_id: message.id,
      old_reaction: [{ type: 'emoji', emoji: '👍' }],
      new_reaction: [{ type: 'emoji', emoji: '🔥' }],
    });
    expect(updates).toHaveLength(2);
  });

  test('loses what nobody fetched for more than 24 hours', async ({ emulator, api }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.dm('lost');
    emulator.world.clock.advance(23 * 3600 * 1000);
    asha.dm('kept');
    emulator.world.clock.advance(2 * 3600 * 1000);
    expect((await api.getUpdates()).map((update) => update.message?.text)).toEqual(['kept']);
  });

  test('begins its ids anew after a week of silence, and an old offset confirms nothing of that', async ({
    emulator,
    api,
  }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.dm('before');
    const [before] = await api.getUpdates();
    emulator.world.clock.advance(8 * 24 * 3600 * 1000);
    asha.dm('after');
    const [after] = await api.getUpdates({ offset: before!.update_id + 1 });
    expect(after?.message?.text).toBe('after');
    expect(after!.update_id).toBeLessThan(before!.update_id);
  });
});

describe('any call', () => {
  test('is refused with a wrong token or method', async ({ emulator, api }) => {
    const stranger = new Api('7000000001:wrong', { apiRoot: emulator.url });
    await expect(stranger.getMe()).rejects.toMatchObject(refusal(401, 'Unauthorized'));
    await expect(api.sendDice(1, '🎲')).rejects.toMatchObject(
      refusal(404, 'Not Found: method not found'),
    );
    expect((await fetch(`${emulator.url}/elsewhere`)).status).toBe(404);
  });

  test('may come as an address, a form or JSON, under a name of any case', async ({ emulator }) => {
    const asha = emulator.world.user({ name: 'Asha' });
    asha.start();
    const root = `${emulator.url}/bot${emulator.token}`;
    await fetch(`${root}/sendmessage?chat_id=${asha.id}&text=address`);
    const form = new URLSearchParams({ chat_id: String(asha.id), text: 'form' });
    await fetch(`${root}/SENDMESSAGE`, { method: 'POST', body: form });
    await fetch(`${root}/sendMessage`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ chat_id: asha.id, text: 'JSON' }),
    });
    expect(asha.chat.fromBot.map((message) => message.text)).toEqual(['address', 'form', 'JSON']);
    const broken = await fetch(`${root}/sendMessage`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: '{"chat_id":',
    });
    expect(broken.status).toBe(400);
  });

  test('getMe tells who the bot is and whether it reads everything in groups', async ({
    emulator,
    api,
  }) => {
    expect(await api.getMe()).toMatchObject({
      is_bot: true,
      username: emulator.username,
      can_read_all_group_messages: false,
    });
    emulator.world.setPrivacy(false);
    expect((await api.getMe()).can_read_all_group_messages).toBe(true);
  });
});
