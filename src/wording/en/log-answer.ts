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
  if (entries.length === 0) return `No ${quantityNames[quantity]} has been logged yet.`;
  return entries
    .map(
      (entry) =>
        `${whereText(entry.system, s)}: ${entryText(entry, s)}, ${dayAndTime(entry.atMs, s)}.`,
    )
    .join('\n');
}

export function whoAnswer({ entries, setUp }: AnswerOf<'who'>, s: Speaker): string {
  if (entries.length === 0) {
    const known = setUp.map(({ name, on }) => `${s.capital(name)}: last ${onDay(on, s)}.`);
    return known.length === 0
      ? 'Nobody has logged that yet.'
      : ['Nobody has told me of that yet. By the set-up:', ...known].join('\n');
  }
  return entries
    .map((entry) => {
      const who = enteredBy(entry, s) ?? 'A sensor';
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
  if (systems.length === 0) return `No range is set for the ${name}.`;
  return systems
    .map(({ system, value, lowest, highest }) => {
      const where = s.system(system).name;
      const wanted = `${rangeText(quantity, lowest, highest, s)} is wanted`;
      if (value === null) return `${where}: no ${name} has been logged yet; ${wanted}.`;
      const found = s.capital(valueText(quantity, value, s));
      if (value < lowest) return `${found} is too low for ${where}: ${wanted}.`;
      if (value > highest) return `${found} is too high for ${where}: ${wanted}.`;
      return `${found} is fine for ${where}: ${wanted}.`;
    })
    .join('\n');
}

function whereText(
  system: AnswerOf<'last-reading'>['entries'][number]['system'],
  s: Speaker,
): string {
  return system === null ? 'Greenhouse' : s.system(system).name;
}
