import type { SystemId } from '../../greenhouse/system.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import { enteredBy } from '../spoken/entered-by.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { dayAndTime, onDay } from './day-text.ts';
import { entryText } from './entry-text.ts';
import { quantityNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';

export function lastReadingAnswer(
  { quantity, entries }: AnswerOf<'last-reading'>,
  s: Speaker,
): string {
  if (entries.length === 0) return `${quantityNames[quantity]}: noch nichts eingetragen.`;
  return entries
    .map(
      (entry) =>
        `${whereText(entry.system, s)}: ${entryText(entry, s)}, ${dayAndTime(entry.atMs, s)}.`,
    )
    .join('\n');
}

export function whoAnswer({ entries, setUp }: AnswerOf<'who'>, s: Speaker): string {
  if (entries.length === 0) {
    const known = setUp.map(({ name, on }) => `${s.capital(name)}: zuletzt ${onDay(on, s)}.`);
    return known.length === 0
      ? 'Das hat noch niemand eingetragen.'
      : ['Hier hat das noch niemand eingetragen. Bei der Einrichtung angegeben:', ...known].join(
          '\n',
        );
  }
  return entries
    .map((entry) => {
      const who = enteredBy(entry, s) ?? 'Ein Sensor';
      const where = entry.system === null ? '' : ` (${s.system(entry.system).name})`;
      return `${who}: ${entryText(entry, s)}${where}, ${dayAndTime(entry.atMs, s)}.`;
    })
    .join('\n');
}

export function isItRightAnswer(
  { quantity, systems }: AnswerOf<'is-it-right'>,
  s: Speaker,
): string {
  const name = quantityNames[quantity];
  if (systems.length === 0) return `${name}: dafür ist kein Bereich festgelegt.`;
  return systems
    .map(({ system, value, lowest, highest }) => {
      const where = s.system(system).name;
      const wanted = `gewünscht: ${rangeText(quantity, lowest, highest, s)}`;
      if (value === null) return `${where}: ${name} noch nicht eingetragen, ${wanted}.`;
      const found = s.capital(valueText(quantity, value, s));
      if (value < lowest) return `${found} ist zu niedrig für ${where}, ${wanted}.`;
      if (value > highest) return `${found} ist zu hoch für ${where}, ${wanted}.`;
      return `${found} passt für ${where}, ${wanted}.`;
    })
    .join('\n');
}

function whereText(system: SystemId | null, s: Speaker): string {
  return system === null ? 'Gewächshaus' : s.system(system).name;
}
