import type { WireMessage } from '../wire/message.ts';

/** Something the bot did to a message that a member would notice, with the message as it looked then. */
export type MessageEvent = { readonly kind: 'posted' | 'edited'; readonly wire: WireMessage };
