import type { DutyLine } from '../../planning/duty-line.ts';

/** Work of more steps than this is told by what and how much; its steps come when they are asked for. */
const MOST_STEPS_TOLD = 3;

/** In a list a long piece of work has no steps, and its care in a few words: both come in full with the steps. */
export function toldInShort(line: DutyLine): DutyLine {
  if (!isUnfoldedWhenAsked(line)) return line;
  const { steps: _steps, cautions, ...rest } = line;
  return cautions ? { ...rest, cautions: { ...cautions, inFull: false } } : rest;
}

/** Never a dose: whether to measure first and how to thin it belongs beside its amount. */
export function isUnfoldedWhenAsked({ duty, steps = [] }: DutyLine): boolean {
  const isLong = duty.kind === 'reservoir-change' || duty.kind === 'clean';
  return isLong && steps.length > MOST_STEPS_TOLD;
}
