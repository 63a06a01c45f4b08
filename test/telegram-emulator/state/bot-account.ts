import type { WireUser } from '../wire/user.ts';

/** The one bot of the emulated platform. */
export type BotAccount = {
  readonly token: string;
  readonly user: WireUser & { readonly username: string };
  /** Privacy mode as its maker has set it; groups may have been joined under another setting. */
  privacy: boolean;
};
