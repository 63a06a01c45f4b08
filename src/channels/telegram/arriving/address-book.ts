import type { Account, Directory, Room } from '../../../assistant/household/household.ts';
import type { HouseholdStore } from '../../../assistant/ports/household-store.ts';
import type { GreenhouseId } from '../../../assistant/ports/store.ts';
import { channel } from '../channel-name.ts';

const oldAfterMs = 3000;

/** The accounts and groups of the channel as last read; read again by `refresh`. */
export class AddressBook {
  readonly #household: HouseholdStore;
  readonly #nowMs: () => number;
  #directory: Directory = { accounts: [], rooms: [] };
  #readAtMs = Number.NEGATIVE_INFINITY;

  constructor(household: HouseholdStore, nowMs: () => number) {
    this.#household = household;
    this.#nowMs = nowMs;
  }

  async refresh(): Promise<void> {
    this.#directory = await this.#household.directory(channel);
    this.#readAtMs = this.#nowMs();
  }

  /** Another process may have changed it: what is older than some seconds is read again. */
  async refreshIfOld(): Promise<void> {
    if (Math.abs(this.#nowMs() - this.#readAtMs) > oldAfterMs) await this.refresh();
  }

  /** Every greenhouse that an account speaks in, the current one first. */
  accountsOf(accountId: string): readonly Account[] {
    return this.#directory.accounts
      .filter((account) => account.accountId === accountId)
      .toSorted((one, other) => Number(other.isCurrent) - Number(one.isCurrent));
  }

  accountIn(greenhouse: GreenhouseId, accountId: string): Account | null {
    const { accounts } = this.#directory;
    return (
      accounts.find((each) => each.greenhouse === greenhouse && each.accountId === accountId) ??
      null
    );
  }

  accountFor(greenhouse: GreenhouseId, handle: string): Account | null {
    const { accounts } = this.#directory;
    return (
      accounts.find((each) => each.greenhouse === greenhouse && each.handle === handle) ?? null
    );
  }

  room(roomId: string): Room | null {
    return this.#directory.rooms.find((each) => each.roomId === roomId) ?? null;
  }

  roomNamed(greenhouse: GreenhouseId, name: string): Room | null {
    const { rooms } = this.#directory;
    return rooms.find((each) => each.greenhouse === greenhouse && each.name === name) ?? null;
  }

  /** The groups of a greenhouse that can be written to. */
  roomsOf(greenhouse: GreenhouseId): readonly Room[] {
    return this.#directory.rooms.filter(
      (room) => room.greenhouse === greenhouse && room.canBeReached,
    );
  }

  /** Greenhouses that somebody here belongs to. */
  greenhouses(): readonly GreenhouseId[] {
    return [...new Set(this.#directory.accounts.map(({ greenhouse }) => greenhouse))];
  }
}
