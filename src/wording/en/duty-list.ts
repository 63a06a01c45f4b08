import type { DutyMark } from '../../planning/duty-mark.ts';
import { cautionsOnce } from '../spoken/cautions-once.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import type { Speaker } from '../spoken/speaker.ts';
import type { ToldDuties } from '../spoken/told-duties.ts';
import { howText } from './advice/how-text.ts';
import { dutyText } from './duty-text.ts';
import { levelWanted, whyText } from './why.ts';

/** Duties in the order of the trip, numbered, each with its reason unless plain words will do; what rides along comes last. */
export function dutyList(
  told: readonly ToldDuties[],
  s: Speaker,
  isPlain = false,
): readonly string[] {
  const due = told.filter(({ line }) => !line.duty.alongside);
  const alongside = told.filter(({ line }) => line.duty.alongside);
  const inOrder = [...due, ...alongside];
  const careful = cautionsOnce(inOrder.map(({ line }) => line));
  const lines = inOrder.map((each, position) =>
    numbered({ ...each, line: careful[position] ?? each.line }, position + 1, s, isPlain),
  );
  if (alongside.length === 0) return lines;
  const heading =
    due.length > 0 ? 'While you are there:' : 'Not urgent, but worth doing on a trip:';
  return [...lines.slice(0, due.length), heading, ...lines.slice(due.length)];
}

/** What is closed needs no reason any more, only who closed it. */
function numbered(
  { line, lines, mark }: ToldDuties,
  place: number,
  s: Speaker,
  isPlain: boolean,
): string {
  const what = dutyText(lines, s);
  if (mark) return `${place}. ${markText(what, mark, s)}`;
  const why = isPlain ? levelWanted(line) : ` ${whyText(line, s)}`;
  return `${place}. ${what}.${why}${howText(line, s)}`;
}

function markText(what: string, { state, by, note }: DutyMark, s: Speaker): string {
  const who = by === null ? 'a sensor' : s.member(by);
  if (state === 'done') return `✓ ${what} (${who}).`;
  const why = note === undefined ? '' : `: ${clipped(note, mostQuoted)}`;
  return `✗ ${what} (not done, ${who}${why}).`;
}
