import { Api } from 'grammy';
import { test as base } from 'vitest';
import { type Emulator, startEmulator } from './emulator.ts';

type Emulated = { readonly emulator: Emulator; readonly api: Api };

/** A test with an emulator of its own and a grammY client connected to it. */
export const test = base.extend<Emulated>({
  // Vitest reads from the pattern which fixtures this one needs: none.
  emulator: async ({}, use) => {
    const emulator = await startEmulator();
    await use(emulator);
    await emulator.stop();
  },
  api: async ({ emulator }, use) => {
    await use(new Api(emulator.token, { apiRoot: emulator.url }));
  },
});

/** What a refused call rejects with, by code and the server's words. */
export const refusal = (error_code: number, description: string) =>
  ({ error_code, description }) as const;
