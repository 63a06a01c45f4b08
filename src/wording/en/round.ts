import type { Round } from '../../assistant/replies/reply.ts';
import { instantOf } from '../../greenhouse/local-time.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dutyList, thingsToDo } from './duty-list.ts';

/** The morning message: the day, what needs doing and why. */
export function roundText(round: Round, s: Speaker): string {
  const { morning, timeZone } = s.greenhouse;
  const clock = s.clock(instantOf(round.date, morning, timeZone));
  const late = round.isLate ? ` (late: I was not running at ${clock})` : '';
  const day = `${s.fullDay(round.date)}${late}`;
  if (round.duties.length === 0) return `${day}: nothing to do.`;
  return [`${day}: ${thingsToDo(round.duties)}.`, ...dutyList(round.duties, s)].join('\n');
}
