import { afterEach, expect, it } from 'vitest';
import { startEmulator } from '../../telegram-emulator/emulator.ts';
import type { MessageView } from '../../telegram-emulator/members/message-view.ts';
import { freePort, type Mode } from './running-bot.ts';
import { SmallHouse } from './small-house.ts';

const dayMs = 86_400_000;
const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

const isRound = (message: MessageView): boolean => !message.edited && message.buttons.length > 1;

async function familyHouse(mode: Mode) {
  const emulator = await startEmulator();
  closing.push(() => emulator.stop());
  const port = await freePort();
  const hook = { url: `http://127.0.0.1:${port}/hook`, secret: 'hush', host: '127.0.0.1', port };
  const house = await SmallHouse.open(mode === 'webhook' ? { emulator, hook } : { emulator });
  closing.push(() => house.close());
  const ines = emulator.world.user({ name: 'Ines' });
  const bo = emulator.world.user({ name: 'Bo' });
  const ada = emulator.world.user({ name: 'Ada' });
  const group = emulator.world.group({ title: 'Family', owner: ines, members: [bo, ada] });
  await house.settle([ines], [bo, ada], [group]);
  await house.start();
  for (const { chat } of [ines, bo, ada]) chat.catchUp();
  return { emulator, house, ines, bo, ada, group };
}

it.each<Mode>(['polling', 'webhook'])(
  'a family keeps the greenhouse for a week while the grower is away, by %s',
  async (mode) => {
    const { house, ines, bo, ada, group } = await familyHouse(mode);
    ines.dm("I'm away for a week from today");
    await ines.chat.next((message) => message.byBot && message.replyTo !== undefined);
    for (let day = 0; day < 6; day += 1) {
      await house.tick();
      const round = await group.next(isRound, 10_000);
      const label = round.keys[0]!.text;
      await (day % 2 === 0 ? bo : ada).press(round, label);
      const ticked = await group.next(({ edited, id }) => edited && id === round.id);
      expect(ticked.text).toContain(day % 2 === 0 ? 'Bo' : 'Ada');
      house.advance(dayMs);
    }
    const rounds = group.fromBot.filter(({ text }) => /to do|all done|left/u.test(text));
    expect(rounds).toHaveLength(6);
    // Whoever's turn it is has the list in private too; who is away is asked for nothing.
    const mornings = (member: typeof bo) =>
      member.chat.fromBot.filter(({ text }) => text.includes('was not running at 07:00')).length;
    expect([mornings(bo), mornings(ada)]).toEqual([3, 3]);
    const toldInes = ines.chat.fromBot.filter(({ text }) => text.includes('sees to it'));
    expect(toldInes.map(({ buttons }) => buttons.length)).toEqual([0, 0, 0, 0, 0, 0]);
    const [id] = (await house.store.greenhouses()).map((each) => each.id);
    const { all } = (await house.desk.standing(id!)).logbook;
    const done = all.filter(({ quantity }) => quantity === 'duty-done');
    expect(done).toHaveLength(6);
    expect(new Set(done.map(({ source }) => source.kind === 'member' && source.handle))).toEqual(
      new Set(['bo', 'ada']),
    );
  },
);
