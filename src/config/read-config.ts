import * as z from 'zod';
import {
  type TelegramConfig,
  telegramConfig,
  telegramSecrets,
  telegramShape,
} from './telegram-config.ts';

/** Everything the bot can be told from outside; read once, in `main/`. */
export interface Config {
  /** PostgreSQL; null: the embedded database in `dataFolder`. */
  readonly databaseUrl: string | null;
  readonly dataFolder: string;
  /** The greenhouse file that a new database starts with; null: the demo greenhouse. */
  readonly greenhouseFile: string | null;
  readonly host: string;
  readonly port: number;
  /** Public names under which the page may be asked for, besides addresses and names at home. */
  readonly hostNames: readonly string[];
  /** null: no Telegram. */
  readonly telegram: TelegramConfig | null;
  readonly logLevel: 'debug' | 'info' | 'warn' | 'error' | 'silent';
}

export type ReadConfig =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly faults: readonly string[] };

const logLevels = ['debug', 'info', 'warn', 'error', 'silent'] as const;

/** Never told in a fault, an address included, since it may hold a password. */
const secrets = ['DATABASE_URL', ...telegramSecrets] as const;

const shape = z.object({
  DATABASE_URL: z
    .string()
    .regex(/^postgres(ql)?:\/\//, 'a postgres:// address')
    .optional(),
  BRIMKEEPER_DATA: z.string().default('data'),
  BRIMKEEPER_GREENHOUSE: z.string().optional(),
  HOST: z.string().default('127.0.0.1'),
  PORT: z.coerce
    .number('a port from 0 to 65535')
    .int('a whole number')
    .min(0, 'a port from 0 to 65535')
    .max(65_535, 'a port from 0 to 65535')
    .default(4180),
  PAGE_HOST_NAMES: z.string().default(''),
  ...telegramShape,
  LOG_LEVEL: z.enum(logLevels, `one of ${logLevels.join(', ')}`).default('info'),
});

/**
 * Reads the configuration from environment variables; empty ones count as absent. A secret may stand
 * in a file instead, named by the same variable with `_FILE`, which `readSecret` reads.
 */
export function readConfig(
  env: Readonly<Record<string, string | undefined>>,
  readSecret: (file: string) => string,
): ReadConfig {
  const given = Object.fromEntries(
    Object.entries(env).filter(([, value]) => value !== undefined && value !== ''),
  );
  for (const name of secrets) {
    const secretFile = given[`${name}_FILE`];
    if (secretFile !== undefined) given[name] = readSecret(secretFile).trim();
  }
  const read = shape.safeParse(given);
  if (!read.success) {
    return {
      ok: false,
      faults: read.error.issues.map(({ path, message }) => {
        const name = path.map(String).join('.');
        const isSecret = (secrets as readonly string[]).includes(name);
        const found = isSecret ? 'something else' : `"${given[name] ?? ''}"`;
        return `${name}: found ${found}, expected ${message}`;
      }),
    };
  }
  const { data } = read;
  const telegram = telegramConfig(data);
  if ('fault' in telegram) return { ok: false, faults: [telegram.fault] };
  return {
    ok: true,
    config: {
      databaseUrl: data.DATABASE_URL ?? null,
      dataFolder: data.BRIMKEEPER_DATA,
      greenhouseFile: data.BRIMKEEPER_GREENHOUSE ?? null,
      host: data.HOST,
      port: data.PORT,
      hostNames: data.PAGE_HOST_NAMES.split(',')
        .map((name) => name.trim())
        .filter((name) => name !== ''),
      telegram: telegram.telegram,
      logLevel: data.LOG_LEVEL,
    },
  };
}
