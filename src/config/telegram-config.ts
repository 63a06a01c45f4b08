import * as z from 'zod';

/** How the Telegram bot is run. */
export interface TelegramConfig {
  readonly token: string;
  /** The root of the Bot API, where it is not the public one. */
  readonly apiRoot: string | null;
  /** Where updates are sent to; null: the bot asks for them. */
  readonly webhook: {
    readonly url: string;
    readonly secret: string;
    readonly host: string;
    readonly port: number;
  } | null;
  readonly rates: {
    readonly inAllPerSecond: number;
    readonly inChatPerSecond: number;
    readonly inGroupPerMinute: number;
  };
}

const port = 'a port from 0 to 65535';
const rate = 'a number from 1';

/** The variables; all may be left out, and without the first the others say nothing. */
export const telegramShape = {
  TELEGRAM_TOKEN: z
    .string()
    .regex(/^\d+:[\w-]+$/, 'the token of the bot, such as 123456:ABC-def')
    .optional(),
  TELEGRAM_API_ROOT: z.url('an address').optional(),
  TELEGRAM_WEBHOOK_URL: z.url('an address that Telegram can reach').optional(),
  TELEGRAM_WEBHOOK_SECRET: z
    .string()
    .regex(/^[\w-]{1,256}$/, '1 to 256 letters, digits, _ and -')
    .optional(),
  TELEGRAM_WEBHOOK_HOST: z.string().default('127.0.0.1'),
  TELEGRAM_WEBHOOK_PORT: z.coerce
    .number(port)
    .int(port)
    .min(0, port)
    .max(65_535, port)
    .default(4181),
  TELEGRAM_SENDS_PER_SECOND: z.coerce.number(rate).min(1, rate).default(30),
  TELEGRAM_SENDS_PER_SECOND_IN_CHAT: z.coerce.number(rate).min(1, rate).default(1),
  TELEGRAM_SENDS_PER_MINUTE_IN_GROUP: z.coerce.number(rate).min(1, rate).default(20),
};

/** Those whose values are never told, and which may stand in a file. */
export const telegramSecrets = ['TELEGRAM_TOKEN', 'TELEGRAM_WEBHOOK_SECRET'] as const;

/** Null: no Telegram. A fault: the parts do not go together. */
export function telegramConfig(
  given: z.infer<z.ZodObject<typeof telegramShape>>,
): { readonly fault: string } | { readonly telegram: TelegramConfig | null } {
  const { TELEGRAM_TOKEN: token, TELEGRAM_WEBHOOK_URL: url } = given;
  if (token === undefined) return { telegram: null };
  const secret = given.TELEGRAM_WEBHOOK_SECRET;
  if (url !== undefined && secret === undefined) {
    return {
      fault:
        'TELEGRAM_WEBHOOK_SECRET: found nothing, expected a secret, since TELEGRAM_WEBHOOK_URL is set',
    };
  }
  return {
    telegram: {
      token,
      apiRoot: given.TELEGRAM_API_ROOT ?? null,
      webhook:
        url === undefined || secret === undefined
          ? null
          : { url, secret, host: given.TELEGRAM_WEBHOOK_HOST, port: given.TELEGRAM_WEBHOOK_PORT },
      rates: {
        inAllPerSecond: given.TELEGRAM_SENDS_PER_SECOND,
        inChatPerSecond: given.TELEGRAM_SENDS_PER_SECOND_IN_CHAT,
        inGroupPerMinute: given.TELEGRAM_SENDS_PER_MINUTE_IN_GROUP,
      },
    },
  };
}
