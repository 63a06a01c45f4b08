import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { Entry } from '../../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dutyNames } from '../names.ts';

/** What is kept with systems and kinds of work, a line each. */
export function notesText(
  { about, notes }: Extract<KeepingAnswer, { kind: 'notes' }>,
  s: Speaker,
): string {
  const [first] = notes;
  if (!first) {
    const where =
      about.system !== null
        ? ` for ${s.system(about.system).name}`
        : about.duty !== null
          ? ` for the ${dutyNames[about.duty]}`
          : '';
    const example = s.greenhouse.systems[0]?.name ?? '';
    return `Nothing is noted${where} yet. A grower attaches something like “note for ${example}: the tap is behind the door”, or sends a photo with such words.`;
  }
  const name = placeName(first, s);
  return [
    'Shown with the steps:',
    ...notes.map((note) => noteLine(note, s)),
    `“forget the note for ${name}” takes one off.`,
  ].join('\n');
}

function noteLine(entry: Entry, s: Speaker): string {
  const { note = '', duty, photo } = entry;
  const work = duty === undefined ? '' : `, ${dutyNames[duty]}`;
  const said = note === '' ? '' : ` “${clipped(note, mostQuoted)}”`;
  return `• ${s.capital(placeName(entry, s))}${work}:${said}${photo ? ' (photo)' : ''}`;
}

function placeName({ system }: Entry, s: Speaker): string {
  return system === null ? 'everything' : s.system(system).name;
}
