import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

const mostTold = 3;
/** Shorter words say nothing of what is looked for. */
const leastLetters = 3;

/** What the notes of the logbook say of a thing that somebody looks for, latest first. */
export function whereKept({ logbook }: Standing, what: string): Answer {
  const words = wordsIn(what).filter((word) => word.length >= leastLetters);
  const notes = logbook.all
    .filter(({ struck, quantity, note }) => {
      if (struck || quantity !== 'note' || !note || words.length === 0) return false;
      const said = wordsIn(note);
      return words.every((word) => said.includes(word));
    })
    .toSorted((one, other) => other.atMs - one.atMs)
    .slice(0, mostTold);
  return { kind: 'where', what, notes };
}

function wordsIn(text: string): readonly string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
