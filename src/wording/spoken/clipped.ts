/** A member's own words on one line, cut where they run on; never through a character. */
export function clipped(text: string, mostCharacters: number): string {
  const oneLine = text.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  if (oneLine.length <= mostCharacters) return oneLine;
  let kept = '';
  for (const character of oneLine) {
    if (kept.length + character.length >= mostCharacters) break;
    kept += character;
  }
  return `${kept.trimEnd()}…`;
}

/** The longest quotation of somebody's words within a sentence. */
export const mostQuoted = 120;
/** The longest label that a phone shows on a button without cutting it. */
export const mostOnButton = 30;
