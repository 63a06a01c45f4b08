import { expect } from 'vitest';
import type { Member } from '../../telegram-emulator/members/member.ts';
import { test } from './in-a-house.ts';

const link = /https:\/\/t\.me\/\w+\?start=(\w+)/u;

async function invitationCode(grower: Member, words = 'invite a helper'): Promise<string> {
  grower.dm(words);
  const invitation = await grower.chat.next((message) => link.test(message.text));
  return link.exec(invitation.text)![1]!;
}

test('a stranger gets one polite line and learns nothing', async ({ emulator, house }) => {
  await house.newGreenhouse();
  await house.start();
  const sven = emulator.world.user({ name: 'Sven', language: 'de' });
  sven.start();
  sven.dm('was ist zu tun');
  sven.dm('buckets ph 5.9');
  await emulator.drained();
  await expect.poll(() => sven.chat.fromBot.length).toBe(1);
  expect(sven.chat.last!.text).toContain('Haushalt');
  expect(sven.chat.last!.text).not.toMatch(/Quarry|bench|bucket|Ines/iu);
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(sven.chat.fromBot).toHaveLength(1);
});

test('the code of the first start lets one grower in, and nobody after', async ({
  emulator,
  house,
}) => {
  const id = await house.newGreenhouse();
  await house.start();
  const ines = emulator.world.user({ name: 'Whoever' });
  const code = house.claims.get('Quarry Lane')!;
  ines.dm(code.toLowerCase());
  expect((await ines.chat.next()).text).toContain('Welcome to Quarry Lane, Ines');
  const thief = emulator.world.user({ name: 'Thief' });
  thief.dm(code);
  expect((await thief.chat.next()).text).toContain('not valid');
  ines.dm('what needs doing');
  await ines.chat.next();
  const { accounts } = await house.store.household.directory('telegram');
  expect(accounts).toMatchObject([{ greenhouse: id, handle: 'ines', accountId: String(ines.id) }]);
  await house.stop();
  house.claims.clear();
  await house.start();
  expect(house.claims.size).toBe(0);
});

test('an invitation is a link that works once, for the role in it', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const id = await house.settle([ines], []);
  await house.start();
  const code = await invitationCode(ines);
  expect(code).toMatch(/^[\w-]{1,64}$/u);
  const bo = emulator.world.user({ name: '😈 </b>"Bo"' });
  bo.start(code);
  expect((await bo.chat.next()).text).toContain('as a helper');
  expect((await ines.chat.next((message) => message.text.includes('has joined'))).text).toContain(
    '😈 </b>"Bo"',
  );
  const late = emulator.world.user({ name: 'Late' });
  late.start(code);
  expect((await late.chat.next()).text).toContain('not valid');
  bo.dm('invite a helper');
  expect((await bo.chat.next()).text).toBe('Only Ines can do that.');
  const { members } = (await house.desk.standing(id)).greenhouse;
  expect(members.at(-1)).toMatchObject({ name: '😈 </b>"Bo"', role: 'helper' });
});

test('no code is anywhere in the database in clear', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const id = await house.settle([ines], []);
  await house.start();
  const code = await invitationCode(ines);
  const stored = await house.store.history(id, 'telegram', 'ines', 50);
  expect(JSON.stringify(stored)).toContain('invite a helper');
  expect(JSON.stringify(stored)).not.toContain(code);
});

test('an invitation of eight days ago is void', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  await house.settle([ines], []);
  await house.start();
  const code = await invitationCode(ines);
  house.advance(8 * 86_400_000);
  const bo = emulator.world.user({ name: 'Bo' });
  bo.start(code);
  expect((await bo.chat.next()).text).toContain('not valid');
});

test('a member of the set-up is invited by name and comes in as who they are', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  await house.newGreenhouse();
  await house.start();
  ines.dm(house.claims.get('Quarry Lane')!);
  await ines.chat.next();
  const code = await invitationCode(ines, 'invite Tomas');
  const tomas = emulator.world.user({ name: 'T.' });
  tomas.start(code);
  expect((await tomas.chat.next()).text).toContain('Tomas');
  ines.dm('who is in?');
  const who = await ines.chat.next((message) => message.text.includes('Priya'));
  expect(who.buttons.flat()).toEqual(
    expect.arrayContaining(['Remove Tomas', 'Invite Priya', 'Invite Olli']),
  );
  await ines.press(who, 'Remove Tomas');
  await ines.chat.next((message) => message.text.includes('Tomas is out'));
  tomas.dm('what needs doing');
  await tomas.chat.next((message) => message.text.includes('one household only'));
});

test('who leaves is asked once, said goodbye to, and the growers are told', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  bo.dm('/leave');
  const question = await bo.chat.next((message) => message.text.includes('want to leave'));
  await bo.press(question, 'Leave');
  await bo.chat.next((message) => message.text.includes('You have left'));
  await ines.chat.next((message) => message.text.includes('Bo has left'));
});

test('who blocks the bot is written to no more, until they come back', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  bo.block();
  expect((await ines.chat.next((message) => message.text.includes('Bo'))).text).toContain(
    'cannot reach Bo any more',
  );
  bo.unblock();
  bo.dm('buckets ph 5.9');
  await bo.chat.next((message) => message.text.includes('5.9'));
});

test('a group is tied by its grower’s word and by nobody else’s', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  await house.settle([ines], [bo]);
  await house.start();
  const group = emulator.world.group({ title: 'Family', owner: bo, members: [ines] });
  const hello = await group.next((message) => message.text.includes('whom this group belongs to'));
  expect(await bo.press(hello, 'This is our group')).toMatchObject({
    kind: 'answered',
    text: 'Only a grower can say so.',
  });
  group.say(ines, `@${emulator.username} our group`);
  const tied = await group.next((message) => message.text.includes('Quarry Lane'));
  expect(tied.text).toContain('I see replies to me');
  group.say(bo, `@${emulator.username} buckets ph 5.8`);
  await group.next((message) => message.text.includes('5.8'));
  const guest = emulator.world.user({ name: 'Guest' });
  group.add(guest, bo);
  group.say(guest, `@${emulator.username} what needs doing`);
  expect((await group.next()).text).toContain('one household only');
});

test('the button ties a group as well', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  await house.settle([ines], []);
  await house.start();
  const group = emulator.world.group({ title: 'Family', owner: ines });
  const hello = await group.next((message) => message.buttons.length > 0);
  await ines.press(hello, 'This is our group');
  await group.next((message) => message.text.includes('now belongs to Quarry Lane'));
});

test('one bot keeps two greenhouses apart', async ({ emulator, house }) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const ada = emulator.world.user({ name: 'Ada' });
  const quarry = await house.settle([ines], []);
  const hollow = await house.settle([ada], [], [], 'Hollow Oak');
  await house.start();
  ada.chat.catchUp();
  ada.dm('buckets ph 6.1');
  const receipt = await ada.chat.next(
    (message) => message.buttons.length > 0 && message.text.includes('6.1'),
  );
  expect((await house.desk.standing(hollow)).logbook.all).toHaveLength(1);
  expect((await house.desk.standing(quarry)).logbook.all).toHaveLength(0);
  // A button of one greenhouse's message does nothing for a member of the other.
  expect(await ines.press(receipt, 'Undo')).toMatchObject({
    kind: 'answered',
    text: 'This button is meant for somebody else.',
  });
  ada.dm('invite a helper');
  const invitation = await ada.chat.next((message) => link.test(message.text));
  ines.start(link.exec(invitation.text)![1]);
  const welcome = await ines.chat.next((message) => message.text.includes('Welcome'));
  expect(welcome.text.startsWith('Hollow Oak\n')).toBe(true);
  ines.dm('buckets ph 6.0');
  await ines.chat.next((message) => message.text.includes('6.0'));
  expect((await house.desk.standing(hollow)).logbook.all).toHaveLength(2);
  ines.dm('Quarry Lane');
  await ines.chat.next((message) => message.text.includes('are for Quarry Lane'));
  ines.dm('buckets ph 5.6');
  await ines.chat.next((message) => message.text.includes('5.6'));
  expect((await house.desk.standing(quarry)).logbook.all).toHaveLength(1);
});
