import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import { spanMs } from '../times/ago.ts';
import type { Said } from './what-is-said.ts';

/** `2 hours`, `until 4`, `still out`, where it was asked how long something was out; null: it says none of these. */
export function outageAnswered(
  frame: Frame,
  { waiting }: Doubt,
  said: Said | null,
): EntryDraft[] | null {
  const drafts = waiting?.drafts ?? [];
  if (isStillOut(frame)) return [...drafts];
  const [first] = drafts;
  if (!first || !said) return null;
  const { writtenAtMs } = frame.context;
  const lastedMs = said.measure ? spanMs(said.measure) : null;
  // A vague time is put so early that it was over by now.
  const mostEarlierMs = first.approximate === true ? vagueByMs : 0;
  const lateMs = lastedMs === null ? 0 : Math.max(0, first.atMs + lastedMs - writtenAtMs);
  const beganMs = first.atMs - lateMs;
  const backMs = lastedMs === null ? said.timeMs : beganMs + lastedMs;
  if (backMs === null || backMs <= beganMs || backMs > writtenAtMs || lateMs > mostEarlierMs)
    return null;
  return [
    ...drafts.map((draft): EntryDraft => ({ ...draft, atMs: beganMs })),
    ...drafts.map((draft): EntryDraft => {
      return { ...draft, quantity: 'restored', atMs: backMs, approximate: true };
    }),
  ];
}

/** A part of a day may have begun so much before the hour that stands for it. */
const vagueByMs = 6 * 3_600_000;

function isStillOut({ terms }: Frame): boolean {
  return (
    terms.some((term) => means(term, 'broken')) &&
    terms.every(
      (term) =>
        term.kind === 'stop' ||
        means(term, 'broken', 'filler', 'link', 'pronoun', 'article', 'power', 'pump', 'air-pump'),
    )
  );
}
