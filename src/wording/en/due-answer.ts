import type { DutyLine } from '../../planning/duty-line.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import { grouped } from '../spoken/check-groups.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { onDay } from './day-text.ts';
import { dutyList } from './duty-list.ts';
import { dutyName, dutyText } from './duty-text.ts';
import { exactText, whyText } from './why.ts';

export function dueAnswer({ system, duties, next }: AnswerOf<'due'>, s: Speaker): string {
  const where = system === null ? '' : ` for ${s.system(system).name}`;
  if (duties.length > 0) return [`To do today${where}:`, ...dutyList(duties, s)].join('\n');
  const [first] = next;
  const then = first ? ` Next: ${dutyName(first, s)} ${onDay(first.duty.dueOn, s)}.` : '';
  return `Nothing to do today${where}.${then}`;
}

export function whyAnswer({ duties, exactly }: AnswerOf<'why'>, s: Speaker): string {
  if (duties.length === 0) return 'Nothing is planned for that.';
  return grouped(duties)
    .map((group) => {
      const [line] = group;
      const exact = line && exactly ? exactText(line, s) : null;
      return `${whatAndWhen(group, s)}. ${line ? whyText(line, s) : ''}${exact === null ? '' : ` ${exact}`}`;
    })
    .join('\n');
}

export function whenNextAnswer({ duties }: AnswerOf<'when-next'>, s: Speaker): string {
  if (duties.length === 0) return 'Nothing of that kind is planned.';
  return duties
    .map((line) => `${s.capital(dutyName(line, s))}: ${onDay(line.duty.dueOn, s)}.`)
    .join('\n');
}

function whatAndWhen(group: readonly DutyLine[], s: Speaker): string {
  const [line] = group;
  if (!line || line.duty.dueOn <= s.today) return dutyText(group, s);
  return `${group.length === 1 ? s.capital(dutyName(line, s)) : dutyText(group, s)} ${onDay(line.duty.dueOn, s)}`;
}
