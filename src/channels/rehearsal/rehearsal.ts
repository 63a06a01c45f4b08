import type { Desk } from '../../assistant/desk.ts';
import type { Outgoing } from '../../assistant/outgoing.ts';
import { outlookOf } from '../../assistant/outlook.ts';
import type { GreenhouseId, Store } from '../../assistant/ports/store.ts';
import { isoAt, localDateOf } from '../../greenhouse/local-time.ts';
import type { Language } from '../../greenhouse/member.ts';
import { isObserved } from '../../logbook/weather-book.ts';
import type { Wording } from '../../wording/wording.ts';
import { idOf, incomingOf } from './incoming-of.ts';
import { type LineIn, readLine } from './line-in.ts';
import { messageId, messageOut, outlookOut } from './line-out.ts';

export const rehearsalChannel = 'rehearsal';
const mostAtOnce = 200;

export interface RehearsalOptions {
  readonly store: Store;
  readonly desk: Desk;
  /** The greenhouse where the folder holds one; else it is made at the first line's time. */
  readonly openGreenhouse: (firstAtMs: number) => Promise<GreenhouseId>;
  readonly wordings: Readonly<Record<Language, Wording>>;
}

/**
 * The bot on a clock that its input drives: one line in, then the lines it caused, then `done`.
 * The clock stands at the latest `at`; before a line is handled, what falls due up to it is sent.
 */
export class Rehearsal {
  readonly #options: RehearsalOptions;
  #greenhouse: GreenhouseId | null = null;
  #clockMs = Number.NEGATIVE_INFINITY;
  #linesRead = 0;

  constructor(options: RehearsalOptions) {
    this.#options = options;
  }

  /** Handles one line of input and gives the lines of output, in order. */
  async handle(raw: string): Promise<readonly object[]> {
    this.#linesRead += 1;
    const done = { done: this.#linesRead };
    const read = readLine(raw);
    if (!read.ok) return [{ error: read.error }, done];
    const { line } = read;
    const greenhouse = (this.#greenhouse ??= await this.#options.openGreenhouse(line.atMs));
    const standing = await this.#options.desk.standing(greenhouse);
    const { timeZone } = standing.greenhouse;
    this.#clockMs = Math.max(this.#clockMs, standing.nowMs);
    if (line.atMs < this.#clockMs) {
      const found = isoAt(line.atMs, timeZone);
      const expected = isoAt(this.#clockMs, timeZone);
      return [{ error: `at: found ${found}, expected ${expected} or later` }, done];
    }
    const unfit = this.#unfit(
      line,
      standing.greenhouse.members.map(({ handle }) => handle),
    );
    if (unfit !== null) return [{ error: unfit }, done];
    this.#clockMs = line.atMs;
    await this.#options.desk.sendEveryDue(greenhouse, line.atMs);
    const [takenUp, figures] = isSaid(line)
      ? [await this.#receive(greenhouse, line), []]
      : [[], await this.#act(greenhouse, line)];
    // What the line itself made due, such as telling the grower of an outage.
    await this.#options.desk.sendEveryDue(greenhouse, line.atMs);
    return [...(await this.#sent(greenhouse, takenUp)), ...figures, done];
  }

  #unfit(line: LineIn, handles: readonly string[]): string | null {
    if ('from' in line && !handles.includes(line.from)) {
      return `from: found "${line.from}", expected one of: ${handles.join(', ')}`;
    }
    if (line.kind === 'message' && line.sentAtMs !== null && line.sentAtMs > line.atMs) {
      return 'sentAt: found a time after at, expected at or earlier';
    }
    return null;
  }

  async #act(greenhouse: GreenhouseId, line: NotSaid): Promise<readonly object[]> {
    const { desk } = this.#options;
    switch (line.kind) {
      case 'weather': {
        const { timeZone } = (await desk.standing(greenhouse)).greenhouse;
        const toldOn = localDateOf(line.atMs, timeZone);
        const days = line.days.map((day) => ({
          ...day,
          observed: isObserved(day.date, line.atMs, timeZone),
          toldOn,
        }));
        await desk.tellWeather(greenhouse, days, line.atMs);
        return [];
      }
      case 'sensor': {
        const { atMs, ...reading } = line;
        const outcome = await desk.tellSensor(greenhouse, reading, atMs, `line-${this.#linesRead}`);
        if (outcome.ok) return [];
        const { field, found, expected } = outcome;
        return [{ error: `${field}: found ${found}, expected ${expected}` }];
      }
      case 'outlook': {
        const standing = await desk.standing(greenhouse);
        return [
          outlookOut(
            outlookOf(standing, line.atMs),
            standing.greenhouse,
            this.#options.wordings.en,
            line.atMs,
          ),
        ];
      }
      case 'time':
        return [];
    }
  }

  /** Gives what is answered and taken up already, so that printing it is all that is left. */
  async #receive(greenhouse: GreenhouseId, line: Said): Promise<readonly Outgoing[]> {
    const { desk } = this.#options;
    const { greenhouse: setUp, revision } = await desk.standing(greenhouse);
    const handles = setUp.members.map(({ handle }) => handle);
    const incoming = incomingOf(line, handles, rehearsalChannel);
    const raw = {
      greenhouse,
      channel: rehearsalChannel,
      platformId: platformIdOf(line, revision),
      receivedAtMs: line.atMs,
      writtenAtMs: incoming.kind === 'message' ? incoming.writtenAtMs : line.atMs,
      chat: incoming.chat ?? line.from,
      body: incoming,
    };
    const { leased } = await desk.takeIn(
      greenhouse,
      [{ raw, incoming }],
      line.atMs,
      () => rehearsalChannel,
    );
    return leased;
  }

  /** Takes what waits in the outbox; printing it is its delivery. */
  async #sent(greenhouse: GreenhouseId, takenUp: readonly Outgoing[]): Promise<readonly object[]> {
    const { store, desk, wordings } = this.#options;
    const { greenhouse: setup } = await desk.standing(greenhouse);
    const sent: { readonly no: number; readonly line: object }[] = [];
    let waiting = takenUp;
    do {
      for (const outgoing of waiting) {
        const language = setup.members.find(({ handle }) => handle === outgoing.to)?.language;
        const line = messageOut(outgoing, setup, wordings[language ?? 'en']);
        sent.push({ no: outgoing.no, line });
        await store.settle(greenhouse, outgoing.no, {
          kind: 'sent',
          platformId: messageId(outgoing),
          atMs: this.#clockMs,
        });
      }
      const pending = await store.pending(rehearsalChannel, this.#clockMs, mostAtOnce);
      waiting = pending.map(({ outgoing }) => outgoing);
    } while (waiting.length > 0);
    // The outbox gives a chat's messages in order, but one chat after the other.
    return sent.toSorted((one, other) => one.no - other.no).map(({ line }) => line);
  }
}

type Said = Extract<LineIn, { kind: 'message' | 'edit' | 'press' }>;
type NotSaid = Exclude<LineIn, Said>;

function isSaid(line: LineIn): line is Said {
  return line.kind === 'message' || line.kind === 'edit' || line.kind === 'press';
}

/** What has no id gets one of its own: the revision it is said at, which handling it moves on. */
function platformIdOf(line: Said, revision: number): string {
  return line.kind === 'message' && line.id !== null
    ? idOf(line.from, line.id)
    : `at-revision-${revision}`;
}
