import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { type MessageCase, readCases } from '../message-case.ts';
import { runCase } from '../run-case.ts';
import type { Score } from '../score-case.ts';

interface Scored {
  readonly messageCase: MessageCase;
  readonly score: Score;
}

/** Plays a corpus's cases one after the other, each in a greenhouse of its own. */
type Play = (file: string) => Promise<readonly Scored[]>;

/** Hundreds of talks through a database each; not a measure of speed. */
export const patienceMs = 600_000;

/** What the issue asks for: exact in 98 of 100, and never a wrong entry. */
const exactShare = 0.98;

/**
 * A test for each of the corpora: so many are exact, and nothing is wrong. They stand in several test
 * files, so that they go side by side.
 */
export function holdToCorpora(names: readonly string[], leastExact = exactShare): void {
  const play = withDatabase();
  describe.each(names)('The corpus %s', (name) => {
    it(
      `is understood exactly in ${100 * leastExact} of 100 messages, and nothing wrong is logged`,
      async () => {
        const all = await play(`understanding/corpus/${name}.jsonl`);
        const inexact = all.filter(({ score }) => !score.isExact);
        expect(all.filter(({ score }) => score.wrong.length > 0).map(told)).toEqual([]);
        expect(
          1 - inexact.length / all.length,
          JSON.stringify(inexact.map(told)),
        ).toBeGreaterThanOrEqual(leastExact);
      },
      patienceMs,
    );
  });
}

/** A database for the test file that calls this. */
export function withDatabase(): Play {
  const open: { store?: Store } = {};
  beforeAll(async () => {
    open.store = await openTestStore();
  });
  afterAll(() => open.store?.close());
  return async (file) => {
    const all: Scored[] = [];
    for (const messageCase of readCases(file)) {
      all.push({ messageCase, score: await runCase(open.store!, messageCase) });
    }
    return all;
  };
}

export function told({ messageCase, score }: Scored): object {
  const { line, greenhouse, rule } = messageCase;
  const { wrong, missing, faults } = score;
  return { line, greenhouse, rule, wrong, missing, faults };
}
