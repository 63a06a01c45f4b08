import { describe, expect, it } from 'vitest';
import { patienceMs, told, withDatabase } from './hold-to-corpora.ts';

const play = withDatabase();

describe('The messages that the rules give as examples', () => {
  it(
    'are all understood exactly, through the whole rehearsal',
    async () => {
      const all = await play('fixtures/messages.jsonl');
      expect(all).toHaveLength(50);
      expect(all.filter(({ score }) => !score.isExact).map(told)).toEqual([]);
    },
    patienceMs,
  );
});
