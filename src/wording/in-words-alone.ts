import { pictureIn } from '../assistant/replies/picture.ts';
import type { Reply } from '../assistant/replies/reply.ts';
import type { Reader, Wording } from './wording.ts';

/** A reply for channels that show no pictures: what one would show is told in a line of its own. */
export function inWordsAlone(wording: Wording, reply: Reply, reader: Reader): string {
  const words = wording.reply(reply, reader);
  const picture = pictureIn(reply);
  if (!picture) return words;
  const instead = `[${wording.picture(picture, reader).alt}]`;
  return isPictureItself(reply) ? instead : `${words}\n${instead}`;
}

function isPictureItself(reply: Reply): boolean {
  return reply.kind === 'answer' && reply.answer.kind === 'picture';
}
