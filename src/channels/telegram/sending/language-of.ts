import type { Greenhouse } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';

/** The language of a member; a group has its grower's. */
export function languageOf(to: string, { members }: Greenhouse): Language {
  const reader = members.find(({ handle }) => handle === to);
  return (reader ?? members.find(({ role }) => role === 'grower'))?.language ?? 'en';
}
