import type { RequestParameters } from '../http/request-parameters.ts';
import type { WireButton, WireKeyboard } from '../wire/keyboard.ts';
import type { Refusal } from '../wire/refusal.ts';
import { badRequest } from '../wire/refusal.ts';

/** Documented: 1-64 bytes. */
const LONGEST_CALLBACK_DATA_BYTES = 64;
/** Common practice: the server takes no more than this in one keyboard. */
const MOST_BUTTONS = 100;

/** Reads `reply_markup`. Other markup than inline buttons is taken and shown to nobody. */
export const readKeyboard = (
  parameters: RequestParameters,
): { readonly keyboard: WireKeyboard | undefined } | Refusal => {
  if (!parameters.has('reply_markup')) return { keyboard: undefined };
  const markup = parameters.record('reply_markup');
  if (markup === undefined) return badRequest("can't parse reply keyboard markup JSON object");
  const rows = markup['inline_keyboard'];
  if (rows === undefined) return { keyboard: undefined };
  if (!Array.isArray(rows) || !rows.every((row) => Array.isArray(row))) {
    return badRequest(
      'field "inline_keyboard" of the InlineKeyboardMarkup must be an Array of Arrays',
    );
  }
  const buttons = rows.flat() as readonly WireButton[];
  if (buttons.length > MOST_BUTTONS) return badRequest('REPLY_MARKUP_TOO_LONG');
  for (const button of buttons) {
    const reason = complaint(button);
    if (reason !== undefined) return badRequest(reason);
  }
  const filled = (rows as readonly (readonly WireButton[])[]).filter((row) => row.length > 0);
  return { keyboard: filled.length === 0 ? undefined : { inline_keyboard: filled } };
};

const complaint = (button: WireButton): string | undefined => {
  if (typeof button.text !== 'string' || button.text.trim() === '') {
    return 'can\'t parse inline keyboard button: Field "text" must be of type String and not empty';
  }
  if (button.callback_data === undefined && button.url === undefined) {
    return "can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard";
  }
  if (button.callback_data !== undefined) {
    const bytes = Buffer.byteLength(button.callback_data);
    if (bytes < 1 || bytes > LONGEST_CALLBACK_DATA_BYTES) return 'BUTTON_DATA_INVALID';
  }
  if (button.url !== undefined && !/^(https?|tg):\/\/.+/u.test(button.url)) {
    return `inline keyboard button URL '${button.url}' is invalid: Wrong HTTP URL`;
  }
  return undefined;
};
