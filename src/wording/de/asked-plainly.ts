import type { DaysTold, PlainAnswer } from '../../assistant/replies/plain.ts';
import { daysBetween } from '../../greenhouse/local-time.ts';
import type { Method } from '../../greenhouse/system.ts';
import { measure } from '../spoken/measure.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate, volume } from '../spoken/volume.ts';
import { dryUp, leaks, surpriseText } from './advice/surprise-text.ts';
import { dayAndTime, dayText, onDay, sinceDay, untilDay } from './day-text.ts';
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
    return `${s.capital(failureNames[of])}${at} seit ${dayAndTime(sinceMs, s)}: das kommt zuerst.`;
  });
}

/** `Zuerst: …`, why, and what comes then. */
export function firstText(answer: Of<'first'>, s: Speaker): string {
  const { out, line, then, thenCount, next, leftToGrower } = answer;
  const first = outText(out, s);
  const left = leftText(leftToGrower, s);
  if (line === null) {
    const later = next
      ? ` Als Nächstes ${onDay(next.duty.dueOn, s)}: ${dutyName(next.duty, s)}.`
      : '';
    const nothing = first.length > 0 ? [] : [`Heute ist nichts zu tun.${later}`];
    return `${[...first, ...nothing].join('\n')}${left}`;
  }
  const [told = ''] = dutyList([{ line, lines: [line], mark: null }], s);
  const more = thenCount > 1 ? `, und heute noch ${thenCount - 1} mehr` : '';
  return `${[
    ...first,
    `${first.length > 0 ? 'Dann' : 'Zuerst'}: ${told.replace(/^1\. /u, '')}`,
    ...(then ? [`Danach: ${dutyName(then.duty, s)}${more}.`] : []),
  ].join('\n')}${left}`;
}

/** `Gläserregal ist am leersten: etwa 19 l von 24 l (81 %).`, and the next. */
export function fullestText({ side, systems }: Of<'fullest'>, s: Speaker): string {
  const [first, second] = systems;
  if (!first) return 'Wie voll eines ist, hat noch niemand gesagt.';
  const held = ({ system, litres, share }: typeof first): string => {
    const unit = s.units.volume;
    const left = s.amount(roughVolume(litres, unit));
    const full = s.amount(volume(s.system(system).brimL, unit));
    return `etwa ${left} von ${full} (${s.amount(measure(share * 100, '%', 0, 0))})`;
  };
  const then = second ? ` Danach ${s.system(second.system).name}: ${held(second)}.` : '';
  const most = side === 'low' ? 'am leersten' : 'am vollsten';
  return `${s.system(first.system).name} ist ${most}: ${held(first)}.${then}`;
}

/** What it drinks, whether that is as expected, and what else it could be. */
export function whyUseText({ side, systems }: Of<'why-use'>, s: Speaker): string {
  const unit = s.units.volume;
  const told = systems.map(({ system, usePerDayL, lately, found }) => {
    const { name, method } = s.system(system);
    const added = s.amount(roughVolume(lately.litres, unit));
    const before =
      lately.beforeL > 0
        ? `, ${s.amount(roughVolume(lately.beforeL, unit))} in den ${lately.days} Tagen davor`
        : '';
    const use = `${name}: Verbrauch etwa ${s.amount(useRate(usePerDayL, unit))} am Tag; in den letzten ${lately.days} Tagen ${added} nachgefüllt${before}.`;
    if (found) return `${use}\n${surpriseText(found, s)}`;
    const look = side === 'high' ? `Such dann nach einem Leck: ${leaks[method]}.` : dryUp[method];
    return `${use} Nichts von dem, was mir gesagt wurde, fällt gegen das auf, was bei diesem Wetter zu erwarten ist. Wenn du zweifelst, sag mir, wie voll es jetzt ist. ${look}`;
  });
  const usual =
    side === 'high'
      ? 'Bei Sonne und Wärme trinken die Pflanzen mehr, und je größer sie werden.'
      : 'Bei kühlem, trübem Wetter trinken die Pflanzen weniger, und solange sie klein sind.';
  return [...told, usual].join('\n');
}

/** What was done in these days, by whom, and what was missed. */
export function daysToldText(answer: DaysTold, s: Speaker): string {
  const { from, to, days, by, systems, troubles, missed } = answer;
  const all = daysBetween(from, to) + 1;
  const when = from === to ? onDay(from, s) : `${fromDay(from, s)} ${untilDay(to, s)}`;
  const who = by.map(
    (each) => `${s.isReader(each.handle) ? 'du' : s.member(each.handle)} ${each.days}`,
  );
  const there =
    days === 0
      ? `${s.capital(when)} hat niemand etwas eingetragen.`
      : `${s.capital(when)} wurde an ${days} von ${all} ${all === 1 ? 'Tag' : 'Tagen'} etwas eingetragen: ${who.join(', ')}.`;
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
      'Nachgefüllt',
      eachOf(({ toppedUpL }) =>
        toppedUpL > 0 ? s.amount(volume(toppedUpL, s.units.volume)) : null,
      ),
    ),
    ...line(
      'Lösung gewechselt',
      eachOf(({ changes }) => (changes > 0 ? times(changes) : null)),
    ),
    ...line(
      'pH oder EC gemessen',
      eachOf(({ checks }) => (checks > 0 ? times(checks) : null)),
    ),
    ...line('Nicht gemessen', unmeasured),
    ...line(
      'Mittel zugegeben',
      eachOf(({ dosedMl }) => (dosedMl > 0 ? s.amount(measureOf('dose', dosedMl, s.units)) : null)),
    ),
    ...line(
      'Geerntet',
      eachOf(({ harvestG }) =>
        harvestG > 0 ? s.amount(measureOf('harvest', harvestG, s.units)) : null,
      ),
    ),
    ...line(
      'Schiefgegangen',
      troubles.map((entry) => {
        const at = entry.system === null ? '' : ` (${s.system(entry.system).name})`;
        return `${entryText(entry, s)}${at}, ${onDay(s.dateOf(entry.atMs), s)}`;
      }),
    ),
    missed.length > 0
      ? `Damals fällig und noch offen: ${missed.map(({ duty }) => `${dutyName(duty, s)} (${sinceDay(duty.dueOn, s)})`).join(', ')}.`
      : 'Von dem, was fällig war, ist nichts mehr offen.',
  ].join('\n');
}

/** `von Montag`, `vom 3. Mai`. */
function fromDay(date: DaysTold['from'], s: Speaker): string {
  const near = s.nearness(date);
  return near === 'date' || near === 'date-and-year'
    ? `vom ${dayText(date, s)}`
    : `von ${dayText(date, s)}`;
}

function times(count: number): string {
  return `${count}-mal`;
}

/** How each method keeps its roots wet and in air. */
const methods: Readonly<Record<Method, string>> = {
  'flood-and-drain':
    'Ebbe und Flut: eine Pumpe flutet den Tisch ab und zu, dann läuft das Wasser zurück, und die Wurzeln atmen',
  'deep-water-culture':
    'Tiefwasserkultur (DWC): die Wurzeln hängen ständig in der Lösung, und Luft wird hindurchgeblasen',
  'nutrient-film':
    'Nährfilm (NFT): ein dünner Film Lösung läuft Tag und Nacht durch die Rinnen; steht die Pumpe, trocknen die Wurzeln schnell',
  'non-circulating':
    'stehendes Wasser ohne Pumpe und Luft (Kratky): das Wasser sinkt, während die Pflanzen trinken, und die oberen Wurzeln atmen im Spalt',
  drip: 'Tropfer: eine Pumpe tropft Lösung auf die Wurzeln, der Rest läuft zurück',
  aeroponic:
    'Aeroponik: die Wurzeln hängen in der Luft und werden besprüht; sie trocknen in Minuten',
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
          ? `, bisher ${s.amount(measureOf('harvest', figures.harvestG, s.units))} geerntet`
          : '';
      return `${name}: ${methodText(method)} ${s.capital(cropText(figures))}; Verbrauch etwa ${s.amount(useRate(usePerDayL, s.units.volume))} am Tag${picked}.`;
    })
    .join('\n');
}
