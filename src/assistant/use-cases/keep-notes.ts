import type { Entry, EntryDraft } from '../../greenhouse/entry.ts';
import type { About, Wish } from '../../understanding/wishes/wish.ts';
import type { Handling } from '../handling.ts';
import { attachedNotes } from './attached-notes.ts';
import { recordEntries } from './record-entries.ts';
import { replaceEntries, strikeOut } from './replace-entries.ts';

/**
 * Keeps a note with a system or a kind of work. A grower's is shown with the steps of that work;
 * anybody else's is a note in the logbook.
 */
export function attachNote(
  handling: Handling,
  {
    about,
    note,
    isInstead,
  }: Pick<Extract<Wish, { kind: 'attach-note' }>, 'about' | 'note' | 'isInstead'>,
): void {
  const { member, writtenAtMs } = handling.heard;
  if (member.role !== 'grower') {
    const { system } = about;
    const said: EntryDraft = { system, quantity: 'note', value: 1, atMs: writtenAtMs, note };
    recordEntries(handling, [said]);
    return;
  }
  const draft = noteDraft(handling, about, note);
  const before = isInstead ? notesOf(handling, about) : [];
  if (before.length > 0) replaceEntries(handling, before, [draft]);
  else recordEntries(handling, [draft]);
}

/** What is kept with a system or a kind of work, with the photo that the message brings. */
export function noteDraft(handling: Handling, { system, duty }: About, note: string): EntryDraft {
  const { writtenAtMs: atMs, photo } = handling.heard;
  return {
    system,
    quantity: 'note',
    value: 1,
    atMs,
    note,
    isAttached: true,
    ...(duty === null ? {} : { duty }),
    ...(photo === null ? {} : { photo }),
  };
}

/** Takes what is kept about a system or a kind of work off it. */
export function dropNotes(handling: Handling, about: About): void {
  const notes = notesOf(handling, about);
  if (notes.length > 0) strikeOut(handling, notes);
  else handling.say({ kind: 'answer', answer: { kind: 'notes', about, notes: [] } });
}

export function showNotes(handling: Handling, about: About): void {
  const isAsked = ({ system, duty }: Entry): boolean =>
    (about.system === null || system === null || system === about.system) &&
    (about.duty === null || duty === undefined || duty === about.duty);
  const notes = attachedNotes(handling.standing.logbook).filter(isAsked);
  handling.say({ kind: 'answer', answer: { kind: 'notes', about, notes } });
}

/** Those about just this. */
function notesOf({ standing }: Handling, { system, duty }: About): readonly Entry[] {
  return attachedNotes(standing.logbook).filter(
    (note) => note.system === system && (duty === null || note.duty === duty),
  );
}
