import { systemsNamed } from '../../understanding/systems-named.ts';
import { withNamed } from '../conversation.ts';
import type { Handling } from '../handling.ts';
import { contextOf } from '../reading-context.ts';
import type { Surroundings } from './hear-message.ts';

/** Remembers the systems of a message that reports nothing: a wish, or what somebody takes on. */
export function noteNamed(handling: Handling, text: string, around: Surroundings): void {
  const { messageId, writtenAtMs: atMs } = handling.heard;
  const named = systemsNamed(text, contextOf(handling, around));
  handling.conversation = withNamed(handling.conversation, named, { messageId, atMs });
}
