import type { Greenhouse } from '../../greenhouse/greenhouse.ts';
import type { LocalTime } from '../../greenhouse/local-time.ts';
import type { Member } from '../../greenhouse/member.ts';
import type { Town } from '../../greenhouse/places/towns.ts';
import type { GuideStepKind } from '../../greenhouse/set-up/guide-step.ts';
import { type Method, methods } from '../../greenhouse/system.ts';
import { isSlipOf } from '../reading/slip.ts';
import type { Token } from '../reading/token.ts';
import { wordsOf } from '../reading/word-list.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import { readCm, readCount, readLitres, readTime } from './read-amounts.ts';
import { readCrop } from './read-names.ts';
import { readPlace } from './read-place.ts';
import { saidInstead, withoutLead } from './said-instead.ts';
import { asWritten, type WishWorld, wishWorlds } from './wish-world.ts';

export type GuideAnswer =
  | { readonly kind: 'back' | 'anew' | 'skip' | 'stop' | 'finish' | 'yes' | 'no' }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'place'; readonly town: Town }
  | { readonly kind: 'time'; readonly time: LocalTime }
  | { readonly kind: 'meters'; readonly measures: readonly ('ph' | 'ec')[] }
  /** `isInPassing`: a word of what may be about something else. */
  | { readonly kind: 'method'; readonly method: Method; readonly isInPassing?: true }
  /** Litres or cm. */
  | { readonly kind: 'amount'; readonly value: number }
  | { readonly kind: 'plants'; readonly crop: string | null; readonly plants: number };

type Steering = keyof WishWords['steering'];

const longestName = 40;

/** What a member's words answer to a step of the guided set-up; null: not understood. */
export function readGuideAnswer(
  step: GuideStepKind,
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): GuideAnswer | null {
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    const answer = steeringOf(step, world) ?? valueOf(step, text, world);
    if (answer) return answer;
  }
  return null;
}

const steeringAt: Readonly<Record<GuideStepKind, readonly Steering[]>> = {
  name: ['skip'],
  place: ['skip'],
  morning: ['skip', 'yes'],
  meters: ['skip'],
  method: ['finish', 'skip'],
  'system-name': ['skip'],
  brim: ['skip'],
  depth: ['skip', 'yes'],
  low: ['skip', 'yes'],
  plants: ['skip'],
  another: ['finish', 'skip'],
  summary: ['yes', 'no'],
};

function steeringOf(step: GuideStepKind, { tokens, words }: WishWorld): GuideAnswer | null {
  const said = tokens.map(({ text }) => text).join(' ');
  if (said === '') return null;
  for (const steering of ['back', 'anew', 'stop', ...steeringAt[step]] as const) {
    if (steering === 'none') continue;
    if (!words.steering[steering].some((word) => isSaid(said, word))) continue;
    // To what is suggested.
    return { kind: steering === 'yes' && step !== 'summary' ? 'skip' : steering };
  }
  return null;
}

function isSaid(said: string, phrase: string): boolean {
  const known = wordsOf(phrase).join(' ');
  return said === known || isSlipOf(said, known);
}

function valueOf(step: GuideStepKind, text: string, world: WishWorld): GuideAnswer | null {
  const { tokens, words } = world;
  const said = tokens.map((token) => token.text).join(' ');
  switch (step) {
    case 'name':
    case 'system-name': {
      const name = asWritten(tokens, world.folded);
      return name !== '' && name.length <= longestName ? { kind: 'text', text: name } : null;
    }
    case 'place': {
      const town = readPlace(text);
      return town && { kind: 'place', town };
    }
    case 'morning': {
      const time = readTime(withoutLead(tokens, words.beforeClock), world);
      return time === undefined ? null : { kind: 'time', time };
    }
    case 'meters':
      return metersOf(said, words);
    case 'method':
    case 'another':
      return methodOf(said, words);
    case 'brim':
    case 'low': {
      const value = amountIn(tokens, world, readLitres);
      return value === undefined ? null : { kind: 'amount', value };
    }
    case 'depth': {
      const value = amountIn(tokens, world, readCm);
      return value === undefined ? null : { kind: 'amount', value };
    }
    case 'plants':
      return plantsOf(said, world);
    case 'summary':
      return null;
  }
}

/**
 * What a member says instead of the answer just given: `wait, it's 200 not 20`; null: it mends nothing.
 */
export function readMended(
  step: GuideStepKind,
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): GuideAnswer | null {
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    const tokens = saidInstead(world);
    if (!tokens) continue;
    const answer = valueOf(step, asWritten(tokens, world.folded), { ...world, tokens });
    if (answer) return answer;
  }
  return null;
}

function metersOf(said: string, { meters, steering }: WishWords): GuideAnswer | null {
  const fits = (phrases: readonly string[]): boolean => phrases.some((word) => isSaid(said, word));
  if (fits(meters.both)) return { kind: 'meters', measures: ['ph', 'ec'] };
  if (fits(meters.ph)) return { kind: 'meters', measures: ['ph'] };
  if (fits(meters.ec)) return { kind: 'meters', measures: ['ec'] };
  return fits(steering.none) ? { kind: 'meters', measures: [] } : null;
}

/** `about 80`, `30 cm deep i think`: the one number, with its unit where more is said than that it is about so. */
function amountIn(
  tokens: readonly Token[],
  world: WishWorld,
  read: (words: readonly Token[], world: WishWorld) => number | undefined,
): number | undefined {
  const whole = read(withoutLead(tokens, world.lexicon.own.vocabulary.words.about), world);
  const at = tokens.findIndex(({ kind }) => kind === 'number');
  const isOnly = tokens.filter(({ kind }) => kind === 'number').length === 1;
  if (whole !== undefined || !isOnly) return whole;
  return at + 1 < tokens.length ? read(tokens.slice(at, at + 2), world) : undefined;
}

/** By its name, a word of it, or its number in the list. */
function methodOf(said: string, words: WishWords): GuideAnswer | null {
  const byNumber = /^[1-6]$/.test(said) ? methods[Number(said) - 1] : undefined;
  const method =
    byNumber ??
    methods.find(
      (each) =>
        each === said.replaceAll(' ', '') || words.methods[each].some((name) => isSaid(said, name)),
    );
  return method ? { kind: 'method', method } : methodNamedIn(said, words);
}

/** `its a raft thing in the corner`: one way of growing is named among other words. */
function methodNamedIn(said: string, words: WishWords): GuideAnswer | null {
  const named = methods.filter((each) =>
    words.methods[each].some((name) => ` ${said} `.includes(` ${wordsOf(name).join(' ')} `)),
  );
  const [method] = named;
  return method && named.length === 1 ? { kind: 'method', method, isInPassing: true } : null;
}

/** `12 lettuces`, `lettuce, 12`, `12`, `none`. */
function plantsOf(said: string, world: WishWorld): GuideAnswer | null {
  const tokens = world.tokens.filter(({ kind }) => kind !== 'mark');
  if (world.words.steering.none.some((word) => isSaid(said, word))) {
    return { kind: 'plants', crop: null, plants: 0 };
  }
  for (let length = 1; length <= Math.min(3, tokens.length); length++) {
    const rest = tokens.length - length;
    const first = readCount(tokens.slice(0, length), world);
    if (first !== undefined) {
      const crop = rest > 0 ? readCrop(tokens.slice(length), world) : null;
      if (crop !== undefined) return { kind: 'plants', crop, plants: first };
    }
    const last = rest > 0 ? readCount(tokens.slice(rest), world) : undefined;
    const crop = last === undefined ? undefined : readCrop(tokens.slice(0, rest), world);
    if (last !== undefined && crop !== undefined) return { kind: 'plants', crop, plants: last };
  }
  return null;
}
