import type { HouseholdNews } from '../../assistant/replies/household-news.ts';
import type { Role } from '../../greenhouse/member.ts';
import { clipped, mostQuoted } from '../spoken/clipped.ts';
import { growerNames } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { untilDay } from './day-text.ts';

/** What somebody does here: a role without the gender that German nouns would ask for. */
const roleNames: Readonly<Record<Role, string>> = { grower: 'Leitung', helper: 'Hilfe' };

/** Who came, who went, and who may let people in. */
export function householdText(news: HouseholdNews, s: Speaker): string {
  const greenhouse = s.greenhouse.name;
  switch (news.kind) {
    case 'welcome':
      return `Willkommen bei ${greenhouse}, ${news.name}. Du bist als ${roleNames[news.role]} dabei. Frag „was ist zu tun“, oder sag mir, was du gemessen hast.`;
    case 'already-in':
      return `Du bist schon dabei, ${news.name}, als ${roleNames[news.role]}.`;
    case 'has-joined':
      return `${news.name} ist jetzt als ${roleNames[news.role]} dabei.`;
    case 'has-left':
      return `${news.name} ist nicht mehr dabei.`;
    case 'invited': {
      const whom = news.name ?? 'jemand Neues';
      const until = `${untilDay(s.dateOf(news.expiresAtMs), s)} um ${s.clock(news.expiresAtMs)}`;
      return `Mit diesem Link kommt ${whom} als ${roleNames[news.role]} dazu. Er gilt einmal, ${until}.`;
    }
    case 'invited-in-private':
      return 'Den Link habe ich dir in unserem privaten Chat geschickt.';
    case 'who-is-in':
      return whoIsIn(news, s);
    case 'removed':
      return `${news.name} ist nicht mehr dabei. Alles Eingetragene bleibt.`;
    case 'taken-out':
      return `${news.by} hat dich aus ${greenhouse} herausgenommen. Danke für deine Hilfe; was du eingetragen hast, bleibt.`;
    case 'not-in':
      return `${news.name} ist gar nicht dabei.`;
    case 'really-leave': {
      const warning = news.isLastGrower
        ? ' Sonst ist niemand mit Leitung da: dann kann niemand mehr einladen.'
        : '';
      return `Möchtest du ${greenhouse} verlassen? Was du eingetragen hast, bleibt.${warning}`;
    }
    case 'farewell':
      return `Du hast ${greenhouse} verlassen. Danke für deine Hilfe.`;
    case 'stays':
      return 'Gut, du bleibst.';
    case 'growers-only':
      return `Das kann nur ${s.or(growerNames(s))}.`;
    case 'room-tied':
      return news.readsAll
        ? `Diese Gruppe gehört jetzt zu ${greenhouse}. Ich lese mit, was hier geschrieben wird.`
        : `Diese Gruppe gehört jetzt zu ${greenhouse}. Ich sehe hier nur Antworten an mich, Erwähnungen und Knöpfe.`;
    case 'room-untied':
      return `Diese Gruppe gehört nicht mehr zu ${greenhouse}.`;
    case 'turned-to':
      return `Deine privaten Nachrichten gelten ab jetzt für ${greenhouse}.`;
    case 'no-words':
      return 'Ich kann nur Worte lesen. Schreib es mir bitte.';
  }
}

function whoIsIn(news: Extract<HouseholdNews, { kind: 'who-is-in' }>, s: Speaker): string {
  const reaches = {
    reached: '',
    blocked: ', nicht erreichbar',
    'no-account': ', noch nicht dabei',
  };
  const members = news.members.map(
    ({ name, role, reach }) => `${name}: ${roleNames[role]}${reaches[reach]}`,
  );
  if (news.rooms.length === 0) return members.join('\n');
  const rooms = s.and(news.rooms.map((name) => clipped(name, mostQuoted)));
  return [...members, `Gruppen: ${rooms}`].join('\n');
}
