import type { DaysTold, PlainAnswer } from '../../assistant/replies/plain.ts';
import { daysBetween } from '../../greenhouse/local-time.ts';
import type { Method } from '../../greenhouse/system.ts';
import { measure } from '../spoken/measure.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { dryUp, leaks, surpriseText } from './advice/surprise-text.ts';
import { dayAndTime, dayText, onDay } from './day-text.ts';
import { leftText } from './due-answer.ts';
import { dutyList } from './duty-list.ts';
import { dutyName } from './duty-text.ts';
import { entryText } from './entry-text.ts';
import { cropText } from './keeping/crop-text.ts';
import { failureNames } from './names.ts';

type Of<Kind extends PlainAnswer['kind']> = Extract<PlainAnswer, { kind: Kind }>;

/** What is out goes before all else. */
export function outText(out: Of<'first'>['out'], s: Speaker): readonly string[] {
  return out.map(({ of, system, sinceMs }) => {
    const at = system === null ? '' : ` (${s.system(system).name})`;
    return `${s.capital(failureNames[of])}${at} since ${dayAndTime(sinceMs, s)}: that comes first.`;
  });
}

/** `First: …`, why, and what comes then. */
export function firstText(answer: Of<'first'>, s: Speaker): string {
  const { out, line, then, thenCount, next, leftToGrower } = answer;
  const first = outText(out, s);
  const left = leftText(leftToGrower, s);
  if (line === null) {
    const later = next ? ` Next: ${dutyName(next.duty, s)} ${onDay(next.duty.dueOn, s)}.` : '';
    const nothing = first.length > 0 ? [] : [`Nothing to do today.${later}`];
    return `${[...first, ...nothing].join('\n')}${left}`;
  }
  const [told = ''] = dutyList([{ line, lines: [line], mark: null }], s);
  const more = thenCount > 1 ? `, and ${thenCount - 1} more today` : '';
  return `${[
    ...first,
    `${first.length > 0 ? 'Then' : 'First'}: ${told.replace(/^1\. /u, '')}`,
    ...(then ? [`After that: ${dutyName(then.duty, s)}${more}.`] : []),
  ].join('\n')}${left}`;
}

/** `Jar shelf is lowest: about 19 L of 24 L (81%).`, and the next. */
export function fullestText({ side, systems }: Of<'fullest'>, s: Speaker): string {
  const [first, second] = systems;
  if (!first) return 'Nobody has said yet how full any of them is.';
  const held = ({ system, litres, share }: typeof first): string => {
    const unit = s.units.volume;
    const left = s.amount(roughVolume(litres, unit));
    const full = s.amount(volume(s.system(system).brimL, unit));
    return `about ${left} of ${full} (${s.amount(measure(share * 100, '%', 0, 0))})`;
  };
  const then = second ? ` Then ${s.system(second.system).name}: ${held(second)}.` : '';
  const most = side === 'low' ? 'lowest' : 'fullest';
  return `${s.system(first.system).name} is ${most}: ${held(first)}.${then}`;
}

/** What it drinks, whether that is as expected, and what else it could be. */
export function whyUseText({ side, systems }: Of<'why-use'>, s: Speaker): string {
  const unit = s.units.volume;
  const told = systems.map(({ system, usePerDayL, lately, found }) => {
    const { name, method } = s.system(system);
    const added = s.amount(roughVolume(lately.litres, unit));
    const before =
      lately.beforeL > 0
        ? `, ${s.amount(roughVolume(lately.beforeL, unit))} in the ${lately.days} days before`
        : '';
    const use = `${name} drinks about ${s.amount(useRate(usePerDayL, unit))} a day; ${added} topped up in the last ${lately.days} days${before}.`;
    if (found) return `${use}\n${surpriseText(found, s)}`;
    const look = side === 'high' ? `Look for a leak then: ${leaks[method]}.` : dryUp[method];
    return `${use} Nothing told so far stands out from what I expect of it in this weather. If you doubt it, tell me how full it is now. ${look}`;
  });
  const usual =
    side === 'high'
      ? 'Plants drink more in sun and warmth, and as they grow.'
      : 'Plants drink less in cool, dull weather, and while they are small.';
  return [...told, usual].join('\n');
}

/** What was done in these days, by whom, and what was missed. */
export function daysToldText(answer: DaysTold, s: Speaker): string {
  const { from, to, days, by, systems, troubles, missed } = answer;
  const all = daysBetween(from, to) + 1;
  const when = from === to ? onDay(from, s) : `from ${dayText(from, s)} to ${dayText(to, s)}`;
  const who = by.map(
    (each) => `${s.isReader(each.handle) ? 'you' : s.member(each.handle)} ${each.days}`,
  );
  const there =
    days === 0
      ? `${s.capital(when)} nobody logged anything.`
      : `${s.capital(when)} something was logged on ${days} of ${all} ${all === 1 ? 'day' : 'days'}: ${who.join(', ')}.`;
  const eachOf = (tell: (figures: DaysTold['systems'][number]) => string | null) =>
    systems.flatMap((figures) => {
      const told = tell(figures);
      return told === null ? [] : [`${s.system(figures.system).name} ${told}`];
    });
  const line = (head: string, parts: readonly string[]): readonly string[] =>
    parts.length > 0 ? [`${head}: ${parts.join(', ')}.`] : [];
  const unmeasured = systems
    .filter(({ checks }) => checks === 0)
    .map(({ system }) => s.system(system).name);
  return [
    there,
    ...line(
      'Topped up',
      eachOf(({ toppedUpL }) =>
        toppedUpL > 0 ? s.amount(volume(toppedUpL, s.units.volume)) : null,
      ),
    ),
    ...line(
      'Solution changed',
      eachOf(({ changes }) => (changes > 0 ? times(changes) : null)),
    ),
    ...line(
      'pH or EC measured',
      eachOf(({ checks }) => (checks > 0 ? times(checks) : null)),
    ),
    ...line('Not measured', unmeasured),
    ...line(
      'Products given',
      eachOf(({ dosedMl }) => (dosedMl > 0 ? s.amount(measureOf('dose', dosedMl, s.units)) : null)),
    ),
    ...line(
      'Picked',
      eachOf(({ harvestG }) =>
        harvestG > 0 ? s.amount(measureOf('harvest', harvestG, s.units)) : null,
      ),
    ),
    ...line(
      'Went wrong',
      troubles.map((entry) => {
        const at = entry.system === null ? '' : ` (${s.system(entry.system).name})`;
        return `${entryText(entry, s)}${at}, ${onDay(s.dateOf(entry.atMs), s)}`;
      }),
    ),
    missed.length > 0
      ? `Due then and still open: ${missed.map(({ duty }) => `${dutyName(duty, s)} (since ${dayText(duty.dueOn, s)})`).join(', ')}.`
      : 'Nothing of what was due then is still open.',
  ].join('\n');
}

function times(count: number): string {
  return count === 1 ? 'once' : `${count} times`;
}

/** How each method keeps its roots wet and in air. */
const methods: Readonly<Record<Method, string>> = {
  'flood-and-drain':
    'flood and drain: a pump floods the bench now and then, and the water runs back while the roots breathe',
  'deep-water-culture':
    'deep water culture: the roots hang in the solution all the time, and air is blown through it',
  'nutrient-film':
    'nutrient film (NFT): a thin film of solution runs through the gutters day and night; the roots dry out fast when the pump stops',
  'non-circulating':
    'still water without a pump or air (Kratky): the water sinks as the plants drink, and the upper roots breathe in the gap',
  drip: 'drip: a pump drips solution onto the roots, and what is left runs back',
  aeroponic: 'aeroponics: the roots hang in air and are sprayed; they dry out within minutes',
};

export function methodText(method: Method): string {
  return `${methods[method]}.`;
}

/** How each works, what it grows and drinks, and what it gave. */
export function comparedText({ systems }: Of<'compared'>, s: Speaker): string {
  return systems
    .map(({ figures, usePerDayL }) => {
      const { name, method } = s.system(figures.system);
      const picked =
        figures.harvestG > 0
          ? `, ${s.amount(measureOf('harvest', figures.harvestG, s.units))} picked so far`
          : '';
      return `${name}: ${methodText(method)} ${s.capital(cropText(figures))}; it drinks about ${s.amount(useRate(usePerDayL, s.units.volume))} a day${picked}.`;
    })
    .join('\n');
}
