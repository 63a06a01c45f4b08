import type { Lasting, Portrait } from '../../assistant/replies/answer.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { dayText, onDay, whenDue } from './day-text.ts';
import { dutyName } from './duty-text.ts';
import { entryText } from './entry-text.ts';

export function howLongAnswer({ systems }: AnswerOf<'how-long'>, s: Speaker): string {
  return systems
    .map((lasting) => `${waterText(lasting, s)}, ${lowMarkText(lasting, s)}.`)
    .join('\n');
}

export function useAnswer(answer: AnswerOf<'use'>, s: Speaker): string {
  const { from, to, systems, isRanked } = answer;
  const unit = s.units.volume;
  if (isRanked) return rankedText(answer, s);
  const when = spanText(from, to, s);
  return systems
    .map(({ system, toppedUpL, usePerDayL }) => {
      const added = s.amount(volume(toppedUpL, unit));
      const use = s.amount(useRate(usePerDayL, unit));
      return `${s.system(system).name}: topped up ${added} ${when}; it drinks about ${use} a day.`;
    })
    .join('\n');
}

/** `North bench drinks most: about 17 L a day.`, and then each of the others. */
function rankedText({ systems }: AnswerOf<'use'>, s: Speaker): string {
  const [most, ...others] = systems.map(({ system, usePerDayL }) => ({
    name: s.system(system).name,
    use: s.amount(useRate(usePerDayL, s.units.volume)),
  }));
  if (!most) return '';
  const rest = s.and(others.map(({ name, use }) => `${name} (${use})`));
  const then = others.length === 0 ? '' : ` Then come ${rest}.`;
  return `${most.name} drinks most: about ${most.use} a day.${then}`;
}

function spanText(from: LocalDate, to: LocalDate, s: Speaker): string {
  if (from === to) return onDay(from, s);
  return to >= s.today
    ? `since ${dayText(from, s)}`
    : `from ${dayText(from, s)} to ${dayText(to, s)}`;
}

/** One system in three lines; several in one line each. */
export function showAnswer({ systems }: AnswerOf<'show'>, s: Speaker): string {
  const [only, second] = systems;
  if (only && !second) return portrait(only, s).join('\n');
  return systems.map((each) => portrait(each, s).slice(0, 2).join(' ')).join('\n');
}

function portrait({ lasting, readings, duties }: Portrait, s: Speaker): readonly string[] {
  const told = readings
    .filter(({ quantity }) => quantity !== 'level')
    .map((entry) => `${entryText(entry, s)} (${dayText(s.dateOf(entry.atMs), s)})`);
  const next = duties.map((line) => `${dutyName(line.duty, s)} ${whenDue(line.duty.dueOn, s)}`);
  return [
    `${waterText(lasting, s)}, ${lowMarkText(lasting, s)}.`,
    told.length > 0 ? `${s.capital(told.join(', '))}.` : 'No readings yet.',
    ...(next.length > 0 ? [`Next: ${next.join('; ')}.`] : []),
  ];
}

function waterText({ system, litres, usePerDayL }: Lasting, s: Speaker): string {
  const unit = s.units.volume;
  const left = s.amount(roughVolume(litres, unit));
  return `${s.system(system).name}: about ${left} left, drinks about ${s.amount(useRate(usePerDayL, unit))} a day`;
}

function lowMarkText({ lowOnEarly, lowOnLikely, lowOnLate }: Lasting, s: Speaker): string {
  if (lowOnLikely === null) {
    const early = lowOnEarly === null ? '' : ` (${dayText(lowOnEarly, s)} at the earliest)`;
    return `lasts more than two months${early}`;
  }
  const likely = `low mark most likely ${onDay(lowOnLikely, s)}`;
  const [first, last] = [lowOnEarly ?? lowOnLikely, lowOnLate];
  if (first === last) return likely;
  const latest = last === null ? '' : `, ${dayText(last, s)} at the latest`;
  return `${likely} (${dayText(first, s)} at the earliest${latest})`;
}
