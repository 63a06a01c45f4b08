import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import { understand } from '../../understanding/understand.ts';
import { readCaption } from '../../understanding/wishes/read-caption.ts';
import { readWish } from '../../understanding/wishes/read-wish.ts';
import type { About } from '../../understanding/wishes/wish.ts';
import { refuse } from '../family/refuse.ts';
import type { Handling } from '../handling.ts';
import { contextOf } from '../reading-context.ts';
import { askBack } from './ask-back.ts';
import type { Surroundings } from './hear-message.ts';
import { noteDraft } from './keep-notes.ts';
import { recordEntries } from './record-entries.ts';

/**
 * Keeps a grower's photo with the system that a form attached it to, the system or the kind of work
 * that its caption names, or what the message replied to is about; asks where none tells. False: its
 * caption is to be heard as words.
 */
export function hearPhoto(handling: Handling, text: string, around: Surroundings): boolean {
  const { photo, photoOf, member, isOverheard, writtenAtMs } = handling.heard;
  if (photo === null) return false;
  if (photoOf !== null) {
    attachPhoto(handling, photoOf, text.trim());
    return true;
  }
  const { greenhouse } = handling.standing;
  const isWordless = text.trim() === '';
  if (isWordless && isOverheard) return true;
  if (member.role !== 'grower') {
    if (isWordless) sayNoWords(handling);
    return isWordless;
  }
  if (!isWordless && isForTheReader(handling, text, around)) return false;
  const caption = isWordless ? null : readCaption(text, greenhouse, member, writtenAtMs);
  const about = caption?.about ?? repliedAbout(around);
  const note = caption?.note ?? text.trim();
  if (about) recordEntries(handling, [noteDraft(handling, about, note)]);
  else if (isOverheard) return false;
  else askWhose(handling, note);
  return true;
}

/** By a form: the words with it are a note, whatever they might report elsewhere. */
function attachPhoto(handling: Handling, system: SystemId, note: string): void {
  if (handling.heard.member.role !== 'grower') return refuse(handling);
  // The set-up may have changed since the form was shown.
  const isHere = handling.standing.greenhouse.systems.some(({ id }) => id === system);
  if (isHere) recordEntries(handling, [noteDraft(handling, { system, duty: null }, note)]);
  else askWhose(handling, note);
}

/** It reports, asks or wishes something: then the photo is no more than an illustration. */
function isForTheReader(handling: Handling, text: string, around: Surroundings): boolean {
  const { greenhouse } = handling.standing;
  const { member, writtenAtMs } = handling.heard;
  if (readWish(text, greenhouse, member, writtenAtMs)) return true;
  return understand(text, contextOf(handling, around)).statements.some(
    (statement) =>
      (statement.kind === 'entry' && statement.draft.quantity !== 'note') ||
      ['ask', 'done', 'taking-back', 'answered'].includes(statement.kind),
  );
}

function repliedAbout({ repliedTo }: Surroundings): About | null {
  if (repliedTo?.kind !== 'message') return null;
  const [system, ...others] = repliedTo.systems;
  return system !== undefined && others.length === 0 ? { system, duty: null } : null;
}

/** A button for each system. */
function askWhose(handling: Handling, note: string): void {
  const draftFor = (about: About): readonly EntryDraft[] => [noteDraft(handling, about, note)];
  askBack(handling, {
    reason: { kind: 'whose-photo' },
    choices: handling.standing.greenhouse.systems.map(({ id }) => ({
      label: { kind: 'system', system: id },
      drafts: draftFor({ system: id, duty: null }),
    })),
    waiting: null,
  });
}

function sayNoWords(handling: Handling): void {
  const news = { kind: 'no-words' } as const;
  handling.say({ kind: 'answer', answer: { kind: 'household', news } });
}
