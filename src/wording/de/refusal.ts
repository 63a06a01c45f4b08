import type { Refusal } from '../../assistant/replies/reply.ts';
import { authorsOf, growerNames, mayChange } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { unfitText } from './keeping/change-text.ts';

/** Why it will not do that, and who can. */
export function refusalText(because: Refusal, s: Speaker): string {
  switch (because.kind) {
    case 'not-yours': {
      const who = s.and(authorsOf(because.entries, s).map((name) => name ?? 'einem Sensor'));
      return `Das kam von ${who}. Ändern kann es nur ${s.or(mayChange(because.entries, s))}.`;
    }
    case 'edit-of-unknown':
      return 'Die Nachricht, die du geändert hast, kenne ich nicht; eingetragen ist nichts. Bitte schick sie neu.';
    case 'growers-change-set-up':
      if (because.isReport) {
        return `Danke. Was wo wächst, sagt ${s.or(growerNames(s))}; eingetragen ist davon nichts. Bitte gib es weiter.`;
      }
      return `Die Einrichtung kann nur ändern, wer das Gewächshaus führt. Frag ${s.or(growerNames(s))}, dann ist es schnell gemacht.`;
    case 'unfit-change':
      return unfitText(because.change, because.because, s);
    case 'not-for-you':
      return 'Das vereinbart, wer das Gewächshaus führt, oder wen es betrifft.';
    case 'cannot-handle':
      return 'Mit dieser Nachricht kam ich nicht zurecht, es wurde nichts eingetragen. Sag es bitte mit anderen Worten.';
  }
}
