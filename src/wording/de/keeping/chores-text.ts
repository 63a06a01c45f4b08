import type { ChoreTold } from '../../../assistant/replies/keeping.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { everyDays, onDay } from '../day-text.ts';

/** The household's chores, a line each. */
export function choresText(chores: readonly ChoreTold[], s: Speaker): string {
  if (chores.length === 0) {
    return 'Es gibt keine Aufgaben. Sag zum Beispiel „neue Aufgabe: Filter reinigen alle 2 Wochen“.';
  }
  return chores.map((chore) => choreLine(chore, s)).join('\n');
}

function choreLine({ name, system, everyDays: days, lastDoneOn, dueOn }: ChoreTold, s: Speaker) {
  const where = system === null ? '' : ` (${s.system(system).name})`;
  const last = lastDoneOn === null ? 'noch nicht gemacht' : `zuletzt ${onDay(lastDoneOn, s)}`;
  return `„${name}“${where} ${everyDays(days)}: ${last}, wieder ${onDay(dueOn < s.today ? s.today : dueOn, s)}.`;
}
