import type { Round } from '../../assistant/replies/reply.ts';
import { instantOf } from '../../greenhouse/local-time.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dutyList, thingsToDo } from './duty-list.ts';

/** The morning message: the day, what needs doing and why. */
export function roundText(round: Round, s: Speaker): string {
  const { morning, timeZone } = s.greenhouse;
  const clock = s.clock(instantOf(round.date, morning, timeZone));
  const late = round.isLate ? ` (verspätet: um ${clock} lief ich nicht)` : '';
  const day = `${s.fullDay(round.date)}${late}`;
  if (round.duties.length === 0) return `${day}: nichts zu tun.`;
  return [`${day}: ${thingsToDo(round.duties)}.`, ...dutyList(round.duties, s)].join('\n');
}
