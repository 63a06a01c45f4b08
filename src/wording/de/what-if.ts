import type { Scenario } from '../../greenhouse/scenario.ts';
import { SPELL_DAYS } from '../../planning/what-if/weather-if.ts';
import { EVAPORATED_SHARE, type SystemIf, type WhatIf } from '../../planning/what-if/what-if.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { roughVolume, useRate } from '../spoken/volume.ts';
import { chanceTold, systemsAtRisk } from '../spoken/what-if-told.ts';
import { onDay } from './day-text.ts';

/** How it would go, with the figures; nothing is settled by asking. */
export function whatIfText(told: WhatIf, s: Speaker): string {
  const { scenario } = told;
  if (told.systems.every(({ isLevelKnown }) => !isLevelKnown)) return nothingKnown(s);
  switch (scenario.kind) {
    case 'go-on':
      return [
        `Wenn erst ${onDay(scenario.on, s)} jemand geht: ${riskText(told, s)}`,
        `Nachzufüllen wären dann ${fillsText(told, s)}.`,
        tripsText(told, s),
        ...guessText(told, s),
      ].join(' ');
    case 'fill-all':
      return [
        `Wenn heute alles aufgefüllt wird: dazu braucht es ${fillsText(told, s)}.`,
        nextText(told, s),
        tripsText(told, s),
        ...guessText(told, s),
      ].join(' ');
    case 'weather':
      return [
        `${weatherText(scenario, s)}: ${usesText(told, s)}.`,
        nextText(told, s),
        s.capital(riskText(told, s)),
        ...guessText(told, s),
      ].join(' ');
    case 'floods':
      return floodsText(told, scenario.times, s);
  }
}

function nothingKnown(s: Speaker): string {
  const first = s.greenhouse.systems[0]!;
  return `Noch niemand hat gesagt, wie voll etwas ist, darum weiß ich es nicht. Sag es mir zuerst, etwa „${first.name} ${s.amount(measureOf('level', first.brimL, s.units))}“.`;
}

function riskText(told: WhatIf, s: Speaker): string {
  const { low, nearest } = systemsAtRisk(told);
  if (low.length > 0) return low.map((each) => lowText(each, s)).join(' ');
  if (!nearest) return nothingKnown(s);
  return `vorher sollte nichts zu leer werden. Am nächsten dran ist ${s.system(nearest.system).name}, ${chanceText(nearest.chanceLow)}.`;
}

function lowText({ system, chanceLow, lowOnLikely }: SystemIf, s: Speaker): string {
  const when = lowOnLikely === null ? '' : `, am ehesten ${onDay(lowOnLikely, s)}`;
  const { name } = s.system(system);
  return chanceLow >= 0.5
    ? `${name} würde vorher zu leer${when} (${chanceText(chanceLow)}).`
    : `${name} könnte vorher zu leer werden (${chanceText(chanceLow)}).`;
}

function chanceText(chance: number): string {
  const told = chanceTold(chance);
  switch (told.kind) {
    case 'hardly':
      return 'die Chance dafür liegt unter 1 zu 100';
    case 'one-in':
      return `etwa einmal unter ${told.n}`;
    case 'in-ten':
      return `etwa ${told.n}-mal unter 10`;
    case 'nearly-certain':
      return 'so gut wie sicher';
  }
}

function fillsText({ systems }: WhatIf, s: Speaker): string {
  const all = systems.reduce((sum, { fillL }) => sum + fillL, 0);
  const each = systems.map(
    ({ system, fillL }) =>
      `${s.system(system).name} ${s.amount(roughVolume(fillL, s.units.volume))}`,
  );
  const whole = `etwa ${s.amount(roughVolume(all, s.units.volume))}`;
  return each.length > 1 ? `${whole} im Ganzen (${each.join(', ')})` : whole;
}

function tripsText({ tripsPlanned, tripsInstead, withinDays }: WhatIf, s: Speaker): string {
  const weeks = s.number(measureOf('note', withinDays / 7, s.units));
  if (tripsPlanned === tripsInstead) {
    return `Auf ${weeks} Wochen gesehen bleibt es dabei: ${trips(tripsPlanned)}.`;
  }
  return `Auf ${weeks} Wochen gesehen sind das ${trips(tripsInstead)} statt ${tripsPlanned}.`;
}

function trips(count: number): string {
  return count === 1 ? '1 Gang' : `${count} Gänge`;
}

function nextText({ planned, instead, scenario }: WhatIf, s: Speaker): string {
  const then = scenario.kind === 'fill-all' ? 'Der Gang danach' : 'Der nächste Gang';
  if (instead === null) return `${then} läge mehr als zwei Monate entfernt.`;
  if (instead === planned) return `${then} bleibt ${onDay(instead, s)}.`;
  const was =
    planned === null || scenario.kind === 'fill-all' ? '' : `, nicht ${onDay(planned, s)}`;
  return `${then} wäre ${onDay(instead, s)}${was}.`;
}

function weatherText({ way, tMaxC }: Extract<Scenario, { kind: 'weather' }>, s: Speaker): string {
  const days = `${SPELL_DAYS} Tage lang`;
  if (tMaxC === null) return `Wenn es ${days} ${way === 'hot' ? 'heiß' : 'kalt'} wird`;
  return `Wenn es ${days} ${s.amount(measureOf('air-temperature', Math.round(tMaxC), s.units))} hat`;
}

function usesText({ systems }: WhatIf, s: Speaker): string {
  const rate = (litres: number) => s.amount(useRate(litres, s.units.volume));
  const each = systems.map(
    ({ system, usePerDayL, usePerDayIfL }) =>
      `${s.system(system).name} ${rate(usePerDayIfL)} am Tag statt ${rate(usePerDayL)}`,
  );
  return s.and(each);
}

function floodsText(told: WhatIf, times: number, s: Speaker): string {
  const flooded = told.systems.filter(({ system }) => s.system(system).floods !== null);
  if (flooded.length === 0)
    return 'Keines deiner Systeme wird geflutet, es würde sich nichts ändern.';
  const lines = flooded.map(({ system, usePerDayL, usePerDayIfL }) => {
    const { name, floods } = s.system(system);
    const [low, high] = [usePerDayL, usePerDayIfL].toSorted((a, b) => a - b);
    const everyH = (floods!.everyMin / 60 / times).toFixed(1).replace(/\.0$/, '').replace('.', ',');
    return `${name} würde alle ${everyH} h geflutet und zwischen ${s.amount(useRate(low!, s.units.volume))} und ${s.amount(useRate(high!, s.units.volume))} am Tag brauchen, jetzt sind es etwa ${s.amount(useRate(usePerDayL, s.units.volume))}.`;
  });
  const share = Math.round(100 * EVAPORATED_SHARE);
  const caution =
    times < 1
      ? ' In Blähton ist tagsüber eine Flutung alle 3 bis 4 h üblich; an heißen Tagen können die Wurzeln dazwischen trocken werden, sieh also nach.'
      : ' Wurzeln sollen nicht lange im Wasser stehen, halte also jede Flutung kurz.';
  return `${lines.join(' ')} Die Pflanzen trinken, was sie trinken: Flutungen ändern nur, was verdunstet, höchstens etwa ${share} % davon. Wie dein Tisch darauf antwortet, habe ich noch nicht gelernt; das ist eine Grenze und keine Messung.${caution}`;
}

function guessText({ systems }: WhatIf, s: Speaker): readonly string[] {
  const guessed = systems.filter(({ isLevelKnown }) => !isLevelKnown);
  if (guessed.length === 0) return [];
  const names = s.and(guessed.map(({ system }) => s.system(system).name));
  return [
    `Wie voll ${names} ${guessed.length > 1 ? 'sind' : 'ist'}, hat mir noch niemand gesagt, da kann ich nur schätzen.`,
  ];
}
