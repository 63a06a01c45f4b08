export type Role = 'grower' | 'helper';
export type Language = 'en' | 'de';

export const languages: readonly Language[] = ['en', 'de'];

/** A person in the chat; the handle is unique in the greenhouse. */
export interface Member {
  readonly handle: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
}
