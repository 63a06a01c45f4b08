import { createHash, timingSafeEqual } from 'node:crypto';
import type { Update } from 'grammy/types';
import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import * as z from 'zod';

export interface HookOptions {
  readonly path: string;
  readonly secret: string;
  readonly takeIn: (updates: readonly Update[]) => Promise<void>;
  readonly report: (level: 'info' | 'warn' | 'error', sentence: string) => void;
}

/** A message of the greatest length with all its entities stays far below this. */
const mostBytes = 512 * 1024;
const secretHeader = 'x-telegram-bot-api-secret-token';

const updateSchema = z.looseObject({ update_id: z.int() });

/** Takes one update a request: stored, then answered; what it asks for is done later. */
export function hookApp({ path, secret, takeIn, report }: HookOptions): Hono {
  const app = new Hono();
  app.post(
    path,
    async (context, next) => {
      if (!isSame(context.req.header(secretHeader) ?? '', secret)) return context.body(null, 401);
      return next();
    },
    bodyLimit({ maxSize: mostBytes, onError: (context) => context.body(null, 413) }),
    async (context) => {
      const update = await readBody(() => context.req.json());
      if (!update) return context.body(null, 400);
      try {
        await takeIn([update]);
      } catch (error) {
        report(
          'error',
          `An update could not be stored: ${error instanceof Error ? error.name : ''}`,
        );
        return context.body(null, 503);
      }
      return context.body(null, 200);
    },
  );
  return app;
}

async function readBody(read: () => Promise<unknown>): Promise<Update | null> {
  try {
    // Only the number is checked: what the platform says of the rest is read as it comes.
    return updateSchema.parse(await read());
  } catch {
    return null;
  }
}

/** Takes the same time whatever is wrong, and however long it is. */
function isSame(given: string, expected: string): boolean {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(given), digest(expected));
}
