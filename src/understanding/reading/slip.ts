/**
 * Edits between two words, two neighbours swapped counting as one (optimal string alignment),
 * or `most + 1` as soon as it must be more than `most`.
 */
export function edits(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let older: number[] = [];
  let old = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min(old[j]! + 1, row[j - 1]! + 1, old[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, older[j - 2]! + 1);
      }
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    older = old;
    old = row;
  }
  return old[b.length]!;
}

const lettersForOneEdit = 5;
const lettersForTwoEdits = 9;
/** Longer words are no words. */
const longestWord = 40;

/** How many slips of the finger a word of the vocabulary or a name may hold. */
export function slipsAllowed(word: string): number {
  if (word.length > longestWord) return 0;
  if (word.length >= lettersForTwoEdits) return 2;
  return word.length >= lettersForOneEdit ? 1 : 0;
}

/** Whether `typed` is `word` with a slip of the finger, the first letter kept. */
export function isSlipOf(typed: string, word: string): boolean {
  const most = slipsAllowed(word);
  return (
    most > 0 &&
    typed.startsWith(word.charAt(0)) &&
    typed !== word &&
    edits(typed, word, most) <= most
  );
}
