import { expect } from 'vitest';
import { refusal, test } from './emulated.ts';

const NO_THREAD = refusal(400, 'Bad Request: message thread not found');

test('messages in a topic carry its id, and answers go where they are sent', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha, topics: true, privacy: false });
  const tomatoes = group.openTopic('Tomatoes');
  const said = group.say(asha, 'EC 1.8', { topic: tomatoes });
  const message = (await api.getUpdates()).at(-1)?.message;
  expect(message).toMatchObject({
    message_thread_id: tomatoes.id,
    is_topic_message: true,
    chat: { is_forum: true, type: 'supergroup' },
    reply_to_message: { forum_topic_created: { name: 'Tomatoes' } },
  });
  expect(said).toMatchObject({ topic: tomatoes.id, replyTo: undefined });
  await api.sendMessage(group.id, 'Noted.', { message_thread_id: tomatoes.id });
  expect(group.last?.topic).toBe(tomatoes.id);
  await api.sendMessage(group.id, 'Noted.', { reply_parameters: { message_id: said.id } });
  expect(group.last).toMatchObject({ topic: tomatoes.id, replyTo: said.id });
  await api.sendMessage(group.id, 'For all.');
  expect(group.last?.topic).toBeUndefined();
});

test('what looks like a reply in a topic is none as far as privacy mode goes', ({ emulator }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha, topics: true });
  const topic = group.openTopic('Tomatoes');
  const before = emulator.pendingCount();
  group.say(asha, 'just talking', { topic });
  expect(emulator.pendingCount()).toBe(before);
});

test('unknown, general and closed topics cannot be written to by id', async ({ emulator, api }) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha, topics: true });
  const topic = group.openTopic('Tomatoes');
  for (const message_thread_id of [999, 1]) {
    await expect(api.sendMessage(group.id, 'x', { message_thread_id })).rejects.toMatchObject(
      NO_THREAD,
    );
  }
  group.closeTopic(topic);
  await expect(
    api.sendMessage(group.id, 'x', { message_thread_id: topic.id }),
  ).rejects.toMatchObject(refusal(400, 'Bad Request: TOPIC_CLOSED'));
});

test('replies in a supergroup without topics carry a thread id that cannot be written to', async ({
  emulator,
  api,
}) => {
  const asha = emulator.world.user({ name: 'Asha' });
  const group = emulator.world.group({ owner: asha, kind: 'supergroup', privacy: false });
  const first = group.say(asha, 'one');
  group.say(asha, 'two', { replyTo: first });
  const message = (await api.getUpdates()).at(-1)?.message;
  expect(message?.message_thread_id).toBe(first.id);
  expect(message?.is_topic_message).toBeUndefined();
  await expect(
    api.sendMessage(group.id, 'x', { message_thread_id: first.id }),
  ).rejects.toMatchObject(NO_THREAD);
});
