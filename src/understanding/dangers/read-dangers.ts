import type { Danger } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Context } from '../context.ts';
import { layOut, piecesOf } from '../lay-out.ts';
import { moodsOf } from '../moods/moods-of.ts';
import { fold } from '../reading/fold.ts';
import { type Clause, type Frame, namesIn } from '../reading/frame.ts';
import { findTimes } from '../times/find-times.ts';
import { dangerIn } from './danger-in.ts';

/** Something that may hurt somebody, as a message tells of it. */
export interface DangerSaid {
  readonly of: Danger;
  /** Where, if one system is named for it. */
  readonly system: SystemId | null;
}

/** Of a longer text only the beginning is looked at, so that reading takes a bounded time. */
const longestRead = 2000;

/** What a message tells of that may hurt somebody, each kind once, whatever else it is about. */
export function readDangers(text: string, context: Context): readonly DangerSaid[] {
  const folded = fold(text.slice(0, longestRead));
  const frame = layOut(piecesOf(folded, folded.text.slice(0, longestRead), context), context);
  const isNamed = frame.clauses.some((clause) => dangerIn(frame, clause, []) !== null);
  if (!isNamed) return [];
  const moods = moodsOf(frame, findTimes(frame));
  const said = frame.clauses.flatMap((clause): DangerSaid[] => {
    const found = dangerIn(frame, clause, moods);
    return found ? [{ of: found.of, system: placeOf(frame, clause) }] : [];
  });
  return said.filter(({ of }, i) => said.findIndex((other) => other.of === of) === i);
}

/** The one system named beside it, or else in the message. */
function placeOf(frame: Frame, clause: Clause): SystemId | null {
  const all = { ...clause, from: 0, to: frame.terms.length };
  for (const stretch of [clause, all]) {
    const named = new Set(
      namesIn(frame, stretch).flatMap((i) => {
        const term = frame.terms[i];
        return term?.kind === 'name' ? term.systems : [];
      }),
    );
    if (named.size > 0) return named.size === 1 ? [...named][0]! : null;
  }
  return null;
}
