import type { EntryDraft } from '../../greenhouse/entry.ts';
import { liveEntries } from '../../logbook/logbook.ts';
import type { Standing } from '../standing.ts';

/**
 * Top-ups with the litres that the round before them had asked for: who pours just those may not have
 * looked at the brim, who says another figure has, and who says only that it is done poured about that.
 */
export function askedFor(drafts: readonly EntryDraft[], standing: Standing): readonly EntryDraft[] {
  return drafts.map((draft) => {
    const isTickedOff = draft.quantity === 'duty-done' && draft.duty === 'top-up';
    if (draft.quantity !== 'top-up' && !isTickedOff) return draft;
    const askedL = litresAsked(draft, standing);
    return askedL === null ? draft : { ...draft, askedL };
  });
}

function litresAsked({ system, atMs }: EntryDraft, standing: Standing): number | null {
  const round = standing.rounds.findLast(({ sentAtMs }) => sentAtMs <= atMs);
  const duty = round?.duties.find((asked) => asked.kind === 'top-up' && asked.system === system);
  if (!round || !duty?.litres) return null;
  const isAnswered = liveEntries(standing.logbook, system, 'top-up').some(
    (entry) => entry.atMs >= round.sentAtMs && entry.atMs <= atMs,
  );
  return isAnswered ? null : duty.litres;
}
