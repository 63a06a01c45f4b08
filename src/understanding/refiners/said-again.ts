import type { EntryStatement, Statement } from '../statement.ts';

/** `plugged it back in, bubbling again`: that something failed or came back, told once more, is told once. */
export function withoutSaidAgain(statements: readonly Statement[]): readonly Statement[] {
  const first = new Map<string, EntryStatement>();
  return statements.filter((one) => {
    if (one.kind !== 'entry' || !isOfSupply(one)) return true;
    const { system, quantity, of, atMs } = one.draft;
    const key = `${system ?? ''}|${quantity}|${of}|${atMs}`;
    if (first.has(key)) return false;
    first.set(key, one);
    return true;
  });
}

function isOfSupply({ draft: { quantity } }: EntryStatement): boolean {
  return quantity === 'outage' || quantity === 'restored';
}
