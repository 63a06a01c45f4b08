import type { Greenhouse } from '../greenhouse.ts';
import { sameData } from './same-data.ts';

/** What a change replaced, and by what: only the parts of the set-up that it touched. */
export interface SetUpPatch {
  readonly before: Partial<Greenhouse>;
  readonly after: Partial<Greenhouse>;
}

export function patchBetween(before: Greenhouse, after: Greenhouse): SetUpPatch {
  const touched = partsOf(before, after).filter((part) => !sameData(before[part], after[part]));
  return { before: only(before, touched), after: only(after, touched) };
}

/** The set-up as it was before; null where a touched part has been changed again since. */
export function withoutPatch(
  present: Greenhouse,
  { before, after }: SetUpPatch,
): Greenhouse | null {
  const touched = partsOf(before, after);
  if (touched.some((part) => !sameData(present[part], after[part]))) return null;
  const kept = Object.fromEntries(
    Object.entries(present).filter(([part]) => !(touched as string[]).includes(part)),
  );
  return { ...kept, ...before } as Greenhouse;
}

function partsOf(
  one: Partial<Greenhouse>,
  other: Partial<Greenhouse>,
): readonly (keyof Greenhouse)[] {
  return [...new Set([...Object.keys(one), ...Object.keys(other)])] as (keyof Greenhouse)[];
}

function only(greenhouse: Greenhouse, parts: readonly (keyof Greenhouse)[]): Partial<Greenhouse> {
  return Object.fromEntries(
    parts.flatMap((part) => (greenhouse[part] === undefined ? [] : [[part, greenhouse[part]]])),
  );
}
