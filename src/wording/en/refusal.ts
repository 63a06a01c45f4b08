import type { Refusal } from '../../assistant/replies/reply.ts';
import { enteredBy } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';

/** Why it will not do that, and who can. */
export function refusalText(because: Refusal, s: Speaker): string {
  switch (because.kind) {
    case 'not-yours': {
      const authors = [...new Set(because.entries.map((entry) => enteredBy(entry, s)))];
      const growers = s.greenhouse.members.filter(({ role }) => role === 'grower');
      const members = authors.filter((name) => name !== null);
      const allowed = [
        ...new Set([...(authors.length === 1 ? members : []), ...growers.map(({ name }) => name)]),
      ];
      const who = s.and(authors.map((name) => name ?? 'a sensor'));
      return `That was logged by ${who}. Only ${s.or(allowed)} can change it.`;
    }
    case 'cannot-handle':
      return 'I could not handle that message, so nothing was logged. Please say it in other words.';
  }
}
