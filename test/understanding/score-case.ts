import type { ExpectedEntry, MessageCase } from './message-case.ts';

/** How one case went: what was logged that should not have been is the worst. */
export interface Score {
  readonly isExact: boolean;
  /** Logged, and not expected. */
  readonly wrong: readonly ExpectedEntry[];
  readonly missing: readonly ExpectedEntry[];
  readonly faults: readonly string[];
  readonly asked: boolean;
}

interface LineOut {
  readonly kind?: string;
  readonly error?: string;
  readonly text?: string;
  readonly logged?: readonly ExpectedEntry[];
  readonly struck?: readonly ExpectedEntry[];
}

/** Holds the lines that a message caused against what its case expects. */
export function scoreCase({ expect }: MessageCase, out: readonly object[]): Score {
  const lines = out as readonly LineOut[];
  const logged = lines.flatMap((line) => line.logged ?? []);
  const unmatched = [...logged];
  const missing = expect.logged.filter((wanted) => {
    const found = unmatched.findIndex((entry) => matches(entry, wanted));
    if (found >= 0) unmatched.splice(found, 1);
    return found < 0;
  });
  const has = (kind: string): boolean => lines.some((line) => line.kind === kind);
  const struck = lines.flatMap((line) => line.struck ?? []).length;
  const faults = [
    ...differs('asks', expect.asks, has('question')),
    ...differs('answers', expect.answers, has('answer')),
    ...differs('refuses', expect.refuses, has('refusal')),
    ...differs('corrects', expect.corrects, has('correction')),
    ...differs('struck', expect.struck, struck),
    ...(expect.says ?? []).flatMap((said) => lacks(said, lines)),
    ...lines.flatMap(({ error }) => (error === undefined ? [] : [`error: ${error}`])),
  ];
  return {
    isExact: unmatched.length === 0 && missing.length === 0 && faults.length === 0,
    wrong: unmatched,
    missing,
    faults,
    asked: has('question'),
  };
}

function lacks(said: string, lines: readonly LineOut[]): readonly string[] {
  const isSaid = lines.some(({ text = '' }) => new RegExp(said, 'u').test(text));
  return isSaid ? [] : [`says: nothing like ${said}`];
}

function differs<T>(what: string, expected: T | undefined, found: T): readonly string[] {
  if (expected === undefined || expected === found) return [];
  return [`${what}: expected ${String(expected)}, found ${String(found)}`];
}

/** A number holds within this share. */
const tolerance = 0.005;

function matches(entry: ExpectedEntry, wanted: ExpectedEntry): boolean {
  return Object.entries(wanted).every(([field, value]) => {
    const found = entry[field];
    if (field === 'at') return Date.parse(String(found)) === Date.parse(String(value));
    if (field === 'approximate') return (found ?? false) === value;
    if (typeof value === 'number' && typeof found === 'number') {
      return Math.abs(found - value) <= tolerance * Math.abs(value) + 1e-9;
    }
    return found === value;
  });
}
