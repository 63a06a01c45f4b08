import type { WireUser } from '../wire/user.ts';

/** A member of the platform and how they stand to the bot. */
export type Person = {
  readonly user: WireUser;
  /** Has written to the bot in private, which is what lets the bot write back. */
  started: boolean;
  blocked: boolean;
  deactivated: boolean;
};
