import type { DutyLine } from '../../planning/duty-line.ts';
import { grouped } from '../spoken/check-groups.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dutyText } from './duty-text.ts';
import { whyText } from './why.ts';

/** Duties in the order of the trip, numbered, each with its reason; what rides along comes last. */
export function dutyList(lines: readonly DutyLine[], s: Speaker): readonly string[] {
  const due = grouped(lines.filter(({ duty }) => !duty.alongside));
  const alongside = grouped(lines.filter(({ duty }) => duty.alongside));
  const told = [...due, ...alongside].map((group, position) => numbered(group, position + 1, s));
  if (alongside.length === 0) return told;
  const heading = due.length > 0 ? 'Wenn du schon da bist:' : 'Nicht eilig, lohnt sich nebenbei:';
  return [...told.slice(0, due.length), heading, ...told.slice(due.length)];
}

function numbered(group: readonly DutyLine[], place: number, s: Speaker): string {
  const [line] = group;
  return `${place}. ${dutyText(group, s)}.${line ? ` ${whyText(line, s)}` : ''}`;
}

/** `1 Aufgabe`, counting what is due by itself. */
export function thingsToDo(lines: readonly DutyLine[]): string {
  const count = grouped(lines.filter(({ duty }) => !duty.alongside)).length;
  return count === 1 ? '1 Aufgabe' : `${count} Aufgaben`;
}
