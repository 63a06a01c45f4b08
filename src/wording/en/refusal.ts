import type { Refusal } from '../../assistant/replies/reply.ts';
import { authorsOf, growerNames, mayChange } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { unfitText } from './keeping/change-text.ts';

/** Why it will not do that, and who can. */
export function refusalText(because: Refusal, s: Speaker): string {
  switch (because.kind) {
    case 'not-yours': {
      const who = s.and(authorsOf(because.entries, s).map((name) => name ?? 'a sensor'));
      return `That was logged by ${who}. Only ${s.or(mayChange(because.entries, s))} can change it.`;
    }
    case 'edit-of-unknown':
      return 'I never had the message that you changed, so nothing was logged. Please send it as a new one.';
    case 'growers-change-set-up':
      if (because.isReport) {
        return `Thank you. What grows where is for ${s.or(growerNames(s))} to say, so nothing was kept of it. Please pass it on.`;
      }
      return `Only a grower can change the set-up. Ask ${s.or(growerNames(s))}, and it is done in a minute.`;
    case 'unfit-change':
      return unfitText(because.change, because.because, s);
    case 'not-for-you':
      return 'That is for the grower to settle, or for whoever it is about.';
    case 'cannot-handle':
      return 'I could not handle that message, so nothing was logged. Please say it in other words.';
  }
}
