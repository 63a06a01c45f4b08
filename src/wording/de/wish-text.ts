import type { HouseholdWish } from '../../assistant/household/wish.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** What pressing a button of the household does. */
export function wishText(wish: HouseholdWish, s: Speaker): string {
  switch (wish.kind) {
    case 'invite':
      if (wish.handle !== null) return `${s.member(wish.handle)} einladen`;
      return wish.role === 'grower' ? 'Leitung einladen' : 'Hilfe einladen';
    case 'show':
      return 'Wer ist dabei';
    case 'remove':
      return `${s.member(wish.handle)} entfernen`;
    case 'leave':
      return 'Verlassen';
    case 'stay':
      return 'Bleiben';
    case 'turn-to':
      return s.greenhouse.name;
    case 'tie-room':
      return 'Diese Gruppe nutzen';
    case 'untie-room':
      return 'Gruppe nicht mehr nutzen';
    case 'no-words':
      return 'In Ordnung';
  }
}
