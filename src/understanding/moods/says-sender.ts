import type { Frame } from '../reading/frame.ts';
import type { Term } from '../reading/term.ts';

/** Whether a word is the name of whoever writes. */
export function saysSender({ context: { member } }: Frame, term: Term | undefined): boolean {
  return (
    term !== undefined &&
    [member.handle.toLowerCase(), member.name.toLowerCase()].includes(term.text)
  );
}
