import type { SystemId } from '../../greenhouse/system.ts';
import { isKnown, isMeant, type Lexicon } from '../reading/lexicon.ts';
import { edits, isSlipOf, slipsAllowed } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { sameButForEnding } from './inflection.ts';
import type { NameForm } from './name-form.ts';

/** How near what was written comes to a name; the nearer, the smaller. */
export const nearness = { exact: 0, inflected: 1, beginning: 2, slip: 3, shortSlip: 4 } as const;
export type Nearness = (typeof nearness)[keyof typeof nearness];

export interface NameMatch {
  /** One, or several that it fits alike. */
  readonly systems: readonly SystemId[];
  readonly near: Nearness;
  /** In tokens. */
  readonly length: number;
  /** Every word stands there as the name has it. */
  readonly wholeWords: boolean;
  /** A plural name said in the singular, as of one of its parts: `bucket 4`. */
  readonly singular: boolean;
}

const lettersOfBeginning = 3;

/** The name that starts at a token: the longest, and of those the nearest; all systems it fits alike. */
export function matchName(
  tokens: readonly Token[],
  start: number,
  lexicon: Lexicon,
): NameMatch | null {
  let best = null as NameMatch | null;
  const { text } = tokens[start]!;
  for (const form of lexicon.names) {
    if (!mayBegin(text, form.words[0]!)) continue;
    const match = matchForm(tokens, start, form, lexicon);
    if (!match) continue;
    if (!best || isBetter(match, best)) best = match;
    else if (
      match.length === best.length &&
      match.near === best.near &&
      !best.systems.includes(match.systems[0]!)
    ) {
      best = {
        ...best,
        systems: [...best.systems, match.systems[0]!],
        wholeWords: best.wholeWords && match.wholeWords,
      };
    }
  }
  return best && isLedByOwnWord(tokens, start, best, lexicon)
    ? { ...best, near: nearness.slip }
    : best;
}

/** What every way of writing a word keeps: its first letter. A number may be spelled out. */
function mayBegin(text: string, word: string): boolean {
  const first = word.charCodeAt(0);
  return text.charCodeAt(0) === first || (first >= zero && first <= nine);
}

const zero = 48;
const nine = 57;

/** `left tbu`: the first word stands there as in the names of one system only, so the short slip after it is sure. */
function isLedByOwnWord(
  tokens: readonly Token[],
  start: number,
  { near, length, systems }: NameMatch,
  { names }: Lexicon,
): boolean {
  if (near !== nearness.shortSlip || length === 1) return false;
  const led = names.filter(({ words }) => words[0] === tokens[start]!.text);
  return led.length > 0 && led.every(({ system }) => system === systems[0]);
}

function isBetter(a: NameMatch, b: NameMatch): boolean {
  return a.length !== b.length ? a.length > b.length : a.near < b.near;
}

function matchForm(
  tokens: readonly Token[],
  start: number,
  form: NameForm,
  lexicon: Lexicon,
): NameMatch | null {
  let near: Nearness = nearness.exact;
  let at = start;
  let matched = 0;
  let singular = false;
  for (const word of form.words) {
    if (matched > 0 && isHyphen(tokens[at]) && tokens[at + 1] && !isSign(tokens, at)) at++;
    const token = tokens[at];
    const how = token ? howNear(token, word, lexicon) : null;
    if (how === null || how === nearness.beginning) {
      if (how === null && matched === 0) return null;
      const isBeginning = how !== null;
      if (matched > 0 && !isBeginning && isHyphen(tokens[at - 1])) at--;
      const length = at - start + (isBeginning ? 1 : 0);
      if (near === nearness.slip || near === nearness.shortSlip) return null;
      if (tokens[start]!.text.length < lettersOfBeginning && length === 1) return null;
      return {
        systems: [form.system],
        near: nearness.beginning,
        length,
        wholeWords: !isBeginning,
        singular: false,
      };
    }
    if (how > near) near = how;
    if (how === nearness.inflected && token!.text.length < word.length) singular = true;
    matched++;
    at++;
  }
  const last = form.words.at(-1)!;
  if (form.words.length > 1 && /^\d+$/.test(last) && isMeasured(tokens, at, lexicon)) {
    // `tote 2 l` is no Tote 2, but some tote and two litres.
    return {
      systems: [form.system],
      near: nearness.beginning,
      length: at - start - 1,
      wholeWords: true,
      singular: false,
    };
  }
  return {
    systems: [form.system],
    near,
    length: at - start,
    wholeWords: near <= nearness.inflected,
    singular,
  };
}

function isHyphen(token: Token | undefined): boolean {
  return token?.text === '-';
}

/** A minus sign: it touches its number and nothing before it. */
function isSign(tokens: readonly Token[], at: number): boolean {
  return !tokens[at]!.glued && tokens[at + 1]!.glued && tokens[at + 1]!.kind === 'number';
}

function isMeasured(tokens: readonly Token[], at: number, lexicon: Lexicon): boolean {
  const wordAt = (offset: number) => tokens[at + offset]?.text ?? null;
  const unit = [lexicon.units, lexicon.own.units, ...lexicon.others.map(({ units }) => units)].find(
    (units) => units.longest(wordAt),
  );
  const found = unit?.longest(wordAt);
  if (!found || ('shy' in found.value && found.value.shy)) return false;
  // `tote 3 CF 26`: the unit stands before its own number.
  return tokens[at + found.length]?.kind !== 'number';
}

function howNear(token: Token, word: string, lexicon: Lexicon): Nearness | null {
  const { text } = token;
  if (text === word) return nearness.exact;
  if (/^\d+$/.test(word)) return isSameNumber(text, word, lexicon) ? nearness.exact : null;
  if (token.kind !== 'word') return null;
  const { endings } = lexicon.own.vocabulary;
  if (text.startsWith(word.charAt(0)) && sameButForEnding(text, word, endings))
    return nearness.inflected;
  const begins = word.startsWith(text) && text.length >= lettersOfBeginning;
  if (isKnown(lexicon, text)) return begins && !isMeant(lexicon, text) ? nearness.beginning : null;
  if (begins) return nearness.beginning;
  if (isSlipOf(text, word)) return nearness.slip;
  return isShortSlip(text, word) ? nearness.shortSlip : null;
}

/** One edit in a word too short to be sure of. */
function isShortSlip(text: string, word: string): boolean {
  return (
    slipsAllowed(word) === 0 &&
    word.length > 2 &&
    text.length > 2 &&
    text.startsWith(word.charAt(0)) &&
    edits(text, word, 1) === 1
  );
}

function isSameNumber(text: string, word: string, lexicon: Lexicon): boolean {
  return lexicon.own.vocabulary.numbers.get(text) === Number(word);
}
