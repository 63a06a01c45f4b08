/** A message as it is read: case, width and invisible marks taken away; its offsets lead back to what was written. */
export interface Folded {
  readonly text: string;
  readonly original: string;
  /** Offset in the original of an offset in the folded text. */
  readonly originAt: (offset: number) => number;
}

const invisible = /[\p{Cf}\p{Variation_Selector}\p{Emoji_Modifier}\u034f\u115f\u1160\u3164\uffa0]/u;
const everyInvisible = new RegExp(invisible, 'gu');
const blank = /[\p{Z}\p{Cc}\ufffd]/u;
const lineEnd = /[\n\r\u2028\u2029\u0085]/;
const onlyAscii = /^[\n\x20-\x7e]*$/;

/**
 * What NFKC would tear apart or leave alone: an ordinal sign or ring typed for a degree, curly
 * quotes, the minus sign, dashes, primes, and a fraction that must not run into the number before it.
 */
const written: ReadonlyMap<string, string> = new Map([
  ['º', '°'],
  ['˚', '°'],
  ['’', "'"],
  ['‘', "'"],
  ['ʼ', "'"],
  ['´', "'"],
  ['`', "'"],
  ['′', "'"],
  ['“', '"'],
  ['”', '"'],
  ['„', '"'],
  ['‟', '"'],
  ['«', '"'],
  ['»', '"'],
  ['″', '"'],
  ['−', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['‒', '-'],
  ['⁃', '-'],
  ['⁄', '/'],
  ['∕', '/'],
  ['µ', 'μ'],
]);

/** NFKC, lower case, without invisible and direction marks and the colour of a thumb; every blank is a space, every line's end `\n`. */
export function fold(original: string): Folded {
  if (onlyAscii.test(original)) {
    return { text: original.toLowerCase(), original, originAt: (offset) => offset };
  }
  const pieces: string[] = [];
  const origins: number[] = [];
  let from = 0;
  for (const cluster of clusters(original)) {
    const piece = foldCluster(cluster);
    pieces.push(piece);
    origins.push(...new Array<number>(piece.length).fill(from));
    from += cluster.length;
  }
  return {
    text: pieces.join(''),
    original,
    originAt: (offset) => origins[offset] ?? original.length,
  };
}

/** A character with the marks that follow it, so that `u` and a loose diaeresis become one letter. */
function* clusters(text: string): Generator<string> {
  let cluster = '';
  for (const character of text) {
    if (cluster !== '' && /\p{M}/u.test(character) && cluster.length < 8) {
      cluster += character;
      continue;
    }
    if (cluster !== '') yield cluster;
    cluster = character;
  }
  if (cluster !== '') yield cluster;
}

function foldCluster(cluster: string): string {
  const known = written.get(cluster);
  if (known !== undefined) return known;
  if (lineEnd.test(cluster)) return '\n';
  if (isOneCharacter(cluster) && invisible.test(cluster)) return '';
  if (blank.test(cluster)) return ' ';
  const folded = cluster.normalize('NFKC').toLowerCase();
  // A vulgar fraction opens out into digits and a stroke.
  if (folded.includes('⁄')) return ` ${folded.replaceAll('⁄', '/')}`;
  const visible = folded.replaceAll(everyInvisible, '');
  return written.get(visible) ?? visible.replaceAll('μ', 'μ');
}

function isOneCharacter(cluster: string): boolean {
  return cluster.length === String.fromCodePoint(cluster.codePointAt(0)!).length;
}
