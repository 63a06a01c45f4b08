import type { HouseholdNews } from '../../assistant/replies/household-news.ts';
import type { Role } from '../../greenhouse/member.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { growerNames } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dayText } from './day-text.ts';

const roleNames: Readonly<Record<Role, string>> = { grower: 'a grower', helper: 'a helper' };

/** Who came, who went, and who may let people in. */
export function householdText(news: HouseholdNews, s: Speaker): string {
  const greenhouse = s.greenhouse.name;
  switch (news.kind) {
    case 'welcome':
      return `Welcome to ${greenhouse}, ${news.name}. You are in as ${roleNames[news.role]}. Ask “what needs doing”, or tell me what you measured.`;
    case 'already-in':
      return `You are already in, ${news.name}, as ${roleNames[news.role]}.`;
    case 'has-joined':
      return `${news.name} has joined as ${roleNames[news.role]}.`;
    case 'has-left':
      return `${news.name} has left.`;
    case 'invited': {
      const whom = news.name ?? 'somebody new';
      const until = `${dayText(s.dateOf(news.expiresAtMs), s)} at ${s.clock(news.expiresAtMs)}`;
      return `This link lets ${whom} in as ${roleNames[news.role]}. It works once, until ${until}.`;
    }
    case 'invited-in-private':
      return 'I sent you the link in our private chat.';
    case 'who-is-in':
      return whoIsIn(news, s);
    case 'removed':
      return `${news.name} is out. What ${news.name} logged stays.`;
    case 'taken-out':
      return `${news.by} has taken you out of ${greenhouse}. Thank you for your help; what you logged stays.`;
    case 'not-in':
      return `${news.name} is not in.`;
    case 'really-leave': {
      const warning = news.isLastGrower
        ? ' You are the last grower: nobody else can let people in.'
        : '';
      return `Do you want to leave ${greenhouse}? What you logged stays.${warning}`;
    }
    case 'farewell':
      return `You have left ${greenhouse}. Thank you for your help.`;
    case 'stays':
      return 'All right, you stay.';
    case 'growers-only':
      return `Only ${s.or(growerNames(s))} can do that.`;
    case 'room-tied':
      return news.readsAll
        ? `This group now belongs to ${greenhouse}. I read what is written here.`
        : `This group now belongs to ${greenhouse}. I see replies to me, mentions of me and buttons here, nothing else.`;
    case 'room-untied':
      return `This group does not belong to ${greenhouse} any more.`;
    case 'turned-to':
      return `Your private messages are for ${greenhouse} from now on.`;
    case 'no-words':
      return 'I can only read words. Please write it to me.';
  }
}

function whoIsIn(news: Extract<HouseholdNews, { kind: 'who-is-in' }>, s: Speaker): string {
  const reaches = { reached: '', blocked: ', cannot be reached', 'no-account': ', not in yet' };
  const members = news.members.map(
    ({ name, role, reach }) => `${name}: ${roleNames[role]}${reaches[reach]}`,
  );
  if (news.rooms.length === 0) return members.join('\n');
  const rooms = s.and(news.rooms.map((name) => clipped(name, mostQuoted)));
  return [...members, `Groups: ${rooms}`].join('\n');
}
