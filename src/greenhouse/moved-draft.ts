import type { EntryDraft } from './entry.ts';
import { believable } from './quantity.ts';
import { litresAtDepth, type System } from './system.ts';

/** The draft as another system's: what was said in cm or as a share is so many litres of that one. */
export function movedTo(draft: EntryDraft, system: System): EntryDraft {
  const moved = { ...draft, system: system.id };
  const said = draft.saidAs;
  if (!said) return moved;
  switch (said.kind) {
    case 'depth':
      return { ...moved, value: litresAtDepth(system, said.cm) };
    case 'below-brim':
      return { ...moved, value: system.brimL - litresAtDepth(system, said.cm) };
    case 'share':
      return { ...moved, value: system.brimL * said.share };
  }
}

/** Whether the system can hold or have what the draft says. */
export function fitsSystem({ quantity, value }: EntryDraft, system: System): boolean {
  const bounds = believable(quantity, system);
  return !bounds || (value >= bounds[0] && value <= bounds[1]);
}
