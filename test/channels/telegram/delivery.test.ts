import { expect } from 'vitest';
import type { Emulator } from '../../telegram-emulator/emulator.ts';
import {
  badGateway,
  dropAfter,
  dropBefore,
  flooded,
  refused,
  serverError,
  slow,
} from '../../telegram-emulator/state/fault.ts';
import { test } from './in-a-house.ts';
import type { SmallHouse } from './small-house.ts';

const settled = async (emulator: Emulator, house: SmallHouse) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  await expect.poll(() => bo.chat.fromBot.length + ines.chat.fromBot.length).toBe(2);
  ines.chat.catchUp();
  bo.chat.catchUp();
  return { ines, bo };
};

test('429, 500 and a gateway’s page are waited out, and the chat keeps its order', async ({
  emulator,
  house,
}) => {
  const { bo } = await settled(emulator, house);
  emulator.faults.arm(flooded(1), { method: 'sendMessage' });
  emulator.faults.arm(serverError(), { method: 'sendMessage' });
  emulator.faults.arm(badGateway(), { method: 'sendMessage' });
  for (const value of ['5.5', '5.6', '5.7', '5.8']) bo.dm(`buckets ph ${value}`);
  const texts: string[] = [];
  for (let n = 0; n < 4; n += 1) {
    texts.push((await bo.chat.next((message) => message.replyTo !== undefined)).text);
  }
  expect(texts.map((text) => /5\.[5-8]/u.exec(text)![0])).toEqual(['5.5', '5.6', '5.7', '5.8']);
  const refusals = emulator.calls.of('sendMessage').filter(({ outcome }) => outcome?.kind !== 'ok');
  expect(refusals.length).toBeGreaterThanOrEqual(2);
});

test('what was taken up together waits where one of it has to, in the order of its chat', async ({
  emulator,
  house,
}) => {
  const { bo } = await settled(emulator, house);
  const values = ['5.5', '5.6', '5.7', '5.8'];
  // The first comes alone, the others together.
  emulator.faults.arm(serverError(), {
    method: 'sendMessage',
    where: ({ text }) => String(text).includes('5.6'),
  });
  for (const value of values) bo.dm(`buckets ph ${value}`);
  const texts: string[] = [];
  while (texts.length < values.length) {
    texts.push((await bo.chat.next((message) => message.replyTo !== undefined)).text);
  }
  expect(texts.map((text) => /5\.[5-8]/u.exec(text)![0])).toEqual(values);
});

test('a message whose answer was lost goes out once more, and no more than that', async ({
  emulator,
  house,
}) => {
  const { bo, ines } = await settled(emulator, house);
  emulator.faults.arm(dropAfter(), {
    method: 'sendMessage',
    times: 5,
    where: ({ chat_id }) => chat_id === bo.id,
  });
  bo.dm('buckets ph 5.9');
  expect((await ines.chat.next((message) => message.text.includes('Bo'))).text).toBeTruthy();
  const copies = bo.chat.fromBot.filter(({ text, replyTo }) => replyTo && text.includes('5.9'));
  expect(copies).toHaveLength(2);
});

test('a connection that breaks before is tried again', async ({ emulator, house }) => {
  const { bo } = await settled(emulator, house);
  emulator.faults.arm(dropBefore(), { method: 'sendMessage' });
  bo.dm('buckets ph 5.9');
  await bo.chat.next((message) => message.text.includes('5.9'));
});

test('a refusal is final, its reason is kept, and the grower hears of it', async ({
  emulator,
  house,
}) => {
  const { bo, ines } = await settled(emulator, house);
  emulator.faults.arm(refused(400, 'Bad Request: message text is empty'), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === bo.id,
  });
  bo.dm('buckets ph 5.9');
  expect((await ines.chat.next()).text).toContain('message text is empty');
  bo.dm('buckets ph 5.8');
  await bo.chat.next((message) => message.text.includes('5.8'));
});

test('a closed account is noticed at the next message', async ({ emulator, house }) => {
  const { bo, ines } = await settled(emulator, house);
  bo.dm('buckets ph 5.9');
  await bo.chat.next((message) => message.text.includes('5.9'));
  bo.dm('buckets ph 5.8');
  bo.deactivate();
  await ines.chat.next((message) => message.text.includes('Bo'));
});

test('a slow chat does not hold up the others', async ({ emulator, house }) => {
  const { bo, ines } = await settled(emulator, house);
  emulator.faults.arm(slow(8000), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === bo.id,
  });
  bo.dm('buckets ph 5.9');
  ines.dm('buckets ph 5.8');
  await ines.chat.next((message) => message.text.includes('5.8'));
  expect(bo.chat.fromBot.filter(({ text }) => text.includes('5.9'))).toEqual([]);
  await bo.chat.next((message) => message.text.includes('5.9'));
});

test('a group that becomes a supergroup is followed, told of it or not', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const group = emulator.world.group({ owner: ines });
  await house.settle([ines], [], [group]);
  await house.start();
  group.say(ines, `@${emulator.username} buckets ph 5.9`);
  await group.next((message) => message.text.includes('5.9'));
  const silent = group.upgrade({ silently: true });
  await house.tick();
  const round = await silent.next((message) => message.buttons.length > 1);
  await ines.press(round, round.keys[0]!.text);
  await silent.next((message) => message.edited && message.id === round.id);
  silent.say(ines, `@${emulator.username} buckets ph 5.8`);
  await silent.next((message) => message.text.includes('5.8'));
});

test('a receipt stays in the topic of its message, even where that was deleted', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const group = emulator.world.group({ owner: ines, topics: true });
  const topic = group.openTopic('Greenhouse');
  await house.settle([ines], [], [group]);
  await house.start();
  const first = group.say(ines, `@${emulator.username} buckets ph 5.9`, { topic });
  const receipt = await group.next((message) => message.text.includes('5.9'));
  expect(receipt).toMatchObject({ topic: topic.id, replyTo: first.id });
  await house.stop();
  const second = group.say(ines, `@${emulator.username} buckets ph 5.8`, { topic });
  ines.remove(second);
  await house.start();
  const later = await group.next((message) => message.text.includes('5.8'));
  expect(later).toMatchObject({ topic: topic.id, replyTo: undefined });
});

test('a receipt whose topic was closed meanwhile comes in the group all the same', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const group = emulator.world.group({ owner: ines, topics: true });
  const topic = group.openTopic('Greenhouse');
  await house.settle([ines], [], [group]);
  await house.start();
  await house.stop();
  group.say(ines, `@${emulator.username} buckets ph 5.9`, { topic });
  group.closeTopic(topic);
  await house.start();
  const receipt = await group.next((message) => message.text.includes('5.9'));
  expect(receipt).toMatchObject({ topic: undefined, replyTo: undefined });
  expect(ines.chat.fromBot.filter(({ text }) => text.includes('Family'))).toEqual([]);
});

test('an edited message corrects its entry', async ({ emulator, house }) => {
  const { bo } = await settled(emulator, house);
  const said = bo.dm('buckets ph 5.9');
  await bo.chat.next((message) => message.text.includes('5.9'));
  bo.edit(said, 'buckets ph 5.6');
  const correction = await bo.chat.next((message) => message.text.includes('5.6'));
  expect(correction.replyTo).toBe(said.id);
  const [id] = (await house.store.greenhouses()).map((each) => each.id);
  const live = (await house.desk.standing(id!)).logbook.all.filter(({ struck }) => !struck);
  expect(live.map(({ value }) => value)).toEqual([5.6]);
});

test('a picture’s caption is read, and a picture without words is asked about', async ({
  emulator,
  house,
}) => {
  const { bo } = await settled(emulator, house);
  bo.dm({ photo: new Uint8Array([1, 2, 3]), caption: 'buckets ph 5.9' });
  await bo.chat.next((message) => message.text.includes('5.9'));
  bo.dm({ photo: new Uint8Array([1, 2, 3]) });
  await bo.chat.next((message) => message.text.includes('words'));
});

test('after more than a day out of reach, the grower is told that messages may be lost', async ({
  emulator,
  house,
}) => {
  const { ines } = await settled(emulator, house);
  await house.stop();
  house.advance(30 * 3_600_000);
  await house.start();
  expect((await ines.chat.next((message) => message.text.includes('lost'))).text).toContain('30');
});

test('commands are in the menu of each chat, in the member’s language', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const uwe = emulator.world.user({ name: 'Uwe', language: 'de' });
  const group = emulator.world.group({ owner: ines, members: [uwe] });
  await house.settle([ines], [uwe]);
  await house.start();
  await expect
    .poll(() => uwe.menuIn(group).map(({ command, description }) => `${command}: ${description}`))
    .toEqual([
      'today: Was zu tun ist',
      'undo: Das zuletzt Eingetragene zurücknehmen',
      'help: Was ich verstehe',
    ]);
  expect(uwe.menuIn(uwe.chat)).toHaveLength(6);
  expect(ines.menuIn(ines.chat)[0]).toEqual({ command: 'today', description: 'What needs doing' });
  ines.dm('/today');
  expect((await ines.chat.next((message) => message.replyTo !== undefined)).text).toBeTruthy();
});
