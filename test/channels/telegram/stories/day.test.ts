import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Group } from '../../../telegram-emulator/members/group.ts';
import type { Member } from '../../../telegram-emulator/members/member.ts';
import type { MessageView } from '../../../telegram-emulator/members/message-view.ts';
import type { Mode } from '../running-bot.ts';
import { asks, ChildHouse, hears, isRound, sees, ties } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const dayMs = 86_400_000;
describe.each<Mode>(['polling', 'webhook'])('an ordinary day, by %s', (mode) => {
  let house: ChildHouse;
  let ines: Member;
  let bo: Member;
  let uwe: Member;
  let group: Group;
  let round: MessageView;
  beforeAll(async () => {
    house = await ChildHouse.open(mode);
    await house.bot.start();
    ines = await house.grower('Ines');
    bo = await house.helper(ines, 'Bo');
    uwe = await house.helper(ines, 'Uwe', 'de');
    const { world } = house.emulator;
    group = world.group({ title: 'Family', owner: ines, members: [bo, uwe] });
    await ties(group, ines);
  });
  afterAll(() => house.close());

  it('the menus offer the commands of each chat, in each language', () => {
    const menu = (member: Member, chat: Member['chat'] = member.chat) =>
      member.menuIn(chat).map(({ command, description }) => `${command}: ${description}`);
    expect(menu(bo)).toHaveLength(6);
    expect(menu(bo)).toContain('leave: Leave the greenhouse');
    expect(menu(uwe)).toContain('leave: Aus dem Gewächshaus aussteigen');
    expect(menu(bo, group)).toEqual([
      'today: What needs doing',
      'undo: Take back what was logged last',
      'help: What I understand',
    ]);
    expect(menu(uwe, group)).toEqual([
      'today: Was zu tun ist',
      'undo: Das zuletzt Eingetragene zurücknehmen',
      'help: Was ich verstehe',
    ]);
  });

  it('an edited message corrects what it logged', async () => {
    const said = bo.dm('buckets ph 5.9');
    await hears(bo, ({ replyTo }) => replyTo === said.id);
    bo.edit(said, 'buckets ph 5.6');
    const corrected = await hears(bo, ({ text }) => text.includes('5.6'));
    expect(corrected.text).toContain('5.9');
    expect(corrected.replyTo).toBe(said.id);
    expect((await asks(bo, 'what was the last ph of the buckets')).text).toContain('5.6');
  });

  it('an edited message in the group corrects what it logged there', async () => {
    const { username } = house.emulator;
    const said = group.say(uwe, `@${username} gutter run EC 1,2`);
    await sees(group, ({ replyTo }) => replyTo === said.id);
    uwe.edit(said, `@${username} gutter run EC 1,3`);
    const corrected = await sees(group, ({ text }) => text.includes('1.3'));
    expect(corrected.text).toContain('1.2');
  });

  it('the morning round is one message, and ticking changes it', async () => {
    await house.advanceTo('07:05');
    round = await sees(group, isRound);
    const before = group.fromBot.length;
    const [first, second] = round.buttons.map(([tick]) => tick!);
    expect(round.buttons.length).toBeGreaterThan(1);
    expect(await bo.press(round, first!)).toMatchObject({ kind: 'answered' });
    const ticked = await sees(group, ({ id, edited }) => id === round.id && edited);
    expect(ticked.text).toContain('Bo');
    expect(await uwe.press(ticked, second!)).toMatchObject({ kind: 'answered' });
    const both = await sees(group, ({ id, text }) => id === round.id && text.includes('Uwe'));
    expect(both.text).toContain('Bo');
    expect(group.fromBot).toHaveLength(before);
  });

  it('a reason given for what could not be done gets a reaction and no message', async () => {
    const now = await group.shows(({ id }) => id === round.id);
    const cannot = now.buttons.flatMap((row) => row.slice(1)).at(-1)!;
    await bo.press(now, cannot);
    const question = await sees(group, ({ id, edited }) => id !== round.id && !edited);
    const before = group.fromBot.length;
    const why = group.say(bo, 'the lid is stuck', { replyTo: question });
    await sees(group, ({ id, text }) => id === round.id && text.includes('lid is stuck'));
    await group.shows(({ id, reactions }) => id === why.id && reactions.includes('👍'));
    expect(group.fromBot).toHaveLength(before);
  });

  it('a button of days ago, of another bot and of nobody’s are answered kindly', async () => {
    const receipt = await asks(bo, 'buckets ph 5.7');
    await house.advance(3 * dayMs);
    const old = await bo.press(round, round.buttons[0]![0]!);
    expect(old).toMatchObject({ kind: 'answered' });
    const says = async (callback_data: string): Promise<string> => {
      const pressed = { ...receipt, keys: [{ text: 'Tick', callback_data }] };
      const answer = await bo.press(pressed, 'Tick');
      return answer.kind === 'answered' ? (answer.text ?? '') : answer.kind;
    };
    expect(await says('vote:yes')).toContain('from earlier');
    expect(await says('1:99999.0')).toContain('no longer open');
    const sven = house.emulator.world.user({ name: 'Sven', language: 'de' });
    const answer = await sven.press(receipt, receipt.buttons[0]![0]!);
    expect(answer).toMatchObject({
      kind: 'answered',
      text: 'Dieser Knopf ist für jemand anderen.',
    });
    expect((await asks(bo, 'what was the last ph of the buckets')).text).toContain('5.7');
  });

  it('who is taken out by the grower is told so politely, and is out at once', async () => {
    const receipt = await asks(uwe, 'gutter run pH 5,8');
    const told = hears(uwe, ({ text }) => text.includes('Quarry Lane'));
    ines.dm('remove Uwe');
    expect((await hears(ines, ({ text }) => text.includes('is out'))).text).toContain('Uwe');
    expect((await told).text).toContain('Danke');
    expect(await uwe.press(receipt, receipt.buttons[0]![0]!)).toMatchObject({ kind: 'answered' });
    uwe.dm('gutter run pH 4,1');
    expect((await hears(uwe, () => true)).text).toContain('nur für einen Haushalt');
    group.say(uwe, `@${house.emulator.username} gutter run pH 4,2`);
    expect((await asks(bo, 'what was the last ph of the gutters')).text).toContain('5.8');
  });

  it('it stops in time while a request comes in, and loses and doubles nothing', async () => {
    const open = mode === 'webhook' ? await halfARequest(house.bot.hookUrl!) : null;
    const before = bo.chat.fromBot.length;
    const said = Array.from({ length: 30 }, (_, place) => bo.dm(`jars ec 1.${10 + place}`));
    await sees(bo.chat, ({ replyTo }) => said.some(({ id }) => id === replyTo));
    expect(await house.bot.stop()).toBeLessThan(10_000);
    open?.destroy();
    await house.bot.start();
    const receipts = () => bo.chat.fromBot.slice(before).map(({ replyTo }) => replyTo);
    await expect.poll(() => new Set(receipts()).size, { timeout: 60_000 }).toBe(said.length);
    expect(receipts()).toHaveLength(said.length);
    await house.bot.stop();
    const from = (await house.logged()).map(
      ({ source }) => source.kind === 'member' && source.messageId,
    );
    const ids = said.map(({ id }) => `m${bo.id}.${id}`);
    expect(from.filter((id) => id && ids.includes(id))).toEqual(ids);
  });
});

/** A request of the platform that has begun and goes on when it likes. */
async function halfARequest(url: string): Promise<ReturnType<typeof connect>> {
  const { hostname, port, pathname } = new URL(url);
  const socket = connect(Number(port), hostname);
  await new Promise((resolve) => socket.once('connect', resolve));
  socket.on('error', () => undefined);
  socket.write(
    [
      `POST ${pathname} HTTP/1.1`,
      `Host: ${hostname}:${port}`,
      'Content-Type: application/json',
      'X-Telegram-Bot-Api-Secret-Token: hush-hush',
      'Content-Length: 4000',
      '',
      '{"update_id":',
    ].join('\r\n'),
  );
  return socket;
}
