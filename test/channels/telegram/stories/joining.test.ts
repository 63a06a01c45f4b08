import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Member } from '../../../telegram-emulator/members/member.ts';
import { settledHousehold } from '../household.ts';
import type { Mode } from '../running-bot.ts';
import { asks, ChildHouse, hears, invitation, sees } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const dayMs = 86_400_000;

describe.each<Mode>(['polling', 'webhook'])('coming and going, by %s', (mode) => {
  let house: ChildHouse;
  let ines: Member;
  let bo: Member;
  beforeAll(async () => {
    house = await ChildHouse.open(mode);
    await house.bot.start();
  });
  afterAll(() => house.close());

  it('a stranger gets one polite line and learns nothing', async () => {
    const { emulator } = house;
    const sven = emulator.world.user({ name: 'Sven', language: 'de' });
    sven.start();
    const line = await hears(sven, () => true);
    expect(line.text).toContain('nur für einen Haushalt');
    sven.dm('was ist zu tun');
    sven.dm('buckets ph 5.9');
    sven.start('nosuchcode');
    await hears(sven, ({ text }) => text.includes('gilt nicht'));
    expect(sven.chat.fromBot).toHaveLength(2);
    expect(sven.chat.fromBot.map(({ text }) => text).join()).not.toMatch(/quarry|bench|ines/iu);
  });

  it('the printed code lets the grower in, once', async () => {
    ines = await house.grower('Ines');
    const thief = house.emulator.world.user({ name: 'Thief' });
    thief.dm(await house.bot.claimCode());
    expect((await hears(thief, () => true)).text).toContain('not valid');
    thief.dm('what needs doing');
    expect((await hears(thief, () => true)).text).toContain('one household only');
  });

  it('a link lets one helper in, in their language, and nobody after', async () => {
    const code = await invitation(ines);
    bo = house.emulator.world.user({ name: '😈 </b>"Bo"', language: 'de' });
    bo.start(code);
    expect((await hears(bo, () => true)).text).toContain('Willkommen');
    expect((await hears(ines, ({ text }) => text.includes('has joined'))).text).toContain(bo.name);
    const late = house.emulator.world.user({ name: 'Late' });
    late.start(code);
    expect((await hears(late, () => true)).text).toContain('not valid');
    expect((await asks(bo, 'lade jemanden ein')).text).toContain('Ines');
    expect((await asks(bo, 'buckets ph 5,9')).text).toContain('5,9');
  });

  it('a link of eight days ago is void', async () => {
    const code = await invitation(ines);
    await house.advance(8 * dayMs);
    const tardy = house.emulator.world.user({ name: 'Tardy' });
    tardy.start(code);
    expect((await hears(tardy, () => true)).text).toContain('not valid');
  });

  it('a group is tied by its grower’s word and by nobody else’s', async () => {
    const { emulator } = house;
    const group = emulator.world.group({ title: 'Family', owner: bo, members: [ines] });
    const hello = await sees(group, ({ buttons }) => buttons.length > 0);
    const [button] = hello.buttons.flat();
    expect(await bo.press(hello, button!)).toMatchObject({ kind: 'answered' });
    const tied = sees(group, ({ text }) => text.includes('now belongs to Quarry Lane'));
    await ines.press(hello, button!);
    expect((await tied).text).toContain('I see replies to me');
    const guest = emulator.world.user({ name: 'Guest' });
    group.add(guest, bo);
    group.say(guest, `@${emulator.username} what needs doing`);
    expect((await sees(group, () => true)).text).toContain('one household only');
    group.kickBot();
    const told = await hears(ines, ({ text }) => text.includes('Family'));
    expect(told.text).toContain('cannot reach');
    group.addBot();
  });

  it('who blocks the bot is told of, and written to again when they are back', async () => {
    bo.block();
    await hears(ines, ({ text }) => text.includes('cannot reach') && text.includes('Bo'));
    bo.unblock();
    expect((await asks(bo, 'buckets ph 5,8')).text).toContain('5,8');
  });

  it('who leaves is asked once, and the grower is told', async () => {
    bo.dm('/leave');
    const question = await hears(bo, ({ buttons }) => buttons.length > 0);
    await bo.press(question, question.buttons.flat()[0]!);
    await hears(ines, ({ text }) => text.includes('has left'));
    bo.dm('was ist zu tun');
    expect((await hears(bo, ({ text }) => text.includes('Haushalt'))).text).toContain('nur für');
  });
});

describe.each<Mode>(['polling', 'webhook'])('two greenhouses in one bot, by %s', (mode) => {
  it('keeps their people, buttons and logbooks apart', async () => {
    const house = await ChildHouse.open(mode);
    const { emulator, bot } = house;
    const ines = emulator.world.user({ name: 'Ines' });
    const ada = emulator.world.user({ name: 'Ada' });
    const createdAtMs = Date.now() - 60_000;
    const [quarry, hollow] = await house.inStore(async (store) => [
      await settledHousehold(store, [{ person: ines, role: 'grower' }], { createdAtMs }),
      await settledHousehold(store, [{ person: ada, role: 'grower' }], {
        createdAtMs,
        name: 'Hollow Oak',
      }),
    ]);
    await bot.start();
    const receipt = await asks(ada, 'buckets ph 6.1');
    expect(await ines.press(receipt, 'Undo')).toMatchObject({
      kind: 'answered',
      text: 'This button is meant for somebody else.',
    });
    ines.start(await invitation(ada));
    const welcome = await hears(ines, ({ text }) => text.includes('Welcome'));
    expect(welcome.text.startsWith('Hollow Oak\n')).toBe(true);
    await asks(ines, 'buckets ph 6.0');
    expect((await asks(ines, 'Quarry Lane')).text).toContain('are for Quarry Lane');
    await asks(ines, 'buckets ph 5.6');
    await bot.stop();
    const values = async (id: typeof quarry) => (await house.logged(id)).map(({ value }) => value);
    expect([await values(quarry), await values(hollow)]).toEqual([[5.6], [6.1, 6]]);
    await house.close();
  });
});
