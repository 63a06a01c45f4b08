import type { DutyKind } from '../../greenhouse/duty.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { clauseHas, type Frame, type TermRange } from '../reading/frame.ts';
import type { NameTerm } from '../reading/term.ts';
import type { WorkNamed } from '../statement.ts';
import type { Concept } from '../vocabulary/concept.ts';
import { choreIn } from './chores.ts';

/** The work that a stretch of words names: systems, a kind of duty, a chore; null: none of them. */
export function workNamed(frame: Frame, range: TermRange): WorkNamed | null {
  const systems = systemsNamedIn(frame, range);
  const chore = choreIn(frame, range);
  const duty = chore === null ? dutyNamed(frame, range) : null;
  if (systems.length === 0 && duty === null && chore === null) return null;
  return { systems: systems.length > 0 ? systems : null, duty, chore };
}

/** The systems named beyond doubt; `the tubs` are all that are called so. */
export function systemsNamedIn(frame: Frame, { from, to }: TermRange): SystemId[] {
  const found = new Set<SystemId>();
  for (let i = from; i < to; i++) {
    const term = frame.terms[i];
    if (term?.kind === 'name' && (term.sure || isPluralOfSeveral(frame, term)))
      for (const system of term.systems) found.add(system);
  }
  return [...found];
}

/** Whether a system is named of which nobody knows which it is: `the tub`, where there are two. */
export function namesOneOfSeveral(frame: Frame, { from, to }: TermRange): boolean {
  return frame.terms
    .slice(from, to)
    .some((term) => term.kind === 'name' && !term.sure && !isPluralOfSeveral(frame, term));
}

/** `tubs` of a left and a right tub: a word of their names with an ending, and no slip. */
function isPluralOfSeveral({ lexicon }: Frame, { sure, slip, systems, text }: NameTerm): boolean {
  if (sure || slip || systems.length < 2) return false;
  return !lexicon.names.some(({ words }) => words.includes(text));
}

/** The kind of duty that is spoken of: `the top-up`, `the checks`, `calibrating the pen`. */
export function dutyNamed(frame: Frame, range: TermRange): DutyKind | null {
  const has = (...concepts: readonly Concept[]) => clauseHas(frame, range, ...concepts);
  if (has('top-up', 'fill')) return 'top-up';
  if (has('changed-solution', 'change')) return 'reservoir-change';
  if (has('calibrate')) return 'calibration';
  if (has('clean')) return 'clean';
  if (has('check', 'ph', 'ec', 'temperature')) return 'check';
  return null;
}
