import type { Language } from '../../../greenhouse/member.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import type { Phrases } from './phrases.ts';

export const phrasesOf: Readonly<Record<Language, Phrases>> = { en, de };
