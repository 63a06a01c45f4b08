import type { ChoreTold } from '../../../assistant/replies/keeping.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { everyDays, onDay } from '../day-text.ts';

/** The household's chores, a line each. */
export function choresText(chores: readonly ChoreTold[], s: Speaker): string {
  if (chores.length === 0) {
    return 'There are no chores. Say for example “new chore: clean the filters every 2 weeks”.';
  }
  return chores.map((chore) => choreLine(chore, s)).join('\n');
}

function choreLine({ name, system, everyDays: days, lastDoneOn, dueOn }: ChoreTold, s: Speaker) {
  const where = system === null ? '' : ` (${s.system(system).name})`;
  const last = lastDoneOn === null ? 'not done yet' : `last done ${onDay(lastDoneOn, s)}`;
  return `“${name}”${where} ${everyDays(days)}: ${last}, next ${onDay(dueOn < s.today ? s.today : dueOn, s)}.`;
}
