import type { Language } from '../../../greenhouse/member.ts';
import { englishWishes } from './english.ts';
import { germanWishes } from './german.ts';
import type { WishWords } from './wish-words.ts';

export const wishWords: Readonly<Record<Language, WishWords>> = {
  en: englishWishes,
  de: germanWishes,
};
