import { type ReadGreenhouse, readGreenhouseFile } from './read-greenhouse-file.ts';

/** A greenhouse from the text of a greenhouse file; what is not JSON is one fault with its place. */
export function parseGreenhouseText(text: string): ReadGreenhouse {
  // Editors on Windows put a byte order mark first.
  const plain = text.replace(/^\uFEFF/, '');
  let json: unknown;
  try {
    json = JSON.parse(plain);
  } catch (error) {
    return { ok: false, faults: [{ ...placeOf(plain, error as SyntaxError), expected: 'JSON' }] };
  }
  return readGreenhouseFile(json);
}

function placeOf(text: string, { message }: SyntaxError): { path: string; found: string } {
  const told = /at position (\d+)/.exec(message)?.[1];
  const atEnd = message.startsWith('Unexpected end') || Number(told) >= text.length;
  const position = atEnd ? text.length : told === undefined ? null : Number(told);
  if (position === null) return { path: 'file', found: message };
  const before = text.slice(0, position).split('\n');
  const column = (before.at(-1) ?? '').length + 1;
  return {
    path: `line ${before.length}, column ${column}`,
    found: atEnd
      ? 'the end of the file'
      : JSON.stringify(text.slice(position).split('\n')[0]?.slice(0, 30)),
  };
}
