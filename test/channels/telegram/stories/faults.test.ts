import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Member } from '../../../telegram-emulator/members/member.ts';
import {
  badGateway,
  dropAfter,
  dropBefore,
  flooded,
  hang,
  refused,
  serverError,
} from '../../../telegram-emulator/state/fault.ts';
import { type Mode, RunningBot } from '../running-bot.ts';
import { asks, ChildHouse, hears, sees, ties } from './child-house.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const hourMs = 3_600_000;

describe.each<Mode>(['polling', 'webhook'])('what can go wrong, by %s', (mode) => {
  let house: ChildHouse;
  let ines: Member;
  let bo: Member;
  beforeAll(async () => {
    house = await ChildHouse.open(mode, {
      LOG_LEVEL: 'debug',
      TEST_LONG_TIMERS_SHORTENED_BY: '30',
    });
    await house.bot.start();
    ines = await house.grower('Ines');
    bo = await house.helper(ines, 'Bo');
  });
  afterAll(() => house.close());

  const toBo = {
    method: 'sendMessage',
    where: (sent: { chat_id?: unknown }) => sent.chat_id === bo.id,
  };
  const copies = (value: string) =>
    bo.chat.fromBot.filter(({ text, replyTo }) => replyTo !== undefined && text.includes(value));

  it('429, 500 and a gateway’s page are waited out, and the chat keeps its order', async () => {
    const { faults, calls } = house.emulator;
    faults.arm(flooded(2), toBo);
    faults.arm(serverError(), toBo);
    faults.arm(badGateway(), toBo);
    const fromMs = calls.of('sendMessage').length;
    const said = ['5.3', '5.4', '5.6', '5.7'].map((value) => bo.dm(`buckets ph ${value}`));
    const answered: (number | undefined)[] = [];
    while (answered.length < said.length) {
      answered.push((await hears(bo, ({ replyTo }) => replyTo !== undefined)).replyTo);
    }
    expect(answered).toEqual(said.map(({ id }) => id));
    const tries = calls
      .of('sendMessage')
      .slice(fromMs)
      .filter(({ payload }) => payload['chat_id'] === bo.id);
    expect(tries[1]!.startedMs - tries[0]!.startedMs).toBeGreaterThanOrEqual(2000);
  });

  it('a connection that breaks before is tried again, and nothing comes twice', async () => {
    house.emulator.faults.arm(dropBefore(), toBo);
    await asks(bo, 'buckets ph 5.81');
    await asks(bo, 'what was the last ph of the buckets');
    expect(copies('Logged for Bucket row: pH 5.81')).toHaveLength(1);
  });

  it('a message whose answer was lost goes out once more and no more, and the grower hears', async () => {
    const armed = house.emulator.faults.arm(dropAfter(), { ...toBo, times: 5 });
    bo.dm('buckets ph 5.92');
    await hears(ines, ({ text }) => text.includes('do not know whether my message reached Bo'));
    expect(copies('5.92')).toHaveLength(2);
    armed.lift();
  });

  it('a 400 is final, and its reason is told to the grower', async () => {
    house.emulator.faults.arm(refused(400, 'Bad Request: message text is empty'), toBo);
    bo.dm('buckets ph 5.83');
    await hears(ines, ({ text }) => text.includes('message text is empty'));
    await asks(bo, 'buckets ph 5.84');
  });

  it('a picture comes as a photo with its caption, sent again where that breaks', async () => {
    await asks(bo, 'topped up the buckets 12 l');
    house.emulator.faults.arm(dropBefore(), { method: 'sendPhoto' });
    const shown = await asks(bo, 'show me the buckets');
    expect(shown.photo?.length).toBeGreaterThan(10_000);
    expect(shown.text).toContain('Bucket row: about');
    const reply = hears(bo, ({ photo, id }) => photo !== undefined && id !== shown.id);
    await bo.press(shown, shown.buttons.flat()[0]!);
    expect((await reply).text).toContain('Bucket row since');
  });

  it('a group that becomes a supergroup is followed, told of it or not', async () => {
    const { world, username } = house.emulator;
    const group = world.group({ title: 'Family', owner: ines, members: [bo] });
    await ties(group, ines);
    const told = group.upgrade();
    told.say(bo, `@${username} buckets ph 5.61`);
    await sees(told, ({ text }) => text.includes('5.61'));
    const second = world.group({ title: 'Second', owner: ines, members: [bo] });
    await ties(second, ines);
    const silent = second.upgrade({ silently: true });
    await house.advanceTo('07:05');
    const round = await sees(silent, ({ buttons }) => buttons.length > 1);
    await bo.press(round, round.buttons.flat()[0]!);
    await sees(silent, ({ id, edited, text }) => id === round.id && edited && text.includes('Bo'));
  });

  it('a receipt stays in the topic of its message', async () => {
    const { world, username } = house.emulator;
    const forum = world.group({ title: 'Forum', owner: ines, members: [bo], topics: true });
    await ties(forum, ines);
    const topic = forum.openTopic('Greenhouse');
    const said = forum.say(bo, `@${username} buckets ph 5.62`, { topic });
    const receipt = await sees(forum, ({ text }) => text.includes('5.62'));
    expect(receipt).toMatchObject({ topic: topic.id, replyTo: said.id });
  });

  it('an old button, and one under a message that is gone, are answered', async () => {
    const receipt = await asks(bo, 'buckets ph 5.63');
    await bo.press(receipt, 'Undo');
    expect(await bo.press(receipt, 'Undo')).toMatchObject({ kind: 'answered' });
    const other = await asks(bo, 'buckets ph 5.64');
    bo.remove(other);
    expect(await bo.press(other, 'Undo')).toMatchObject({ kind: 'answered' });
    await hears(bo, ({ text }) => text.includes('Struck out') && text.includes('5.64'));
  });

  it.runIf(mode === 'webhook')(
    'what does not carry the secret, or is too large, is refused',
    async () => {
      const { hookUrl } = house.bot;
      const post = async (body: string, secret?: string) => {
        const headers = {
          'content-type': 'application/json',
          ...(secret === undefined ? {} : { 'x-telegram-bot-api-secret-token': secret }),
        };
        return (await fetch(hookUrl!, { method: 'POST', body, headers })).status;
      };
      const update = JSON.stringify({ update_id: 1, message: { text: 'buckets ph 9' } });
      expect((await fetch(hookUrl!)).status).toBe(404);
      expect(await post(update)).toBe(401);
      expect(await post(update, 'hush-hush!')).toBe(401);
      expect(await post(JSON.stringify({ filler: 'x'.repeat(600_000) }), 'hush-hush')).toBe(413);
      expect(await post('no json', 'hush-hush')).toBe(400);
    },
  );

  it.runIf(mode === 'polling')('a request that hangs is given up, and asked again', async () => {
    house.emulator.faults.arm(hang(), { method: 'getUpdates' });
    expect((await asks(bo, 'buckets ph 5.65')).text).toContain('5.65');
  });

  it.runIf(mode === 'polling')('a second process with the same token is explained', async () => {
    const second = new RunningBot({ emulator: house.emulator, mode });
    await second.start();
    await expect
      .poll(() => `${house.bot.output}${second.output}`, { timeout: 45_000 })
      .toContain('Another process asks for the updates of this bot');
    await second.dispose();
  });

  it('an account that is gone is noticed at the next message', async () => {
    const ada = await house.helper(ines, 'Ada');
    ada.dm('buckets ph 5.66');
    ada.deactivate();
    await hears(ines, ({ text }) => text.includes('Ada') && text.includes('account'));
  });

  it('after a day of silence it says that messages may have been lost', async () => {
    const tookMs = await house.bot.stop();
    expect(tookMs).toBeLessThan(10_000);
    await house.advance(30 * hourMs);
    await house.bot.start();
    const told = await hears(ines, ({ text }) => text.includes('lost'));
    expect(told.text).toMatch(/out of reach for \d+ hours/u);
    expect(bo.chat.fromBot.some(({ text }) => text.includes('may be lost'))).toBe(false);
  });

  it('has the token in no log, after all this', () => {
    const [, secret] = house.emulator.token.split(':');
    expect(house.bot.output).toMatch(/not delivered/u);
    expect(house.bot.output).not.toContain(secret);
  });
});
