import { expect } from 'vitest';
import type { Emulator } from '../../telegram-emulator/emulator.ts';
import type { Member } from '../../telegram-emulator/members/member.ts';
import { flooded, refused, slow } from '../../telegram-emulator/state/fault.ts';
import { test } from './in-a-house.ts';
import type { SmallHouse } from './small-house.ts';

/** The codes with which messages to somebody were refused. */
function refusedTo(emulator: Emulator, { id }: Member): readonly number[] {
  return emulator.calls
    .of('sendMessage')
    .flatMap(({ payload, outcome }) =>
      payload['chat_id'] === id && outcome?.kind === 'refused' ? [outcome.code] : [],
    );
}

/** A grower and two helpers, who have all had this morning's round. */
async function settled(emulator: Emulator, house: SmallHouse) {
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  const cleo = emulator.world.user({ name: 'Cleo' });
  await house.settle([ines], [bo, cleo]);
  await house.start();
  await house.tick();
  const everyone = [ines, bo, cleo];
  await expect.poll(() => everyone.every(({ chat }) => chat.fromBot.length > 0)).toBe(true);
  for (const { chat } of everyone) chat.catchUp();
  const warnings = () =>
    ines.chat.fromBot.filter(({ text }) => text.includes('cannot reach Bo any more'));
  return { ines, bo, cleo, warnings };
}

test('what waits for somebody who blocks the bot is given up, and the grower is told once', async ({
  emulator,
  house,
}) => {
  const { ines, bo, cleo, warnings } = await settled(emulator, house);
  emulator.faults.arm(flooded(5), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === bo.id,
  });
  for (const value of ['5.51', '5.52', '5.53']) bo.dm(`buckets ph ${value}`);
  await expect.poll(() => refusedTo(emulator, bo)).toEqual([429]);
  bo.block();
  await ines.chat.next(({ text }) => text.includes('cannot reach Bo any more'));
  // The others are answered as ever, past the wait that was asked for.
  await new Promise((resolve) => setTimeout(resolve, 5500));
  cleo.dm('jars ph 5.91');
  await cleo.chat.next(({ text }) => text.includes('5.91'));
  bo.unblock();
  bo.dm('buckets ph 5.6');
  expect((await bo.chat.next()).text).toContain('5.6');
  expect(bo.chat.fromBot.filter(({ text }) => /5\.5[123]/u.test(text))).toEqual([]);
  // What he said before is in the logbook all the same.
  const [id] = (await house.store.greenhouses()).map((each) => each.id);
  const values = (await house.desk.standing(id!)).logbook.all.map(({ value }) => value);
  expect(values).toEqual([5.51, 5.52, 5.53, 5.91, 5.6]);
  expect(warnings()).toHaveLength(1);
  expect(refusedTo(emulator, bo)).toEqual([429]);
});

test('a message that crosses the blocking is refused, and the word of it that comes later warns nobody again', async ({
  emulator,
  house,
}) => {
  const { ines, bo, warnings } = await settled(emulator, house);
  const where = ({ chat_id }: Readonly<Record<string, unknown>>) => chat_id === bo.id;
  emulator.faults.arm(flooded(5), { method: 'sendMessage', where });
  // The word that somebody blocked the bot comes only after the receipt was refused.
  emulator.faults.arm(slow(12_000), { method: 'getUpdates' });
  bo.dm('buckets ph 5.51');
  await expect.poll(() => refusedTo(emulator, bo)).toEqual([429]);
  bo.block();
  await ines.chat.next(({ text }) => text.includes('cannot reach Bo any more'));
  expect(refusedTo(emulator, bo)).toEqual([429, 403]);
  await emulator.drained();
  ines.dm('buckets ph 5.7');
  await ines.chat.next(({ text }) => text.includes('5.7'));
  expect(warnings()).toHaveLength(1);
  expect(refusedTo(emulator, bo)).toEqual([429, 403]);
});

test('the plan leaves out who blocked the bot, and has them in again when they are back', async ({
  emulator,
  house,
}) => {
  const { ines, bo } = await settled(emulator, house);
  const asks = async (words: string) => {
    const said = ines.dm(words);
    return ines.chat.next(({ replyTo }) => replyTo === said.id);
  };
  const offered = async () => {
    const plan = await asks("I'm away from tomorrow for a week");
    const labels = plan.buttons.flat().join(' | ');
    expect(`${plan.text} ${labels}`).toContain('Cleo');
    return `${plan.text} ${labels}`;
  };
  expect(await offered()).toContain('Bo');
  bo.block();
  await ines.chat.next(({ text }) => text.includes('cannot reach Bo any more'));
  expect(await offered()).not.toContain('Bo');
  bo.start();
  await bo.chat.next();
  expect(await offered()).toContain('Bo');
});

test('who writes can be reached again, though nobody told the bot that they are back', async ({
  emulator,
  house,
}) => {
  const { ines, bo } = await settled(emulator, house);
  emulator.faults.arm(refused(403, 'Forbidden: bot was blocked by the user'), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === bo.id,
  });
  bo.dm('buckets ph 5.51');
  await ines.chat.next(({ text }) => text.includes('cannot reach Bo any more'));
  bo.dm('buckets ph 5.52');
  expect((await bo.chat.next()).text).toContain('5.52');
});

test('a group that put the bot out hears from it again when it is let in', async ({
  emulator,
  house,
}) => {
  const ines = emulator.world.user({ name: 'Ines' });
  const group = emulator.world.group({ owner: ines });
  await house.settle([ines], [], [group]);
  await house.start();
  emulator.faults.arm(refused(403, 'Forbidden: bot was kicked from the group chat'), {
    method: 'sendMessage',
    where: ({ chat_id }) => chat_id === group.id,
  });
  group.say(ines, `@${emulator.username} buckets ph 5.51`);
  await ines.chat.next(({ text }) => text.includes('cannot reach'));
  group.say(ines, `@${emulator.username} buckets ph 5.52`);
  await group.next(({ text }) => text.includes('5.52'));
});
