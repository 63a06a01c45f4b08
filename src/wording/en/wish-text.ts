import type { HouseholdWish } from '../../assistant/household/wish.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** What pressing a button of the household does. */
export function wishText(wish: HouseholdWish, s: Speaker): string {
  switch (wish.kind) {
    case 'invite':
      if (wish.handle !== null) return `Invite ${s.member(wish.handle)}`;
      return wish.role === 'grower' ? 'Invite a grower' : 'Invite a helper';
    case 'show':
      return 'Who is in';
    case 'remove':
      return `Remove ${s.member(wish.handle)}`;
    case 'leave':
      return 'Leave';
    case 'stay':
      return 'Stay';
    case 'turn-to':
      return s.greenhouse.name;
    case 'tie-room':
      return 'Use this group';
    case 'untie-room':
      return 'Stop using this group';
    case 'no-words':
      return 'All right';
  }
}
