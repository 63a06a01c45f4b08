import { expect, test } from 'vitest';
import {
  type Conversation,
  newConversation,
  recentSystem,
  withNamed,
  withoutMessage,
} from '../../src/assistant/conversation.ts';
import type { SystemId } from '../../src/greenhouse/system.ts';

const [bench, tub] = ['bench', 'tub'] as readonly string[] as readonly [SystemId, SystemId];

function named(...mentions: readonly (readonly [system: SystemId, atMs: number])[]): Conversation {
  return mentions.reduce(
    (talk, [system, atMs], n) => withNamed(talk, [system], { messageId: `m${n}`, atMs }),
    newConversation('ines'),
  );
}

test('a system named over and over is known, and kept in few words', () => {
  const talk = named(...Array.from({ length: 200 }, (_, n) => [bench, n * 100] as const));
  expect(recentSystem(talk, 20_000)).toBe(bench);
  expect(recentSystem(talk, 0)).toBe(bench);
  expect(talk.named.length).toBeLessThan(6);
});

test('a second system named among the mentions of one is not overlooked', () => {
  const talk = named([bench, 0], [bench, 1000], [tub, 2000], [bench, 3000], [bench, 4000]);
  expect(recentSystem(talk, 1500)).toBe(bench);
  expect(recentSystem(talk, 2500)).toBeNull();
  expect(recentSystem(talk, 4000)).toBeNull();
});

test('a system stays named where one of its mentions is edited away', () => {
  const talk = named([bench, 0], [bench, 1000], [bench, 2000]);
  expect(recentSystem(withoutMessage(talk, 'm0'), 3000)).toBe(bench);
  expect(recentSystem(withoutMessage(talk, 'm2'), 3000)).toBe(bench);
});
