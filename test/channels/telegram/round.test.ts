import { expect } from 'vitest';
import type { Emulator } from '../../telegram-emulator/emulator.ts';
import type { Group } from '../../telegram-emulator/members/group.ts';
import type { Member } from '../../telegram-emulator/members/member.ts';
import type { MessageView } from '../../telegram-emulator/members/message-view.ts';
import { test } from './in-a-house.ts';
import type { SmallHouse } from './small-house.ts';

interface Morning {
  readonly ines: Member;
  readonly bo: Member;
  readonly group: Group;
  readonly round: MessageView;
}

/** A family with a group, on the morning of a round. */
async function morning(emulator: Emulator, house: SmallHouse): Promise<Morning> {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  const group = emulator.world.group({ title: 'Family', owner: ines, members: [bo] });
  await house.settle([ines], [bo], [group]);
  await house.start();
  ines.chat.catchUp();
  await house.tick();
  const round = await group.next((message) => message.buttons.length > 1);
  return { ines, bo, group, round };
}

const labels = (message: MessageView): readonly string[] =>
  message.buttons.map(([first]) => first!);

test('the round is one message with a row of buttons a duty', async ({ emulator, house }) => {
  const { group, ines, round } = await morning(emulator, house);
  expect(round.buttons.every((row) => row.length === 2)).toBe(true);
  const own = await ines.chat.next((message) => message.buttons.length > 1);
  expect(own.buttons).toEqual(round.buttons);
  expect(group.fromBot).toHaveLength(1);
  expect(round.entities[0]).toMatchObject({ type: 'bold', offset: 0 });
});

test('ticking off changes the one list for everybody, with no message a duty', async ({
  emulator,
  house,
}) => {
  const { bo, group, ines, round } = await morning(emulator, house);
  const [first] = labels(round);
  const answer = await bo.press(round, first!);
  expect(answer).toMatchObject({ kind: 'answered' });
  expect(answer.kind === 'answered' && answer.text).toBeTruthy();
  const ticked = await group.next((message) => message.edited);
  expect(ticked.id).toBe(round.id);
  expect(ticked.text).toContain('Bo');
  expect(labels(ticked)[0]).toMatch(/^Undo: /u);
  const own = await ines.chat.next((message) => message.edited);
  expect(own.text).toBe(ticked.text);
  expect(group.fromBot).toHaveLength(1);
});

test('a duty told in words leaves the list as well', async ({ emulator, house }) => {
  const { bo, group, round } = await morning(emulator, house);
  bo.dm('topped up the north bench 40 l');
  const changed = await group.next((message) => message.edited);
  expect(changed.buttons.length).toBeLessThan(round.buttons.length);
});

test('two at once and a press too many change nothing twice', async ({ emulator, house }) => {
  const { bo, ines, group, round } = await morning(emulator, house);
  const [first] = labels(round);
  await Promise.all([bo.press(round, first!), ines.press(round, first!)]);
  await group.next((message) => message.edited);
  await bo.press(round, first!);
  const [id] = (await house.store.greenhouses()).map((each) => each.id);
  const { all } = (await house.desk.standing(id!)).logbook;
  expect(all.filter(({ quantity }) => quantity === 'duty-done')).toHaveLength(1);
});

test('a tick can be taken back under the list', async ({ emulator, house }) => {
  const { bo, group, round } = await morning(emulator, house);
  await bo.press(round, labels(round)[0]!);
  const ticked = await group.next((message) => message.edited);
  await bo.press(ticked, labels(ticked)[0]!);
  const open = await group.next((message) => message.edited);
  expect(open.buttons).toEqual(round.buttons);
});

test('can’t is asked why, and the reason stands in the list', async ({ emulator, house }) => {
  const { bo, group, round } = await morning(emulator, house);
  const cannot = round.keys[1]!.text;
  await bo.press({ ...round, keys: [round.keys[1]!] }, cannot);
  const question = await group.next((message) => !message.edited);
  expect(question.buttons).toHaveLength(1);
  const why = group.say(bo, 'the lid is stuck', { replyTo: question });
  const marked = await group.next((message) => message.text.includes('lid is stuck'));
  expect(marked.id).toBe(round.id);
  await group.shows((message) => message.id === why.id && message.reactions.includes('👍'));
  const [id] = (await house.store.greenhouses()).map((each) => each.id);
  const { all } = (await house.desk.standing(id!)).logbook;
  expect(all.filter(({ struck }) => !struck)).toMatchObject([
    { quantity: 'duty-failed', note: 'the lid is stuck' },
  ]);
});

test('a button of days ago is answered kindly', async ({ emulator, house }) => {
  const { bo, group, round } = await morning(emulator, house);
  house.advance(3 * 86_400_000);
  await house.tick();
  await group.next((message) => message.id !== round.id && message.buttons.length > 1);
  expect((await bo.press(round, labels(round)[0]!)).kind).toBe('answered');
});

test('talk among people is left alone, with privacy mode off', async ({ emulator, house }) => {
  emulator.world.setPrivacy(false);
  const { bo, group, ines } = await morning(emulator, house);
  group.say(ines, 'what shall we have for dinner?');
  group.say(bo, 'thanks, that was lovely');
  group.say(bo, 'buckets ph 5.9');
  const receipt = await group.next((message) => message.replyTo !== undefined);
  expect(receipt.text).toContain('5.9');
});
