import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { Doubt } from '../doubt.ts';
import type { Frame } from '../reading/frame.ts';
import { means } from '../reading/term.ts';
import type { DoubtStatement } from '../statement.ts';
import { spanMs } from '../times/ago.ts';
import { findTimes } from '../times/find-times.ts';
import type { Said } from './what-is-said.ts';
import { again } from './without-system.ts';

/**
 * `2 hours`, `until 4`, `from 2 to 4`, `still out`, where it was asked how long something was out; null: it says
 * none of these.
 */
export function outageAnswered(frame: Frame, doubt: Doubt, said: Said | null): EntryDraft[] | null {
  const drafts = doubt.waiting?.drafts ?? [];
  if (isStillOut(frame)) return [...drafts];
  const [first] = drafts;
  if (!first) return null;
  if (!said) return betweenTimes(frame, drafts);
  const { writtenAtMs } = frame.context;
  const lastedMs = said.measure ? spanMs(said.measure) : null;
  // A vague time is put so early that it was over by now.
  const mostEarlierMs = isUndated(doubt) ? undatedByMs : first.approximate === true ? vagueByMs : 0;
  const lateMs = lastedMs === null ? 0 : Math.max(0, first.atMs + lastedMs - writtenAtMs);
  const beganMs = first.atMs - lateMs;
  const backMs = lastedMs === null ? said.timeMs : beganMs + lastedMs;
  if (backMs === null || backMs <= beganMs || backMs > writtenAtMs || lateMs > mostEarlierMs)
    return null;
  return fromTo(drafts, beganMs, backMs);
}

/** `still out`, where it was asked whether a device was only switched off. */
export function failedAfterAll(frame: Frame, { choices }: Doubt): readonly EntryDraft[] | null {
  const out = choices.find(({ label }) => label.kind === 'still-out');
  return out && isStillOut(frame) ? out.drafts : null;
}

/** `yesterday evening`, where nobody had said when it was: how long is asked again, of that time. */
export function outageDated(frame: Frame, doubt: Doubt, said: Said | null): DoubtStatement | null {
  const { reason, waiting } = doubt;
  const timeSaid = said?.timeMs ?? null;
  if (!isUndated(doubt) || reason.kind !== 'how-long-out' || !said || timeSaid === null)
    return null;
  if (said.measure !== null || timeSaid >= frame.context.writtenAtMs) return null;
  const { timeIsVague } = said;
  const dated = (draft: EntryDraft): EntryDraft => ({
    ...draft,
    atMs: timeSaid,
    approximate: timeIsVague,
  });
  return again(frame, {
    reason: { kind: 'how-long-out', of: reason.of },
    choices: doubt.choices.map((choice) => ({ ...choice, drafts: choice.drafts.map(dated) })),
    waiting: waiting && { ...waiting, drafts: waiting.drafts.map(dated) },
  });
}

function isUndated({ reason }: Doubt): boolean {
  return reason.kind === 'how-long-out' && reason.isUndated === true;
}

/** `from 2 to 4`: both ends are told, and nothing else. */
function betweenTimes(frame: Frame, drafts: readonly EntryDraft[]): EntryDraft[] | null {
  const marks = findTimes(frame);
  const [from, to] = marks;
  const isInTime = (i: number): boolean => marks.some((mark) => i >= mark.from && i <= mark.to);
  const saysElse = frame.terms.some(
    (term, i) =>
      !isInTime(i) &&
      term.kind !== 'mark' &&
      !means(term, 'broken', 'filler', 'link', 'pronoun', 'article', 'power', 'until', 'from'),
  );
  if (!from || !to || marks.length > 2 || saysElse) return null;
  const ends = from.askFrom === null && to.askFrom === null && to.until;
  if (!ends || from.atMs >= to.atMs || to.atMs > frame.context.writtenAtMs) return null;
  return fromTo(drafts, from.atMs, to.atMs, from.vague, to.vague);
}

function fromTo(
  drafts: readonly EntryDraft[],
  beganMs: number,
  backMs: number,
  isFromVague?: boolean,
  isToVague = true,
): EntryDraft[] {
  return [
    ...drafts.map((draft): EntryDraft => {
      const began = { ...draft, atMs: beganMs };
      return isFromVague === undefined ? began : { ...began, approximate: isFromVague };
    }),
    ...drafts.map((draft): EntryDraft => {
      return { ...draft, quantity: 'restored', atMs: backMs, approximate: isToVague };
    }),
  ];
}

/** A part of a day may have begun so much before the hour that stands for it. */
const vagueByMs = 6 * 3_600_000;

/** Where nobody said when it was, it may have been so long before it was told. */
const undatedByMs = 48 * 3_600_000;

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
