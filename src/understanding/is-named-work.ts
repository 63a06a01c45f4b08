import type { EntryDraft } from '../greenhouse/entry.ts';
import type { WorkNamed } from './statement.ts';

/** Whether a duty, or what was told of one, is among the work that is spoken of. */
export function isNamedWork(
  { system, duty, chore }: Pick<EntryDraft, 'system' | 'duty' | 'chore'>,
  work: WorkNamed,
): boolean {
  if (work.chore !== null) return chore === work.chore;
  if (work.duty !== null && duty !== work.duty) return false;
  return work.systems === null || (system !== null && work.systems.includes(system));
}
