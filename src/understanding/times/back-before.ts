import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Context } from '../context.ts';

/** `back on at 8`, where it went out at 9: it cannot have come back before it failed. */
export function isBackBeforeOut(
  { outSince }: Context,
  { quantity, of, system, atMs }: EntryDraft,
): boolean {
  if (quantity !== 'restored' || !outSince) return false;
  const ended = outSince.filter(
    (out) =>
      out.of === (of ?? 'power') &&
      (out.system === null || system === null || out.system === system),
  );
  return ended.length > 0 && ended.every(({ sinceMs }) => atMs < sinceMs);
}
