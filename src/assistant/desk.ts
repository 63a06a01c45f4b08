import type { Fault } from '../greenhouse/file/fault.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import type { WeatherDay } from '../greenhouse/weather.ts';
import { withEntries } from '../logbook/logbook.ts';
import { type Arrival, leasable, newItems, type TakenIn } from './arrival.ts';
import { broughtUp, type Decision, noChanges } from './decision.ts';
import { type DueReach, DueSender } from './due-sender.ts';
import { type Answered, hearAll, type InboxItem, type Reach, type Said } from './hear-all.ts';
import { countersAfter } from './ports/counters-after.ts';
import type {
  ChannelName,
  Counters,
  GreenhouseId,
  InboxNo,
  Ledger,
  Store,
  Writes,
} from './ports/store.ts';
import { Remembered } from './remembered.ts';
import { emptyStanding, type Standing, withChanges, withLogbook } from './standing.ts';
import type { Received } from './use-cases/hear.ts';
import { readSensor, type SensorOutcome, type SensorReading } from './use-cases/read-sensor.ts';
import { replacedSetUp } from './use-cases/replace-set-up.ts';
import { writesOf } from './writes.ts';

export interface DeskOptions extends DueReach {
  readonly store: Store;
  /** Whether a member has an account where the household has some; yes where left out. */
  readonly reaches?: (handle: string, greenhouse: GreenhouseId) => boolean;
  /** Whether messages sent by a channel can be changed later; no where left out. */
  readonly canEdit?: (channel: ChannelName) => boolean;
}

/**
 * The one place where incoming things meet the greenhouse as it stands. Each call is one transaction
 * under the greenhouse's lock; what is folded from the log is kept between calls and brought up to
 * the database's revision, so that several processes may serve one greenhouse.
 */
export class Desk {
  readonly #options: DeskOptions;
  readonly #standings = new Map<GreenhouseId, Standing>();
  readonly #dues: DueSender;
  readonly #remembered = new Map<GreenhouseId, Remembered>();

  constructor(options: DeskOptions) {
    this.#options = options;
    this.#dues = new DueSender(this, options);
  }

  /**
   * Handles what a member sent, once, however often it is called.
   *
   * @throws RangeError where `from` is no member: channels let only members in.
   */
  async handle(
    greenhouse: GreenhouseId,
    inboxNo: InboxNo,
    received: Received,
    nowMs: number,
  ): Promise<void> {
    await this.transact(greenhouse, inboxNo, nowMs, async (standing, ledger) => {
      const { from } = received.incoming;
      const isMember = standing.greenhouse.members.some(({ handle }) => handle === from);
      if (!isMember) throw new RangeError(`"${from}" is no member of ${standing.greenhouse.name}`);
      const items = [{ no: inboxNo, received }];
      const heard = await hearAll(standing, ledger, items, nowMs, this.#reach(greenhouse));
      return { ...heard, result: undefined };
    });
  }

  /**
   * Handles many things of one greenhouse in one transaction, each once, and gives what each was
   * answered; those handled before, or from no member, are not among them.
   */
  async handleAll(
    greenhouse: GreenhouseId,
    items: readonly InboxItem[],
    nowMs: number,
  ): Promise<Answered> {
    const nos = items.map(({ no }) => no);
    return this.#hearing(greenhouse, nowMs, (hearIn) =>
      this.#options.store.transactAll(greenhouse, nos, (ledger, open) =>
        hearIn(
          ledger,
          items.filter(({ no }) => open.has(no)),
        ),
      ),
    );
  }

  /**
   * Receives things of one greenhouse into the inbox and handles those that are new, all in one
   * transaction; each is answered as by `handleAll`. Where a channel is named to lease for, which is
   * asked just before it is written, the answers that leave by it may come back taken up already.
   */
  async takeIn(
    greenhouse: GreenhouseId,
    arrivals: readonly Arrival[],
    nowMs: number,
    leaseFor: () => ChannelName | null = () => null,
  ): Promise<TakenIn> {
    const raws = arrivals.map(({ raw }) => raw);
    const ahead = await this.#takeInAhead(greenhouse, arrivals, nowMs, leaseFor);
    if (ahead) return ahead;
    let items: readonly InboxItem[] = [];
    const answered = await this.#hearing(greenhouse, nowMs, (hearIn) =>
      this.#options.store.receiveAndTransact(greenhouse, raws, (ledger, received) => {
        items = newItems(arrivals, received);
        return hearIn(ledger, items);
      }),
    );
    return { ...answered, items, leased: [] };
  }

  /**
   * The same, decided before the database is asked, on what was last written from here. Null, and
   * nothing is done: that is not known, or somebody else has written since.
   */
  async #takeInAhead(
    greenhouse: GreenhouseId,
    arrivals: readonly Arrival[],
    nowMs: number,
    leaseFor: () => ChannelName | null,
  ): Promise<TakenIn | null> {
    const { store } = this.#options;
    const known = await this.standing(greenhouse);
    const remembered = this.#rememberedOf(greenhouse);
    const counters = remembered.countersAt(known.revision);
    if (!counters) return null;
    // What a row is called in the inbox is not known yet; until then each has its place in the line.
    const items = arrivals.map(
      ({ raw, incoming }, place): InboxItem => ({
        no: place as InboxNo,
        received: { channel: raw.channel, platformId: raw.platformId ?? '', incoming },
      }),
    );
    const decided = await this.#decide(known, store.look(greenhouse, counters), items, nowMs);
    const { writes } = decided;
    const raws = arrivals.map(({ raw }) => raw);
    const lease = leasable(writes.outgoing, leaseFor());
    const received = await store.receiveDecided(greenhouse, counters, raws, writes, lease);
    if (!received) return null;
    this.#keep(greenhouse, decided);
    const { nos } = received;
    const leased = new Set(received.leased);
    return {
      outgoing: writes.outgoing,
      leased: writes.outgoing.filter(({ no }) => leased.has(no)),
      items: items.map((item, place) => ({ ...item, no: nos[place]! })),
      said: new Map([...decided.said].map(([place, said]) => [nos[place]!, said])),
    };
  }

  /** Hears many, on the standing as the ledger has it. */
  async #decide(
    known: Standing,
    ledger: Ledger,
    items: readonly InboxItem[],
    nowMs: number,
  ): Promise<Heard> {
    const standing = this.#reached(ledger.greenhouse, await broughtUp(known, ledger, nowMs));
    const ahead = this.#rememberedOf(ledger.greenhouse).before(ledger);
    const heard = await hearAll(standing, ahead, items, nowMs, this.#reach(ledger.greenhouse));
    const writes = writesOf(nowMs, heard.writes);
    return { ...heard, writes, counters: countersAfter(ledger.counters, writes) };
  }

  #keep(greenhouse: GreenhouseId, { standing, writes, counters }: Decided): void {
    this.#standings.set(greenhouse, { ...standing, revision: counters.revision });
    this.#rememberedOf(greenhouse).keep(counters, writes.conversations);
  }

  /** Lets `transact` run a hearing of many, and keeps what it decided once it is written. */
  async #hearing(
    greenhouse: GreenhouseId,
    nowMs: number,
    transact: (hearIn: HearIn) => Promise<Said | null>,
  ): Promise<Answered> {
    const known = await this.standing(greenhouse);
    const made: { decided?: Heard } = {};
    const said = await transact(async (ledger, items) => {
      const decided = await this.#decide(known, ledger, items, nowMs);
      made.decided = decided;
      return { writes: decided.writes, result: decided.said };
    });
    if (!said || !made.decided) return { said: new Map(), outgoing: [] };
    this.#keep(greenhouse, made.decided);
    return { said, outgoing: made.decided.writes.outgoing };
  }

  #rememberedOf(greenhouse: GreenhouseId): Remembered {
    const known = this.#remembered.get(greenhouse) ?? new Remembered();
    this.#remembered.set(greenhouse, known);
    return known;
  }

  /** Sends all that falls due up to `nowMs`, each at its own time and in order, as a rehearsal does. */
  sendEveryDue(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    return this.#dues.sendEveryDue(greenhouse, nowMs);
  }

  /** Sends what is due by now, once: the latest round, while mornings that nothing ran on are passed over. */
  sendDue(greenhouse: GreenhouseId, nowMs: number): Promise<void> {
    return this.#dues.sendDue(greenhouse, nowMs);
  }

  async tellWeather(
    greenhouse: GreenhouseId,
    days: readonly WeatherDay[],
    nowMs: number,
  ): Promise<void> {
    await this.transact(greenhouse, null, nowMs, (standing) =>
      Promise.resolve({
        standing: withChanges(standing, { ...noChanges, weather: days }, standing.revision, nowMs),
        writes: { weather: days },
        result: undefined,
      }),
    );
  }

  /** Logs a sensor's reading, or says what is wrong with it. */
  async tellSensor(
    greenhouse: GreenhouseId,
    reading: SensorReading,
    nowMs: number,
    messageId: string,
  ): Promise<SensorOutcome> {
    const outcome = await this.transact(greenhouse, null, nowMs, (standing) => {
      const result = readSensor(standing, reading, nowMs, messageId);
      const entries = result.ok ? [result.entry] : [];
      const logbook = withEntries(standing.logbook, entries);
      return Promise.resolve({
        standing: withLogbook(standing, logbook),
        writes: { entries },
        result,
      });
    });
    if (!outcome) throw new Error('a sensor reading has no inbox row, so it cannot be handled yet');
    return outcome;
  }

  /** Puts the set-up of a greenhouse file in the place of the present one, or tells what forbids it. */
  async replaceSetUp(
    greenhouse: GreenhouseId,
    file: Greenhouse,
    nowMs: number,
  ): Promise<readonly Fault[]> {
    const faults = await this.transact<readonly Fault[]>(greenhouse, null, nowMs, (standing) => {
      const replaced = replacedSetUp(standing, file);
      if (!replaced.ok) return Promise.resolve({ standing, writes: {}, result: replaced.faults });
      const changes = { ...noChanges, greenhouse: replaced.greenhouse };
      return Promise.resolve({
        standing: withChanges(standing, changes, standing.revision, nowMs),
        writes: { greenhouse: replaced.greenhouse },
        result: [],
      });
    });
    return faults ?? [];
  }

  /** The greenhouse as last handled; read from the database where it was not handled here yet. */
  async standing(greenhouse: GreenhouseId): Promise<Standing> {
    const known = this.#standings.get(greenhouse);
    if (known && known.revision >= 0) return this.#reached(greenhouse, known);
    return this.#options.store.read(greenhouse, async (ledger) => {
      const { greenhouse: setUp, createdAtMs } = await ledger.setUp();
      const standing = known ?? emptyStanding(setUp, createdAtMs);
      const current = this.#reached(greenhouse, await broughtUp(standing, ledger, standing.nowMs));
      this.#standings.set(greenhouse, current);
      this.#rememberedOf(greenhouse).know(ledger.counters);
      return current;
    });
  }

  /** The standing with the members who cannot be reached yet while others can. */
  #reached(id: GreenhouseId, standing: Standing): Standing {
    const { reaches } = this.#options;
    if (!reaches) return standing;
    const { members } = standing.greenhouse;
    const out = members.map(({ handle }) => handle).filter((handle) => !reaches(handle, id));
    return { ...standing, unjoined: out.length === members.length ? [] : out };
  }

  #reach(greenhouse: GreenhouseId): Reach {
    const { canEdit, channelOf } = this.#options;
    return {
      canEdit: (channel) => canEdit?.(channel) ?? false,
      channelOf: (handle) => channelOf(handle, greenhouse),
    };
  }

  /**
   * One transaction under the greenhouse's lock; what it decided is kept only once it is written.
   * Null where the inbox row was handled before.
   */
  async transact<T>(
    greenhouse: GreenhouseId,
    inboxNo: InboxNo | null,
    nowMs: number,
    decide: (standing: Standing, ledger: Ledger) => Promise<Decision<T>>,
  ): Promise<T | null> {
    const known = await this.standing(greenhouse);
    const made: { decided?: Decided } = {};
    const result = await this.#options.store.transact(greenhouse, inboxNo, async (ledger) => {
      const before = this.#reached(greenhouse, await broughtUp(known, ledger, nowMs));
      const { standing, writes: parts, result } = await decide(before, ledger);
      const writes = writesOf(nowMs, parts);
      made.decided = { standing, writes, counters: countersAfter(ledger.counters, writes) };
      return { writes, result };
    });
    if (made.decided) this.#keep(greenhouse, made.decided);
    return result;
  }
}

/** What is to be written, and how the greenhouse and its numbering stand once it is. */
interface Decided {
  readonly standing: Standing;
  readonly writes: Writes;
  readonly counters: Counters;
}

interface Heard extends Decided {
  readonly said: Said;
}

type HearIn = (
  ledger: Ledger,
  items: readonly InboxItem[],
) => Promise<{ readonly writes: Writes; readonly result: Said }>;
