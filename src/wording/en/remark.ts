import type { Remark } from '../../assistant/replies/reply.ts';
import type { Entry } from '../../greenhouse/entry.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { adviceRemark } from './advice/advice-remark.ts';
import { troubleRemark } from './advice/trouble-text.ts';
import { dayText } from './day-text.ts';
import { entryText } from './entry-text.ts';
import { rangeText, valueText } from './value-text.ts';

/** What a receipt adds about what was logged, in a sentence or two. */
export function remarkText(remark: Remark, s: Speaker): string {
  switch (remark.kind) {
    case 'next-work':
    case 'waits-for-grower':
    case 'dose-refused':
    case 'measure-after-dose':
    case 'probe-state':
    case 'meters-disagree':
    case 'care':
      return adviceRemark(remark, s);
    case 'outside-range': {
      const { entry, lowest, highest } = remark;
      const side = entry.value < lowest ? 'low' : 'high';
      const wanted = rangeText(entry.quantity, lowest, highest, s);
      return `${s.capital(entryText(entry, s))} is ${side}${place(entry, s)}: ${wanted} is wanted.`;
    }
    case 'far-from-expected': {
      const { entry, expected } = remark;
      const likely = valueText(entry.quantity, expected, s);
      return `${s.capital(entryText(entry, s))} is far from the ${likely} expected${place(entry, s)}. Please measure again to be sure.`;
    }
    case 'trouble':
      return troubleRemark(remark.told, s);
    case 'already-known':
      return 'I had that already, so nothing was logged twice.';
    case 'lasts-until':
      return `${s.system(remark.system).name} should be fine until ${dayText(remark.date, s)}.`;
  }
}

function place(entry: Entry, s: Speaker): string {
  return entry.system === null ? '' : ` for ${s.system(entry.system).name}`;
}
