import type { Fault } from './fault.ts';
import { type ReadGreenhouse, readGreenhouseFile } from './read-greenhouse-file.ts';

/** A greenhouse from the text of a greenhouse file; what is not JSON is one fault with its place. */
export function parseGreenhouseText(text: string): ReadGreenhouse {
  // Editors on Windows put a byte order mark first.
  const plain = text.replace(/^\uFEFF/, '');
  let json: unknown;
  try {
    json = JSON.parse(plain);
  } catch {
    return { ok: false, faults: [notJson(plain)] };
  }
  return readGreenhouseFile(json);
}

function notJson(text: string): Fault {
  const good = longestGoodStart(text);
  const before = text.slice(0, good).split('\n');
  const [rest] = text.slice(good, good + 30).split('\n');
  return {
    path: `line ${before.length}, column ${(before.at(-1) ?? '').length + 1}`,
    found: good >= text.length ? 'the end of the file' : JSON.stringify(rest),
    expected: 'JSON',
  };
}

/**
 * How many characters could still become JSON if something else followed. The parser of this
 * Node does not always tell where it stopped; but what it says of a shorter text tells whether
 * the fault is at that text's end or before.
 */
function longestGoodStart(text: string): number {
  let good = 0;
  let bad = text.length + 1;
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (couldGoOn(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function couldGoOn(start: string): boolean {
  try {
    JSON.parse(start);
    return true;
  } catch (error) {
    const { message } = error as SyntaxError;
    const position = /at position (\d+)/.exec(message)?.[1];
    return /^Unexpected end|^Unterminated/.test(message) || Number(position) >= start.length;
  }
}
