import type { Language } from '../../greenhouse/member.ts';
import { german } from './de/german.ts';
import { english } from './en/english.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A language is a folder of data; the compiler says what a new one lacks. */
export const vocabularies: Readonly<Record<Language, Vocabulary>> = { en: english, de: german };
