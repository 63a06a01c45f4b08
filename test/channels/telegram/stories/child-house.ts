import type { GreenhouseId, Store } from '../../../../src/assistant/ports/store.ts';
import type { Entry } from '../../../../src/greenhouse/entry.ts';
import { openEmbedded } from '../../../../src/storage/embedded/open-embedded.ts';
import { cacheFolder, migrationsFolder } from '../../../storage/folders.ts';
import { type Emulator, startEmulator } from '../../../telegram-emulator/emulator.ts';
import type { Fits } from '../../../telegram-emulator/members/chat.ts';
import type { Group } from '../../../telegram-emulator/members/group.ts';
import type { Member } from '../../../telegram-emulator/members/member.ts';
import type { MessageView } from '../../../telegram-emulator/members/message-view.ts';
import { type BotOptions, type Mode, RunningBot } from '../running-bot.ts';

const link = /https:\/\/t\.me\/\w+\?start=(\w+)/u;
/** A loaded machine takes its time; what never comes fails all the same. */
const patienceMs = 90_000;

/** The built program as a child of the test, spoken to over HTTP only, with a clock that can be put on. */
export class ChildHouse {
  readonly emulator: Emulator;
  readonly bot: RunningBot;

  private constructor(emulator: Emulator, bot: RunningBot) {
    this.emulator = emulator;
    this.bot = bot;
  }

  static async open(mode: Mode, env: BotOptions['env'] = {}): Promise<ChildHouse> {
    const emulator = await startEmulator();
    const bot = new RunningBot({ emulator, mode, env: { ...quick, ...env }, hasClock: true });
    return new ChildHouse(emulator, bot);
  }

  /** Puts the clocks of the program and of the platform forward. */
  async advance(ms: number): Promise<void> {
    this.emulator.world.clock.advance(ms);
    await this.bot.advance(ms);
  }

  /** On to the next time that a clock in the zone shows this. */
  async advanceTo(time: string, zone = 'Europe/London'): Promise<void> {
    await this.advance(untilMs(time, zone, this.emulator.world.clock.nowMs()));
  }

  /** A grower, let in by the code that the first start printed. */
  async grower(name: string, language?: string): Promise<Member> {
    const member = this.emulator.world.user({ name, ...(language ? { language } : {}) });
    member.dm(await this.bot.claimCode());
    await hears(member, isWelcome);
    return member;
  }

  /** A helper, let in by a link that a grower asked for. */
  async helper(grower: Member, name: string, language?: string, words?: string): Promise<Member> {
    const member = this.emulator.world.user({ name, ...(language ? { language } : {}) });
    member.start(await invitation(grower, words));
    await hears(member, isWelcome);
    await hears(grower, ({ text }) => /has joined|ist jetzt/u.test(text));
    return member;
  }

  /** Looks into the database, or lays it out; the program must not be running. */
  async inStore<T>(work: (store: Store) => Promise<T>): Promise<T> {
    const folder = this.bot.dataFolder;
    const store = await openEmbedded({ folder, migrationsFolder, cacheFolder });
    try {
      return await work(store);
    } finally {
      await store.close();
    }
  }

  /** The live entries of a greenhouse, the first where none is named; the program must not be running. */
  logged(greenhouse?: GreenhouseId): Promise<readonly Entry[]> {
    return this.inStore(async (store) => {
      const id = greenhouse ?? (await store.greenhouses())[0]!.id;
      const changes = await store.read(id, (ledger) => ledger.changesSince(-1));
      const struck = new Set(changes.strikes.map(({ entry }) => entry));
      return changes.entries.filter(({ no }) => !struck.has(no));
    });
  }

  async close(): Promise<void> {
    await this.bot.dispose();
    await this.emulator.stop();
  }
}

/** So that a story waits for what it is about, and not for the platform's limits. */
const quick = {
  TELEGRAM_SENDS_PER_SECOND: '1000',
  TELEGRAM_SENDS_PER_SECOND_IN_CHAT: '1000',
  TELEGRAM_SENDS_PER_MINUTE_IN_GROUP: '1000',
};

export function hears(member: Member, fits: Fits): Promise<MessageView> {
  return member.chat.next(fits, patienceMs);
}

export function sees(chat: Member['chat'], fits: Fits): Promise<MessageView> {
  return chat.next(fits, patienceMs);
}

/** The code in the link that a grower gets for a helper. */
export async function invitation(grower: Member, words = 'invite a helper'): Promise<string> {
  grower.dm(words);
  const { text } = await hears(grower, (message) => link.test(message.text));
  return link.exec(text)![1]!;
}

/** A morning's list as it is first sent. */
export function isRound({ edited, buttons, entities }: MessageView): boolean {
  return !edited && buttons.length > 1 && entities[0]?.type === 'bold';
}

function isWelcome({ text }: MessageView): boolean {
  return /Welcome|Willkommen/u.test(text);
}

/** Ties a group by the button under the bot's greeting. */
export async function ties(group: Group, grower: Member): Promise<void> {
  const hello = await sees(group, ({ buttons }) => buttons.length > 0);
  await grower.press(hello, hello.buttons.flat()[0]!);
  await sees(group, ({ text }) => /now belongs to|gehört jetzt/u.test(text));
}

/** Says something and gives the answer to it. */
export async function asks(member: Member, text: string): Promise<MessageView> {
  const said = member.dm(text);
  return hears(member, ({ replyTo }) => replyTo === said.id);
}

const dayMs = 86_400_000;
const minuteMs = 60_000;

function untilMs(time: string, timeZone: string, nowMs: number): number {
  const clock = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' });
  const minutesOf = (text: string) => {
    const [hours, minutes] = text.split(':').map(Number);
    return hours! * 60 + minutes!;
  };
  const ahead = (minutesOf(time) - minutesOf(clock.format(nowMs))) * minuteMs;
  return ahead > 0 ? ahead : ahead + dayMs;
}
