import { type Decision, noChanges } from './decision.ts';
import { newTold, nextDue, noticesDue, noticesOut, type Told } from './family/notices-due.ts';
import type { ChannelName, GreenhouseId, InboxNo, Ledger, Morning } from './ports/store.ts';
import { type Standing, type StandingChanges, withChanges } from './standing.ts';
import { morningRound, nextMorning, type RoomAddress } from './use-cases/morning-round.ts';

/** How those are reached who are written to unasked. */
export interface DueReach {
  /** The channel by which a member is reached when nobody wrote first. */
  readonly channelOf: (handle: string, greenhouse: GreenhouseId) => ChannelName;
  /** The groups of a greenhouse that get its round as well; none where left out. */
  readonly roomsOf?: (greenhouse: GreenhouseId) => readonly RoomAddress[];
}

/** Where the standing is kept, and changed in one transaction. */
interface Keeper {
  standing(greenhouse: GreenhouseId): Promise<Standing>;
  transact<T>(
    greenhouse: GreenhouseId,
    inboxNo: InboxNo | null,
    nowMs: number,
    decide: (standing: Standing, ledger: Ledger) => Promise<Decision<T>>,
  ): Promise<T | null>;
}

/** Sends what the clock asks for: morning rounds, and what is to be said unasked. */
export class DueSender {
  readonly #keeper: Keeper;
  readonly #reach: DueReach;
  /** What was said unasked, so that it need not be looked up again. */
  readonly #told = new Map<GreenhouseId, Told>();

  constructor(keeper: Keeper, reach: DueReach) {
    this.#keeper = keeper;
    this.#reach = reach;
  }

  /** Sends all that falls due up to `nowMs`, each at its own time and in order, as a rehearsal does. */
  async sendEveryDue(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    for (;;) {
      const standing = await this.#keeper.standing(greenhouse);
      const due = nextDue(standing, this.#toldOf(greenhouse, standing), nowMs);
      if (!due) return;
      if (due.kind === 'round') await this.#sendRound(greenhouse, due.atMs);
      else await this.#sendNotices(greenhouse, due.atMs);
    }
  }

  /** Sends what is due by now, once: the latest round, while mornings that nothing ran on are passed over. */
  async sendDue(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    if (nextMorning(await this.#keeper.standing(greenhouse)).atMs <= nowMs) {
      await this.#sendRound(greenhouse, nowMs);
    }
    const standing = await this.#keeper.standing(greenhouse);
    if (noticesDue(standing, this.#toldOf(greenhouse, standing), nowMs).length === 0) return;
    await this.#sendNotices(greenhouse, nowMs);
  }

  async #sendRound(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    await this.#keeper.transact<undefined>(greenhouse, null, nowMs, (standing, { counters }) => {
      const due = latestMorning(standing, nowMs);
      if (!due) return Promise.resolve({ standing, writes: {}, result: undefined });
      const { channelOf, roomsOf } = this.#reach;
      const { morning, outgoing } = morningRound(standing, counters, due, nowMs, {
        channelOf: (handle) => channelOf(handle, greenhouse),
        rooms: roomsOf?.(greenhouse) ?? [],
      });
      return Promise.resolve({
        standing: withChanges(standing, withMorning(morning), standing.revision, nowMs),
        writes: { morning, outgoing },
        result: undefined,
      });
    });
  }

  #toldOf(greenhouse: GreenhouseId, standing: Standing): Told {
    let told = this.#told.get(greenhouse);
    if (!told) this.#told.set(greenhouse, (told = newTold(standing.nowMs)));
    return told;
  }

  async #sendNotices(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    const { channelOf } = this.#reach;
    const sent = await this.#keeper.transact(greenhouse, null, nowMs, async (standing, ledger) => {
      const due = noticesDue(standing, this.#toldOf(greenhouse, standing), nowMs);
      const { outgoing, keys, conversations } = await noticesOut(due, ledger, nowMs, (handle) =>
        channelOf(handle, greenhouse),
      );
      return {
        standing,
        writes: { outgoing, notices: keys, conversations },
        result: due.map(({ key }) => key),
      };
    });
    for (const key of sent ?? []) this.#told.get(greenhouse)?.keys.add(key);
  }
}

function withMorning(morning: Morning): StandingChanges {
  return { ...noChanges, mornings: [morning] };
}

/** The latest morning due by `nowMs` whose round has not gone out; null where none is. */
function latestMorning(standing: Standing, nowMs: number): ReturnType<typeof nextMorning> | null {
  let due = nextMorning(standing);
  if (due.atMs > nowMs) return null;
  for (;;) {
    const passed = { date: due.date, sentAtMs: due.atMs, duties: [] };
    const after = nextMorning({ ...standing, rounds: [passed] });
    if (after.atMs > nowMs) return due;
    due = after;
  }
}
