import type { DutyLine } from '../../planning/duty-line.ts';
import type { DutyMark } from '../../planning/duty-mark.ts';

/** Duties that are told as one, and what became of them. */
export interface ToldDuties {
  /**
   * The first of them: what is true of it is true of all, but for the system, or the product and its mL.
   * Its steps are those of all.
   */
  readonly line: DutyLine;
  readonly lines: readonly DutyLine[];
  readonly mark: DutyMark | null;
}

/**
 * Puts together what is told as one: the same readings, last taken on the same day, of several
 * systems, or the products of one dose; where `isPlain` no reason is told, and none keeps them apart. The order is kept. `marks`:
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
    if (!alike) {
      told.push({ line, lines: [line], mark });
      continue;
    }
    alike.lines.push(line);
    if (line.steps)
      alike.line = { ...alike.line, steps: [...(alike.line.steps ?? []), ...line.steps] };
  }
  return told;
}

/** How much of what is due by itself, not only alongside, is still open. */
export function openCount(told: readonly ToldDuties[]): number {
  return told.filter(({ line, mark }) => !line.duty.alongside && mark === null).length;
}

function areAlike(one: DutyLine, other: DutyLine, isPlain: boolean): boolean {
  if (one.duty.kind !== other.duty.kind || one.duty.alongside !== other.duty.alongside)
    return false;
  if (one.duty.system === null || other.duty.system === null) return false;
  const mayBeOne =
    one.duty.kind === 'dose'
      ? one.duty.system === other.duty.system && one.duty.product !== other.duty.product
      : one.duty.kind === 'check' && (isPlain || one.duty.dueOn === other.duty.dueOn);
  return (
    mayBeOne && JSON.stringify(toldOf(one, isPlain)) === JSON.stringify(toldOf(other, isPlain))
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
