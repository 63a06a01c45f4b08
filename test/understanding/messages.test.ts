import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  greenhouseNamed,
  judge,
  type MessageCase,
  UnderstandingTalk,
} from './understanding-talk.ts';

const file = new URL('../fixtures/messages.jsonl', import.meta.url);
const cases = readFileSync(file, 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as MessageCase);

describe('the messages of the contract', () => {
  test.each(cases.map((one) => [one.line.text, one] as const))('%s', (_, one) => {
    const greenhouse = greenhouseNamed(one.greenhouse);
    const talk = new UnderstandingTalk(greenhouse);
    for (const line of one.before ?? []) talk.hear(line);
    expect(judge(one, talk.hear(one.line), greenhouse)).toEqual([]);
  });
});
