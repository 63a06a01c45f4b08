import type { Store } from '../../src/assistant/ports/store.ts';
import { openRehearsal, quarryLaneWith } from '../channels/rehearsal/open-rehearsal.ts';

/**
 * A household of its own that is read to in one language. Says lines as the grower, a minute apart, from Tuesday 4 May
 * on, and gives what the grower is told to the last of them.
 */
export function growerTalk(
  store: Store,
  language: 'en' | 'de' = 'en',
): (...texts: readonly string[]) => Promise<string> {
  const members = quarryLaneWith().members.map((member) => ({ ...member, language }));
  const talk = openRehearsal(store, quarryLaneWith({ members }));
  let minute = 0;
  return async (...texts) => {
    let text = '';
    for (const said of texts) {
      minute += 1;
      const at = `2027-05-04T08:${String(minute).padStart(2, '0')}:00+01:00`;
      const out = await talk({ at, from: 'ines', text: said });
      text = out.flatMap((line) => (line.to === 'ines' ? [line.text] : [])).join('\n');
    }
    return text;
  };
}
