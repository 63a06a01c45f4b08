import type { DutyLine } from '../../planning/duty-line.ts';
import type { DutyMark } from '../../planning/duty-mark.ts';

/** Duties that are told as one, and what became of them. */
export interface ToldDuties {
  /** The first of them: what is true of it is true of all, but for the system. */
  readonly line: DutyLine;
  readonly lines: readonly DutyLine[];
  readonly mark: DutyMark | null;
}

/**
 * Puts together what is told as one: the same readings, last taken on the same day, of several
 * systems; where `isPlain` no reason is told, and none keeps them apart. The order is kept. `marks`:
 * what became of each line, in their order.
 */
export function toldDuties(
  lines: readonly DutyLine[],
  marks: readonly (DutyMark | null)[] = [],
  isPlain = false,
): readonly ToldDuties[] {
  const told: { line: DutyLine; lines: DutyLine[]; mark: DutyMark | null }[] = [];
  for (const [position, line] of lines.entries()) {
    const mark = marks[position] ?? null;
    const alike = told.find(
      (other) => areAlike(other.line, line, isPlain) && sameMark(other.mark, mark),
    );
    if (alike) alike.lines.push(line);
    else told.push({ line, lines: [line], mark });
  }
  return told;
}

/** How much of what is due by itself, not only alongside, is still open. */
export function openCount(told: readonly ToldDuties[]): number {
  return told.filter(({ line, mark }) => !line.duty.alongside && mark === null).length;
}

function areAlike(one: DutyLine, other: DutyLine, isPlain: boolean): boolean {
  return (
    one.duty.kind === 'check' &&
    other.duty.kind === 'check' &&
    one.duty.alongside === other.duty.alongside &&
    (isPlain || one.duty.dueOn === other.duty.dueOn) &&
    one.duty.system !== null &&
    other.duty.system !== null &&
    JSON.stringify(toldOf(one, isPlain)) === JSON.stringify(toldOf(other, isPlain))
  );
}

/** What of a reason is told; how often each is measured, only to who asks why exactly. */
function toldOf({ reason }: DutyLine, isPlain: boolean): unknown {
  if (isPlain && 'quantities' in reason) return reason.quantities;
  return reason.kind === 'not-measured' ? { ...reason, rhythm: null } : reason;
}

function sameMark(one: DutyMark | null, other: DutyMark | null): boolean {
  return one?.state === other?.state && one?.by === other?.by && one?.note === other?.note;
}
