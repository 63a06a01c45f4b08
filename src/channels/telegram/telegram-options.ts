import type { Desk } from '../../assistant/desk.ts';
import type { Store } from '../../assistant/ports/store.ts';
import type { Language } from '../../greenhouse/member.ts';
import type { DrawPicture, Wording } from '../../wording/wording.ts';
import type { Rates } from './sending/pace.ts';

export type TelegramStore = Pick<
  Store,
  | 'greenhouses'
  | 'receive'
  | 'receiveAll'
  | 'unhandled'
  | 'read'
  | 'pending'
  | 'lease'
  | 'beginToSettle'
  | 'giveBack'
  | 'keepPartsSent'
  | 'endLeases'
  | 'household'
  | 'photos'
>;

/** Where updates are to be sent; absent: the bot asks for them itself. */
export interface WebhookOptions {
  /** The address that the platform calls. */
  readonly url: string;
  /** 1 to 256 of letters, digits, `_` and `-`. */
  readonly secret: string;
  readonly host: string;
  readonly port: number;
}

/** All that the channel needs from outside. */
export interface TelegramOptions {
  readonly store: TelegramStore;
  readonly desk: Desk;
  readonly wordings: Readonly<Record<Language, Wording>>;
  readonly token: string;
  /** The root of the Bot API, where it is not the public one. */
  readonly apiRoot: string | null;
  readonly webhook: WebhookOptions | null;
  readonly rates: Rates;
  readonly nowMs: () => number;
  /** Told of what goes on and what went wrong; the token is in none of it. */
  readonly report: (level: 'info' | 'warn' | 'error', sentence: string) => void;
  readonly drawPicture: DrawPicture;
  /** Something was handled, so that other channels may show another state. */
  readonly onHandled?: () => void;
}
