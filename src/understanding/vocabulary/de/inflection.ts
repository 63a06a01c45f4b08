const adjectiveEndings = ['', 'e', 'en', 'em', 'er', 'es'];

/** `link` → link, linke, linken, linkem, linker, linkes. */
export function adjective(...stems: readonly string[]): string[] {
  return stems.flatMap((stem) => adjectiveEndings.map((ending) => stem + ending));
}
