import { afterEach, expect, it, vi } from 'vitest';
import type { MessageView } from '../../../telegram-emulator/members/message-view.ts';
import type { Mode } from '../running-bot.ts';
import { asks, ChildHouse, hears, isRound, sees, ties } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

it.each<Mode>(['polling', 'webhook'])(
  'a family keeps the greenhouse for a week while the grower is away, by %s',
  async (mode) => {
    const house = await ChildHouse.open(mode);
    closing.push(() => house.close());
    const { world, username } = house.emulator;
    await house.bot.start();
    const ines = await house.grower('Ines');
    const bo = await house.helper(ines, 'Bo');
    const uwe = await house.helper(ines, 'Uwe', 'de');
    const group = world.group({ title: 'Family', owner: ines, members: [bo, uwe] });
    await ties(group, ines);
    // Whenever the test is run, a round is over, and the next is that of tomorrow.
    await house.advanceTo('06:59');
    await house.advanceTo('12:00');
    await Promise.all([sees(group, isRound), hears(ines, isRound)]);

    // She goes away, and says who goes in her place.
    let plan = await asks(ines, "I'm away from tomorrow for a week");
    for (let step = 0; step < 4 && plan.buttons.length > 0; step += 1) {
      const said = hears(ines, ({ id }) => id !== plan.id);
      await ines.press(plan, plan.buttons.flat()[0]!);
      plan = await said;
    }
    for (let day = 0; day < 6; day += 1) {
      await house.advanceTo('07:05');
      const round = await sees(group, isRound);
      const who = day % 2 === 0 ? bo : uwe;
      const [done, cannot] = round.buttons[0]!;
      if (day === 3) {
        // Somebody cannot: the reason stands in the list.
        const question = sees(group, ({ id, edited }) => id !== round.id && !edited);
        await who.press(round, cannot!);
        group.say(who, 'der Deckel klemmt', { replyTo: await question });
        await sees(group, ({ id, text }) => id === round.id && text.includes('Deckel klemmt'));
        continue;
      }
      expect(await who.press(round, done!)).toMatchObject({ kind: 'answered' });
      const ticked = await sees(group, ({ id, edited }) => id === round.id && edited);
      expect(ticked.text).toContain(who.name);
      // What a helper reports in passing goes into the log, typos and all.
      if (day === 1) expect((await asks(uwe, 'gutter run pH 5,9')).text).toContain('5,9');
      if (day === 2) {
        group.say(bo, `@${username} jsut topped up teh jars 2 l`);
        expect((await sees(group, ({ text }) => text.includes('2 L'))).text).toContain('Jar shelf');
      }
    }
    // Her chat stayed quiet: no list with buttons while she was away.
    const lists = group.fromBot.filter(isRoundNow).slice(1);
    const awayFrom = lists[0]!.sentAt;
    const toInes = ines.chat.fromBot.filter(({ sentAt }) => sentAt >= awayFrom);
    expect(toInes.filter(({ buttons }) => buttons.length > 1)).toEqual([]);
    // One list a morning, in the group and with whoever goes, and never one message a duty.
    expect(lists).toHaveLength(6);
    for (const { chat } of [bo, uwe]) {
      const own = chat.fromBot.filter(isRoundNow).filter(({ sentAt }) => sentAt >= awayFrom);
      expect(own.length).toBeLessThanOrEqual(6);
    }

    await house.advanceTo('19:00');
    const story = await asks(ines, "I'm back");
    expect(story.text).toMatch(/Bo/u);
    expect(story.text).toMatch(/Uwe/u);
    expect(await house.bot.stop()).toBeLessThan(10_000);
    const done = (await house.logged()).map(({ quantity, source }) => [
      quantity,
      source.kind === 'member' ? source.handle : 'sensor',
    ]);
    expect(done.filter(([quantity]) => quantity === 'duty-done')).toHaveLength(5);
    expect(done.filter(([quantity]) => quantity === 'duty-failed')).toEqual([
      ['duty-failed', 'uwe'],
    ]);
    expect(done).toContainEqual(['ph', 'uwe']);
    expect(done).toContainEqual(['top-up', 'bo']);
  },
);

function isRoundNow({ entities, buttons }: MessageView): boolean {
  return entities[0]?.type === 'bold' && buttons.length > 0;
}
