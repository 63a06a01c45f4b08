import type { AnswerOf } from '../../spoken/answer-of.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { claimName } from './settled.ts';

/** Who goes on each day, then what was taken. */
export function rosterText({ days, claims }: AnswerOf<'roster'>, s: Speaker): string {
  return [
    ...days.map(({ date, handles }) => {
      const who = handles.map((handle) => s.member(handle));
      return `${s.fullDay(date)}: ${who.length > 0 ? s.and(who) : 'nobody'}.`;
    }),
    ...claims.map(
      ({ handle, settled }) =>
        `${s.member(handle)} has taken ${claimName(settled, s)} (${s.fullDay(settled.on)}).`,
    ),
  ].join('\n');
}
