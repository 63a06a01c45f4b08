import type { Statement } from '../../understanding/statement.ts';
import type { Handling } from '../handling.ts';

/** Says of a message that logs nothing what it came to: a greeting, thanks, chatter, or something left out. */
export function acknowledge(handling: Handling, statements: readonly Statement[]): void {
  const whys = new Set(
    statements.map((statement) => (statement.kind === 'passed-over' ? statement.why : null)),
  );
  const isOnly = (...of: readonly string[]): boolean =>
    [...whys].every((why) => why !== null && of.includes(why));
  if (isOnly('thanks')) return giveThanks(handling);
  if (isOnly('thanks', 'greeting')) return nod(handling, 'greeted');
  return isOnly('chatter') ? nod(handling, 'heard') : leftOut(handling);
}

export function giveThanks(handling: Handling): void {
  nod(handling, 'thanks');
}

function nod(handling: Handling, kind: 'thanks' | 'greeted' | 'heard'): void {
  handling.inPassing(() => {
    handling.say({ kind: 'answer', answer: { kind } });
  });
}

export function leftOut(handling: Handling): void {
  handling.say({ kind: 'answer', answer: { kind: 'left-out' } });
}
