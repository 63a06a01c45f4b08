import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { Entry } from '../../../greenhouse/entry.ts';
import { clipped, mostQuoted } from '../../spoken/clipped.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { dutyNames } from '../names.ts';

/** What is kept with systems and kinds of work, a line each. */
export function notesText(
  { notes }: Extract<KeepingAnswer, { kind: 'notes' }>,
  s: Speaker,
): string {
  const [first] = notes;
  if (!first) {
    const example = s.greenhouse.systems[0]?.name ?? '';
    return `Dazu ist noch nichts notiert. Wer das Gewächshaus führt, merkt etwas vor mit „Notiz für ${example}: der Hahn ist hinter der Tür“, oder schickt ein Foto mit solchen Worten.`;
  }
  const name = placeName(first, s);
  return [
    'Zu den Schritten gemerkt:',
    ...notes.map((note) => noteLine(note, s)),
    `„vergiss die Notiz für ${name}“ nimmt eine weg.`,
  ].join('\n');
}

function noteLine(entry: Entry, s: Speaker): string {
  const { note = '', duty, photo } = entry;
  const work = duty === undefined ? '' : `, ${dutyNames[duty]}`;
  const said = note === '' ? '' : ` „${clipped(note, mostQuoted)}“`;
  return `• ${s.capital(placeName(entry, s))}${work}:${said}${photo ? ' (Foto)' : ''}`;
}

function placeName({ system }: Entry, s: Speaker): string {
  return system === null ? 'alles' : s.system(system).name;
}
