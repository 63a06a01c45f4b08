import type { Lasting, Portrait } from '../../assistant/replies/answer.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { AnswerOf } from '../spoken/answer-of.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { dayText, onDay, sinceDay, untilDay, whenDue } from './day-text.ts';
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
      return `${s.system(system).name}: ${when} ${added} nachgefüllt; Verbrauch etwa ${use} am Tag.`;
    })
    .join('\n');
}

/** `Nordtisch trinkt am meisten: etwa 17 l am Tag.`, and then each of the others. */
function rankedText({ systems }: AnswerOf<'use'>, s: Speaker): string {
  const [most, ...others] = systems.map(({ system, usePerDayL }) => ({
    name: s.system(system).name,
    use: s.amount(useRate(usePerDayL, s.units.volume)),
  }));
  if (!most) return '';
  const rest = s.and(others.map(({ name, use }) => `${name} (${use})`));
  const then = others.length === 0 ? '' : ` Danach: ${rest}.`;
  return `${most.name} trinkt am meisten: etwa ${most.use} am Tag.${then}`;
}

function spanText(from: LocalDate, to: LocalDate, s: Speaker): string {
  if (from === to) return onDay(from, s);
  return to >= s.today ? sinceDay(from, s) : `von ${dayText(from, s)} ${untilDay(to, s)}`;
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
    told.length > 0 ? `${s.capital(told.join('; '))}.` : 'Noch keine Messwerte.',
    ...(next.length > 0 ? [`Als Nächstes: ${next.join('; ')}.`] : []),
  ];
}

function waterText({ system, litres, usePerDayL }: Lasting, s: Speaker): string {
  const unit = s.units.volume;
  const left = s.amount(roughVolume(litres, unit));
  return `${s.system(system).name}: noch etwa ${left}, Verbrauch etwa ${s.amount(useRate(usePerDayL, unit))} am Tag`;
}

function lowMarkText({ lowOnEarly, lowOnLikely, lowOnLate }: Lasting, s: Speaker): string {
  if (lowOnLikely === null) {
    const early = lowOnEarly === null ? '' : ` (frühestens ${onDay(lowOnEarly, s)} knapp)`;
    return `reicht mehr als zwei Monate${early}`;
  }
  const likely = `untere Marke voraussichtlich ${onDay(lowOnLikely, s)}`;
  const [first, last] = [lowOnEarly ?? lowOnLikely, lowOnLate];
  if (first === last) return likely;
  const latest = last === null ? '' : `, spätestens ${onDay(last, s)}`;
  return `${likely} (frühestens ${onDay(first, s)}${latest})`;
}
