import type { PhotoRef } from '../greenhouse/photo.ts';
import type { Reply } from './replies/reply.ts';

/** The photo that a message shows, its words being the caption; null: none. */
export function photoIn(reply: Reply): PhotoRef | null {
  return reply.kind === 'answer' && reply.answer.kind === 'photo' ? reply.answer.photo : null;
}
