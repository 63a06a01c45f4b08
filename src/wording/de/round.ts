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
  const late = round.isLate ? ` (verspätet: um ${clock} lief ich nicht)` : '';
  const day = `${s.fullDay(round.date)}${late}`;
  const stock = [
    ...(round.rain ? [rainText(round.rain, s)] : []),
    ...[shoppingText(round.shopping ?? [], s)].filter((line) => line !== null),
  ];
  if (round.duties.length === 0) {
    return [`${day}: nichts zu tun.`, ...stock].join(' ');
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
  if (open === 0) return 'nichts mehr offen';
  return open === 1 ? '1 Aufgabe' : `${open} Aufgaben`;
}

/** One quiet line for whoever is away. */
function coverText({ covers = [] }: Round, s: Speaker): string {
  if (covers.length === 0) return 'Heute kann niemand gehen.';
  return `Darum kümmert sich ${s.and(covers.map((handle) => s.member(handle)))}.`;
}

function askText({ duties }: Round, s: Speaker): string {
  const id = duties.find(({ duty }) => duty.system !== null)?.duty.system ?? null;
  const { name } = id === null ? s.greenhouse.systems[0]! : s.system(id);
  return `Frag „warum“ nach den Gründen oder „wie fülle ich ${name} auf“ nach den Schritten.`;
}
