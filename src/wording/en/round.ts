import type { Round } from '../../assistant/replies/reply.ts';
import { instantOf } from '../../greenhouse/local-time.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { openCount, toldDuties } from '../spoken/told-duties.ts';
import { dutyList } from './duty-list.ts';
import { rainText, shoppingText } from './keeping/stock-text.ts';

/** The morning message: the day, what needs doing and why, and what was done since. */
export function roundText(round: Round, s: Speaker): string {
  const { morning, timeZone } = s.greenhouse;
  const clock = s.clock(instantOf(round.date, morning, timeZone));
  const late = round.isLate ? ` (late: I was not running at ${clock})` : '';
  const day = `${s.fullDay(round.date)}${late}`;
  const stock = [
    ...(round.rain ? [rainText(round.rain, s)] : []),
    ...[shoppingText(round.shopping ?? [], s)].filter((line) => line !== null),
  ];
  if (round.duties.length === 0) {
    return [`${day}: nothing to do.`, ...stock].join(' ');
  }
  const told = toldDuties(round.duties, round.marks, round.isPlain);
  if (round.isBrief) return `${day}: ${openText(openCount(told))}. ${coverText(round, s)}`;
  return [
    `${day}: ${openText(openCount(told))}.`,
    ...dutyList(told, s, round.isPlain),
    ...(round.isPlain ? [askText(round, s)] : []),
    ...stock,
  ].join('\n');
}

function openText(open: number): string {
  if (open === 0) return 'nothing left to do';
  return open === 1 ? '1 thing to do' : `${open} things to do`;
}

/** One quiet line for whoever is away. */
function coverText({ covers = [] }: Round, s: Speaker): string {
  if (covers.length === 0) return 'Nobody can go today.';
  return `${s.and(covers.map((handle) => s.member(handle)))} sees to it.`;
}

function askText({ duties }: Round, s: Speaker): string {
  const id = duties.find(({ duty }) => duty.system !== null)?.duty.system ?? null;
  const { name } = id === null ? s.greenhouse.systems[0]! : s.system(id);
  return `Ask “why” for the reasons, or “how do I top up ${name}” for the steps.`;
}
