import type { DutyLine } from '../../planning/duty-line.ts';

/**
 * Duties that are told as one: the same readings, last taken on the same day, of several systems.
 * Every group has at least one line; the order is kept.
 */
export function grouped(lines: readonly DutyLine[]): readonly (readonly DutyLine[])[] {
  const groups: DutyLine[][] = [];
  for (const line of lines) {
    const group = groups.find(([first]) => first !== undefined && areAlike(first, line));
    if (group) group.push(line);
    else groups.push([line]);
  }
  return groups;
}

function areAlike(one: DutyLine, other: DutyLine): boolean {
  return (
    one.duty.kind === 'check' &&
    other.duty.kind === 'check' &&
    one.duty.alongside === other.duty.alongside &&
    one.duty.dueOn === other.duty.dueOn &&
    one.duty.system !== null &&
    other.duty.system !== null &&
    JSON.stringify(one.reason) === JSON.stringify(other.reason)
  );
}
