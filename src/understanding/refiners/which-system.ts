import type { Frame } from '../reading/frame.ts';
import type { Choice, DoubtReason, DoubtStatement } from '../statement.ts';
import { differ } from './differ.ts';
import { doubt, doubtOf, soundDraft } from './doubt-of.ts';
import { ownDoubt } from './own-doubt.ts';
import type { Settled } from './settled.ts';
import { sharedProducts } from './shared-amount.ts';
import { valueOf } from './value-of.ts';

/** All that lacks a system, asked about at once: a button for each system that could be meant. */
export function whichSystem(frame: Frame, unnamed: readonly Settled[]): DoubtStatement[] {
  const groups = new Map<string, Settled[]>();
  // `20 ml A and B`: a system alone would not tell how much of each; all of it is to be told anew.
  const shared = unnamed.filter(({ fact }) => fact.shared);
  for (const one of unnamed) {
    if (one.fact.shared) continue;
    const key = `${one.askSystem?.written ?? ''}|${one.askSystem?.offer.map(({ id }) => id).join() ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const asked = [...groups.values()].map((group) => {
    const [first] = group;
    const { isNoName, offer, written } = first!.askSystem!;
    const offered = offer.length > 0 ? offer : frame.context.greenhouse.systems;
    const inDoubt = group.find(({ fact }) => fact.doubt);
    if (inDoubt && group.length === 1 && inDoubt.fact.doubt)
      return ownDoubt(frame, { ...inDoubt, systems: [] }, inDoubt.fact.doubt);
    const quantities = new Set(group.map(({ fact }) => fact.quantity));
    const quantity = quantities.size === 1 ? first!.fact.quantity : null;
    const choices = offered.flatMap((system): Choice[] => {
      const drafts = group.map((one) => soundDraft(frame, one, system));
      return drafts.every((draft) => draft !== null)
        ? [{ label: { kind: 'system', system: system.id }, drafts }]
        : [];
    });
    const waiting = choices[0]
      ? {
          for: 'system' as const,
          drafts: choices[0].drafts.map((draft) => ({ ...draft, system: null })),
        }
      : null;
    const reason: DoubtReason = {
      kind: 'which-system',
      quantity,
      ...(isNoName ? { isNoName } : {}),
      ...(written === null ? {} : { written }),
    };
    if (waiting && differ(waiting.drafts) && group.every(({ fact }) => fact.phase === undefined))
      return doubt(frame, first!, { ...reason, ofSeveral: true }, [], waiting);
    const open = doubt(frame, first!, reason, choices, waiting);
    if (choices.length > 0 || first!.fact.amount.kind === 'brim') return open;
    // No system could hold it: the amount itself is the doubt.
    const value = valueOf(first!.fact, offered[0] ?? null, frame.context.greenhouse.units);
    if (value.kind !== 'asked') return open;
    const amount = { ...doubtOf(frame, first!, value, [null]), choices: [] };
    // `topped up`: the answer may tell the amount and the system.
    return first!.fact.amount.kind === 'missing' ? amount : { ...amount, waiting: null };
  });
  return [...shared.map((one) => sharedProducts(frame, { ...one, systems: [] })), ...asked];
}
