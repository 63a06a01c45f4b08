import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../../understanding/doubt.ts';
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
