import { tellGrowers } from '../../assistant/household/tell-growers.ts';
import { channel } from './channel-name.ts';
import type { TelegramOptions } from './telegram-options.ts';

const hourMs = 3_600_000;
/** The platform keeps what nobody fetches for so long. */
const keptForMs = 24 * hourMs;
const writtenEveryMs = 60_000;

/** Notes when the platform was last heard from, and tells where the silence was too long. */
export class Pulse {
  readonly #options: TelegramOptions;
  #heardAtMs: number | null = null;
  #writtenAtMs = Number.NEGATIVE_INFINITY;
  readonly #afterTelling: () => void;

  constructor(options: TelegramOptions, afterTelling: () => void) {
    this.#options = options;
    this.#afterTelling = afterTelling;
  }

  async heard(): Promise<void> {
    const { store, nowMs } = this.#options;
    const now = nowMs();
    const before = this.#heardAtMs ?? (await store.household.heardAtMs(channel));
    if (before !== null && now - before > keptForMs) await this.#tellOfGap(before, now);
    this.#heardAtMs = now;
    if (now - this.#writtenAtMs < writtenEveryMs) return;
    await store.household.hear(channel, now);
    this.#writtenAtMs = now;
  }

  async #tellOfGap(sinceMs: number, now: number): Promise<void> {
    const { store, desk } = this.#options;
    const hours = (now - sinceMs) / hourMs;
    for (const { id } of await store.greenhouses()) {
      const told = {
        alert: { kind: 'messages-may-be-lost', hours } as const,
        onceFor: `${channel} silent since ${sinceMs}`,
        except: null,
      };
      await tellGrowers(desk, id, channel, told, now);
    }
    this.#afterTelling();
  }
}
