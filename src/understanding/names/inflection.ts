type Endings = readonly (readonly [string, string])[];

/** A word without the endings that plural and possessive may have added: `shelves` → `shelf`, `shelve`. */
export function stems(word: string, endings: Endings): string[] {
  const found = [word];
  for (const [ending, stem] of endings) {
    if (word.length - ending.length + stem.length > 1 && word.endsWith(ending))
      found.push(word.slice(0, -ending.length) + stem);
  }
  return found;
}

/** A word with those endings put on. */
export function inflected(word: string, endings: Endings): string[] {
  const found = [word];
  for (const [ending, stem] of endings) {
    if (word.endsWith(stem)) found.push(word.slice(0, word.length - stem.length) + ending);
  }
  return [...new Set(found)];
}

/** Whether two words differ by such endings only. */
export function sameButForEnding(a: string, b: string, endings: Endings): boolean {
  if (a === b) return true;
  const stemsOfB = stems(b, endings);
  return stems(a, endings).some((stem) => stemsOfB.includes(stem));
}
