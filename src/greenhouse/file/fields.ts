import { IANAZone } from 'luxon';
import { z } from 'zod';
import { isLocalDate, isLocalTime } from '../local-time.ts';

/** Each field says in one phrase what it expects, whatever is wrong with what it got. */

export function numberFrom(least: number, most: number, what: string) {
  const error = `${what}, from ${least} to ${most}`;
  return z.number({ error }).min(least, { error }).max(most, { error });
}

export function positiveUpTo(most: number, what: string) {
  const error = `${what}, above 0 and at most ${most}`;
  return z.number({ error }).positive({ error }).max(most, { error });
}

export function wholeFrom(least: number, most: number, what: string) {
  const error = `${what}, a whole number from ${least} to ${most}`;
  return z.int({ error }).min(least, { error }).max(most, { error });
}

const longestName = 80;

/** A name as people write it: one line, not empty. Spaces around it are dropped. */
export function name(what: string) {
  const error = `${what}, one line of 1 to ${longestName} characters`;
  return z
    .string({ error })
    .trim()
    .min(1, { error })
    .max(longestName, { error })
    .refine((text) => !/\p{Cc}/u.test(text), { error });
}

export function oneWord(what: string) {
  return name(what).refine((text) => !/\s/u.test(text), { error: `${what}, without spaces` });
}

export function oneOf<const T extends readonly string[]>(words: T, what: string) {
  return z.enum(words, { error: `${what}: ${inWords(words)}` });
}

/** Several spellings of one unit, in any case of letters. */
export function spelling<T extends string>(spellings: Readonly<Record<string, T>>, what: string) {
  const meant = new Map(
    Object.entries(spellings).map(([text, unit]) => [text.toLowerCase(), unit]),
  );
  const error = `${what}: ${inWords(Object.keys(spellings))}`;
  return z.string({ error }).transform((text, context) => {
    const unit = meant.get(text.trim().toLowerCase());
    if (unit !== undefined) return unit;
    context.addIssue({ code: 'custom', message: error });
    return z.NEVER;
  });
}

export function localDate(what: string) {
  const error = `${what}, a date like 2027-05-04`;
  return z.string({ error }).refine(isLocalDate, { error });
}

export function localTime(what: string) {
  const error = `${what}, a time of day like 07:00`;
  return z.string({ error }).refine(isLocalTime, { error });
}

export function timeZone() {
  const error = 'a time zone of the IANA database, like Europe/Dublin';
  return z.string({ error }).refine((text) => IANAZone.isValidZone(text), { error });
}

/** A lowest and a highest value, the first below the second. */
export function range(least: number, most: number, what: string) {
  const end = numberFrom(least, most, `a number (${what})`);
  const error = `two numbers, the lower first: ${what}`;
  return z.tuple([end, end], { error }).refine(([lowest, highest]) => lowest < highest, { error });
}

export function listOf<T extends z.ZodType>(item: T, what: string) {
  return z.array(item, { error: `a list of ${what}` });
}

export function objectOf<const T extends z.ZodRawShape>(shape: T, what: string) {
  return z.object(shape, { error: what });
}

function inWords(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}
