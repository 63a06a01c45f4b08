import type { DutyLine } from '../../planning/duty-line.ts';

/** Whether its millilitres rest on nothing but what such products mostly have. */
export function isOfUsualStrength({ reason }: Pick<DutyLine, 'reason'>): boolean {
  const basis =
    reason.kind === 'out-of-range'
      ? reason.basis
      : reason.kind === 'water' && reason.mix?.strength !== 'plain'
        ? reason.mix?.basis
        : undefined;
  return basis?.kind === 'usual-strength';
}
