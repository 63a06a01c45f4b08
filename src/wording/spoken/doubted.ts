import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../../understanding/doubt.ts';
import type { DoubtReason } from '../../understanding/statement.ts';
import type { Speaker } from './speaker.ts';

/** The entries that hang on the doubt: those that wait, or what the likeliest answer would log. */
export function doubtedDrafts({ waiting, choices }: Doubt): readonly EntryDraft[] {
  if (waiting && waiting.drafts.length > 0) return waiting.drafts;
  return choices[0]?.drafts ?? [];
}

/** The system in question, where there is one and it is plain which. */
export function doubtedSystem(doubt: Doubt, s: Speaker): System | null {
  const drafts = [
    ...(doubt.waiting?.drafts ?? []),
    ...doubt.choices.flatMap((choice) => choice.drafts),
  ];
  const [only, second] = new Set(drafts.map(({ system }) => system));
  return only && second === undefined ? s.system(only) : null;
}

/** The systems that there is a button for. */
export function systemsOffered({ choices }: Doubt, s: Speaker): readonly System[] {
  return choices.flatMap(({ label }) => (label.kind === 'system' ? [s.system(label.system)] : []));
}

/** The systems that share what is in question, where they were named; none: it may be of any. */
export function sharingSystems(doubt: Doubt, s: Speaker): readonly System[] {
  const drafts = [
    ...(doubt.waiting?.drafts ?? []),
    ...doubt.choices.flatMap((each) => each.drafts),
  ];
  const ids = new Set(drafts.flatMap(({ system }) => (system === null ? [] : [system])));
  const isAny = ids.size > 1 && ids.size === s.greenhouse.systems.length;
  return isAny ? [] : [...ids].map((id) => s.system(id));
}

/** `2 l each` of one system: there is nothing to share among several. */
export function isOfPartsOnly({ choices }: Doubt): boolean {
  const kinds = choices.map(({ label }) => label.kind);
  return kinds.includes('in-all') && !kinds.includes('each');
}

/** An amount of water in vessels of unknown size, and no bare number: `three buckets`. */
export function isOfVessels(reason: Extract<DoubtReason, { kind: 'which-unit' }>): boolean {
  return reason.quantity === 'top-up' && !/^[\d.,\s]+$/.test(reason.value);
}

/** One amount that any of several systems may have got is said once. */
export function distinct(texts: readonly string[]): readonly string[] {
  return [...new Set(texts)];
}
