import type { Language } from '../../../greenhouse/member.ts';
import { german } from './de.ts';
import { english } from './en.ts';
import type { Phrases } from './phrases.ts';

const byLanguage: Readonly<Record<Language, Phrases>> = { en: english, de: german };

export function phrasesOf(language: Language): Phrases {
  return byLanguage[language];
}
