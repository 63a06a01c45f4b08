import { stockItemFor } from '../greenhouse/common-products.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { type Member, mayHandleAcids } from '../greenhouse/member.ts';
import type { DutyLine } from './duty-line.ts';

/** Duties as one member may do them, and those that are left to the grower. */
export interface SharedOut {
  readonly mine: readonly DutyLine[];
  readonly leftToGrower: readonly DutyLine[];
}

/** Nobody is sent to strong acid or alkali who was not shown how: such doses wait for the grower. */
export function dutiesForMember(
  lines: readonly DutyLine[],
  member: Member,
  greenhouse: Greenhouse,
): SharedOut {
  if (mayHandleAcids(member)) return { mine: lines, leftToGrower: [] };
  const reagents = new Set(
    (['ph-down', 'ph-up'] as const).flatMap((common) => {
      const item = stockItemFor(common, greenhouse.stock);
      return item ? [common, item.product] : [common];
    }),
  );
  const isReagent = ({ duty }: DutyLine): boolean =>
    duty.kind === 'dose' && duty.product !== undefined && reagents.has(duty.product);
  return {
    mine: lines.filter((line) => !isReagent(line)),
    leftToGrower: lines.filter(isReagent),
  };
}
