/** Words by their first letter and length: those that a slip of typing may have been. */
export type Spellings = ReadonlyMap<string, readonly string[]>;

export function spellingsOf(words: Iterable<string>): Spellings {
  const buckets = new Map<string, string[]>();
  for (const word of new Set(words)) {
    if (!/^\p{L}/u.test(word)) continue;
    const key = `${word[0]!}${word.length}`;
    const bucket = buckets.get(key);
    if (bucket) bucket.push(word);
    else buckets.set(key, [word]);
  }
  return buckets;
}

/** Those that begin with this letter and are so long. */
export function spelledAlike(
  spellings: Spellings,
  first: string,
  length: number,
): readonly string[] {
  return spellings.get(`${first}${length}`) ?? [];
}
