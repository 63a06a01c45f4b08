import { Desk } from '../../../src/assistant/desk.ts';
import type { GreenhouseId, Store } from '../../../src/assistant/ports/store.ts';
import { Telegram, type TelegramOptions } from '../../../src/channels/telegram/telegram.ts';
import { drawPicture } from '../../../src/pictures/draw-picture.ts';
import { openEmbedded } from '../../../src/storage/embedded/open-embedded.ts';
import { wordings } from '../../../src/wording/wordings.ts';
import { cacheFolder, migrationsFolder } from '../../storage/folders.ts';
import type { Emulator } from '../../telegram-emulator/emulator.ts';
import type { Group } from '../../telegram-emulator/members/group.ts';
import type { Member } from '../../telegram-emulator/members/member.ts';
import { demoGreenhouse, settledHousehold } from './household.ts';

export interface SmallHouseOptions {
  readonly emulator: Emulator;
  readonly rates?: TelegramOptions['rates'];
  readonly hook?: TelegramOptions['webhook'];
  readonly drawPicture?: TelegramOptions['drawPicture'];
}

const quickRates = { inAllPerSecond: 1000, inChatPerSecond: 1000, inGroupPerMinute: 1000 };

/**
 * The channel on a database in memory, within the test's own process, so that its clock can be put
 * forward. The emulator's clock goes along.
 */
export class SmallHouse {
  readonly emulator: Emulator;
  readonly store: Store;
  readonly desk: Desk;
  readonly told: string[] = [];
  readonly claims = new Map<string, string>();
  readonly #options: SmallHouseOptions;
  #telegram: Telegram | null = null;
  #aheadMs = 0;

  private constructor(options: SmallHouseOptions, store: Store) {
    this.#options = options;
    this.emulator = options.emulator;
    this.store = store;
    this.desk = new Desk({
      store,
      channelOf: (handle, greenhouse) =>
        this.#telegram?.reaches(greenhouse, handle) ? 'telegram' : 'page',
      reaches: (handle, greenhouse) => this.#telegram?.reaches(greenhouse, handle) ?? true,
      roomsOf: (greenhouse) => this.#telegram?.roomsOf(greenhouse) ?? [],
      canEdit: () => true,
    });
  }

  static async open(options: SmallHouseOptions): Promise<SmallHouse> {
    return new SmallHouse(
      options,
      await openEmbedded({ folder: 'memory', migrationsFolder, cacheFolder }),
    );
  }

  readonly nowMs = (): number => Date.now() + this.#aheadMs;

  /** An unclaimed demo greenhouse. */
  newGreenhouse(name?: string): Promise<GreenhouseId> {
    return this.store.createGreenhouse(demoGreenhouse(undefined, name), this.nowMs());
  }

  /** A greenhouse whose round of this morning is still to come: it was made two days ago. */
  settle(
    growers: readonly Member[],
    helpers: readonly Member[],
    groups: readonly Group[] = [],
    name?: string,
  ): Promise<GreenhouseId> {
    return settledHousehold(
      this.store,
      [
        ...growers.map((person) => ({ person, role: 'grower' as const })),
        ...helpers.map((person) => ({ person, role: 'helper' as const })),
      ],
      {
        createdAtMs: this.nowMs() - 2 * 86_400_000,
        groups,
        ...(name === undefined ? {} : { name }),
      },
    );
  }

  async start(): Promise<void> {
    const telegram = new Telegram({
      store: this.store,
      desk: this.desk,
      wordings,
      drawPicture: this.#options.drawPicture ?? drawPicture,
      token: this.emulator.token,
      apiRoot: this.emulator.url,
      webhook: this.#options.hook ?? null,
      rates: this.#options.rates ?? quickRates,
      nowMs: this.nowMs,
      report: (level, sentence) => this.told.push(`${level}: ${sentence}`),
    });
    this.#telegram = telegram;
    await new Promise<void>((resolve, reject) => {
      telegram
        .start(({ claims }) => {
          for (const { greenhouse, code } of claims) this.claims.set(greenhouse, code);
          resolve();
        })
        .catch(reject);
    });
    await this.emulator.drained();
  }

  /** What the ticker does every two seconds. */
  async tick(): Promise<void> {
    for (const { id } of await this.store.greenhouses()) {
      await this.desk.sendDue(id, this.nowMs());
    }
    this.#telegram?.wake();
  }

  advance(ms: number): void {
    this.#aheadMs += ms;
    this.emulator.world.clock.advance(ms);
  }

  async stop(): Promise<void> {
    await this.#telegram?.stop();
    this.#telegram = null;
  }

  async close(): Promise<void> {
    await this.stop();
    await this.store.close();
  }
}
