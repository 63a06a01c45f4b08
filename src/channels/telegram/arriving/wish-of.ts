import type { HouseholdWish } from '../../../assistant/household/wish.ts';
import type { Member } from '../../../greenhouse/member.ts';
import type { Said } from '../reading/told.ts';
import { householdWords, newcomerWords } from './household-words.ts';

/** What a member wants of the household, by a command or in words; null: it is about the greenhouse. */
export function wishOf(
  { command, text, photoId, place, isAddressed }: Said,
  members: readonly Member[],
  self: { readonly readsAll: boolean },
): HouseholdWish | null {
  if (!isAddressed) return null;
  if (command) return wishOfCommand(command.name);
  if (text === '' && photoId !== null) return null;
  if (text === '') return place.isPrivate ? { kind: 'no-words' } : null;
  const invited = matched('invite', text);
  if (invited) return invitationOf(invited.who, members);
  const removed = memberNamed(matched('remove', text)?.who, members);
  if (removed) return { kind: 'remove', handle: removed.handle };
  if (matched('show', text)) return { kind: 'show' };
  if (matched('leave', text)) return { kind: 'leave' };
  if (place.isPrivate) return null;
  if (matched('untie', text)) return { kind: 'untie-room' };
  if (matched('tie', text)) {
    const { chatId, title } = place;
    return { kind: 'tie-room', roomId: String(chatId), title, readsAll: self.readsAll };
  }
  return null;
}

function wishOfCommand(name: string): HouseholdWish | null {
  if (name === 'people') return { kind: 'show' };
  return name === 'leave' ? { kind: 'leave' } : null;
}

function invitationOf(who: string | undefined, members: readonly Member[]): HouseholdWish | null {
  if (who === undefined || newcomerWords.helper.test(who)) {
    return { kind: 'invite', role: 'helper', handle: null };
  }
  if (newcomerWords.grower.test(who)) return { kind: 'invite', role: 'grower', handle: null };
  const member = memberNamed(who, members);
  return { kind: 'invite', role: member?.role ?? 'helper', handle: member?.handle ?? null };
}

function memberNamed(who: string | undefined, members: readonly Member[]): Member | undefined {
  const wanted = who?.toLowerCase();
  return members.find(
    ({ name, handle }) => name.toLowerCase() === wanted || handle.toLowerCase() === wanted,
  );
}

function matched(
  kind: keyof typeof householdWords,
  text: string,
): { readonly who: string | undefined } | null {
  for (const pattern of householdWords[kind]) {
    const found = pattern.exec(text.trim());
    if (found) return { who: found.groups?.['who'] };
  }
  return null;
}
