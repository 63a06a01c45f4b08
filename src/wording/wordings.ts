import type { Language } from '../greenhouse/member.ts';
import { german } from './de/german.ts';
import { english } from './en/english.ts';
import type { Wording } from './wording.ts';

/** Every language that a member can be spoken to in. */
export const wordings: Readonly<Record<Language, Wording>> = { en: english, de: german };
