import type { Entry } from '../../greenhouse/entry.ts';
import { type EntryGroup, entryGroups } from '../spoken/entry-groups.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { atTime } from './day-text.ts';
import { entryText } from './entry-text.ts';

/**
 * Entries under a heading, a line for each system and time:
 * `Eingetragen für Bucket row: pH 5,8; 12 l nachgefüllt.`
 */
export function entryLines(heading: string, entries: readonly Entry[], s: Speaker): string[] {
  const groups = entryGroups(entries, s.nowMs);
  const [only] = groups;
  if (!only) return [];
  if (groups.length > 1) return [`${heading}:`, ...groups.map((group) => groupLine(group, s))];
  const where = only.system === null ? '' : ` für ${s.system(only.system).name}`;
  const when = only.atMs === null ? '' : `, ${atTime(only.atMs, s)}`;
  return [`${heading}${where}${when}: ${textOf(only, s)}.`];
}

function groupLine(group: EntryGroup, s: Speaker): string {
  const where = group.system === null ? 'Gewächshaus' : s.system(group.system).name;
  const when = group.atMs === null ? '' : `, ${atTime(group.atMs, s)}`;
  return `${where}${when}: ${textOf(group, s)}`;
}

/** A decimal comma makes a list by commas hard to read: `pH 5,8; EC 1,7 mS/cm`. */
function textOf({ entries }: EntryGroup, s: Speaker): string {
  return entries.map((entry) => entryText(entry, s)).join('; ');
}
