/** One button under a message (`InlineKeyboardButton`); `callback_data` is 1 to 64 bytes. */
export type WireButton = {
  readonly text: string;
  readonly callback_data?: string;
  readonly url?: string;
};

/** The buttons under a message (`InlineKeyboardMarkup`). */
export type WireKeyboard = { readonly inline_keyboard: readonly (readonly WireButton[])[] };
