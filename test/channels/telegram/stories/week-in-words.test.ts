import { mkdtempSync, writeFileSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import type { Group } from '../../../telegram-emulator/members/group.ts';
import type { Member } from '../../../telegram-emulator/members/member.ts';
import type { MessageView } from '../../../telegram-emulator/members/message-view.ts';
import type { Mode } from '../running-bot.ts';
import { asks, ChildHouse, hears, isRound, sees, ties } from './child-house.ts';
import { type FamilyWords, familyWords } from './family-words.ts';

// A program is started, stopped and started again; a loaded machine takes its time.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const closing: (() => Promise<unknown>)[] = [];
afterEach(async () => {
  for (const close of closing.splice(0).toReversed()) await close();
});

interface Family {
  readonly house: ChildHouse;
  readonly ines: Member;
  readonly bo: Member;
  readonly uwe: Member;
  readonly group: Group;
}

/** The family comes in: the grower by the printed code, the others by links, and their group. */
async function moveIn(words: FamilyWords, mode: Mode): Promise<Family> {
  const folder = mkdtempSync(join(tmpdir(), 'brimkeeper-week-'));
  closing.push(() => rm(folder, { recursive: true }));
  const file = join(folder, 'greenhouse.json');
  writeFileSync(file, JSON.stringify(words.greenhouse));
  const house = await ChildHouse.open(mode, { BRIMKEEPER_GREENHOUSE: file });
  closing.push(() => house.close());
  await house.bot.start();
  const { language, invite } = words;
  const ines = await house.grower('Ines', language);
  const bo = await house.helper(ines, 'Bo', language, invite);
  const uwe = await house.helper(ines, 'Uwe', language, invite);
  const group = house.emulator.world.group({ title: 'Family', owner: ines, members: [bo, uwe] });
  await ties(group, ines);
  return { house, ines, bo, uwe, group };
}

async function roundOf({ house, group }: Family): Promise<MessageView> {
  await house.advanceTo('07:05', 'Europe/Dublin');
  return sees(group, isRound);
}

async function tick(group: Group, who: Member, round: MessageView): Promise<void> {
  const now = await group.shows(({ id }) => id === round.id);
  await who.press(now, now.buttons.find((row) => row.length > 1)![0]!);
  await sees(group, ({ id, edited, text }) => id === round.id && edited && text.includes(who.name));
}

const played = familyWords.flatMap((words) =>
  (['polling', 'webhook'] as const).map((mode) => ({ words, mode, language: words.language })),
);

it.each(played)(
  'a family’s week in its own language ($language), by $mode',
  async ({ words, mode }) => {
    const family = await moveIn(words, mode);
    const { house, ines, bo, uwe, group } = family;
    const { username } = house.emulator;

    // Monday: a reading with a slip that is put right by editing, and a top-up with typos.
    const first = await roundOf(family);
    await tick(group, bo, first);
    const said = bo.dm(words.reading);
    await hears(bo, ({ replyTo }) => replyTo === said.id);
    bo.edit(said, words.readingEdited);
    await hears(bo, ({ text }) => words.correction.test(text));
    group.say(uwe, `@${username} ${words.topUp}`);
    await sees(group, ({ text }) => words.toppedUp.test(text));

    // Tuesday: what cannot be is asked about, and nothing is logged of it.
    const second = await roundOf(family);
    await tick(group, uwe, second);
    const question = await asks(uwe, words.doubtful);
    expect(question.text).toMatch(words.doubt);
    const left = hears(uwe, ({ id }) => id !== question.id);
    await uwe.press(question, question.buttons.flat().at(-1)!);
    await left;
    expect((await asks(ines, words.howLong)).text).toMatch(words.lasts);

    // Wednesday: somebody cannot, and says why.
    const third = await roundOf(family);
    const asked = sees(group, ({ id, edited }) => id !== third.id && !edited);
    await bo.press(third, third.buttons.find((row) => row.length > 1)![1]!);
    group.say(bo, words.whyNot, { replyTo: await asked });
    await sees(group, ({ id, text }) => id === third.id && text.includes(words.whyNot));

    // Thursday: a picture, and something logged and taken back.
    await roundOf(family);
    const shown = await asks(ines, words.show);
    expect(shown.text).toMatch(words.shown);
    expect(shown.photo?.length).toBeGreaterThan(10_000);
    await asks(ines, words.reading);
    expect((await asks(ines, words.undo)).text).toMatch(words.undone);
    expect((await asks(ines, words.who)).text).toContain('Uwe');

    // Friday: one leaves the household by the grower's word.
    await roundOf(family);
    const told = hears(uwe, ({ text }) => words.takenOut.test(text));
    expect((await asks(ines, words.remove)).text).toMatch(words.removed);
    await told;

    // One list a morning; and the logbook holds just what was done, whatever the language.
    expect(group.fromBot.filter(({ entities }) => entities[0]?.type === 'bold')).toHaveLength(5);
    expect(await house.bot.stop()).toBeLessThan(10_000);
    const logged = (await house.logged()).map(
      ({ quantity, value, source, note }) =>
        `${source.kind === 'member' ? source.handle : ''} ${quantity} ${note ?? value}`,
    );
    expect(logged.toSorted()).toEqual(
      [
        'bo duty-done 1',
        'bo ec 1.3',
        `bo duty-failed ${words.whyNot}`,
        'bo ph 5.8',
        'uwe duty-done 1',
        'uwe top-up 2',
      ].toSorted(),
    );
  },
);
