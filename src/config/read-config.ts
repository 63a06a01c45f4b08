import * as z from 'zod';

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
  readonly logLevel: 'debug' | 'info' | 'warn' | 'error' | 'silent';
}

export type ReadConfig =
  | { readonly ok: true; readonly config: Config }
  | { readonly ok: false; readonly faults: readonly string[] };

const logLevels = ['debug', 'info', 'warn', 'error', 'silent'] as const;

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
  const secretFile = given['DATABASE_URL_FILE'];
  if (secretFile !== undefined) given['DATABASE_URL'] = readSecret(secretFile).trim();
  const read = shape.safeParse(given);
  if (!read.success) {
    return {
      ok: false,
      faults: read.error.issues.map(({ path, message }) => {
        const name = path.map(String).join('.');
        // Never the value of an address: it may hold a password.
        const found = name === 'DATABASE_URL' ? 'something else' : `"${given[name] ?? ''}"`;
        return `${name}: found ${found}, expected ${message}`;
      }),
    };
  }
  const { data } = read;
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
      logLevel: data.LOG_LEVEL,
    },
  };
}
