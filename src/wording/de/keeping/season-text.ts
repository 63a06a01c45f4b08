import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { SystemId } from '../../../greenhouse/system.ts';
import type { Season, SeasonFigures, Unfairness } from '../../../planning/season.ts';
import { measure } from '../../spoken/measure.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { cropText } from './crop-text.ts';
import { stockAmount } from './stock-text.ts';

/** What was asked of the season: which did best, what was picked, or how all of it goes. */
export function seasonText(
  { season, asks }: Extract<KeepingAnswer, { kind: 'season' }>,
  s: Speaker,
): string {
  const compared = [
    ...verdict(season, s),
    ...(season.unfair.length > 0 ? [unfairText(season.unfair, s)] : []),
  ];
  switch (asks) {
    case 'best':
      return [
        ...(compared.length > 0 ? compared : [nothingToCompare(season, s)]),
        ...season.systems.filter(hasGiven).map((each) => pickedText(each, s)),
      ].join('\n');
    case 'harvest':
      return harvestAnswer(season, s);
    case 'going':
      return [...goingLines(season, s), ...compared].join('\n');
  }
}

function hasGiven({ firstFruitOn }: SeasonFigures): boolean {
  return firstFruitOn !== null;
}

/** What each has given, and which have not yet. */
function harvestAnswer({ systems }: Season, s: Speaker): string {
  if (!systems.some(hasGiven)) {
    return `Noch wurde nichts geerntet und gewogen. Sag mir zum Beispiel „400 g Tomaten von ${s.greenhouse.systems[0]?.name ?? ''}“.`;
  }
  const without = systems
    .filter((each) => !hasGiven(each) && each.plants > 0)
    .map(({ system }) => s.system(system).name);
  return [
    ...systems.filter(hasGiven).map((each) => pickedText(each, s)),
    ...(without.length > 0 ? [`Noch nichts: ${s.and(without)}.`] : []),
  ].join('\n');
}

/** A line for each system of which there is something to tell. */
function goingLines({ systems }: Season, s: Speaker): readonly string[] {
  const told = systems.flatMap((each) => figuresText(each, s) ?? []);
  return told.length > 0
    ? told
    : ['Noch ist nichts eingetragen, das etwas sagt. „Was ist zu tun?“ nennt, was ansteht.'];
}

function pickedText(figures: SeasonFigures, s: Speaker): string {
  return `${s.system(figures.system).name} (${cropText(figures)}): ${harvestText(figures, s)}.`;
}

function nothingToCompare({ systems }: Season, s: Speaker): string {
  const only = systems.find(({ harvestG }) => harvestG > 0);
  const name = s.greenhouse.systems[0]?.name ?? '';
  return only
    ? `Gewogen geerntet wurde bisher nur von ${s.system(only.system).name}, also gibt es nichts zu vergleichen.`
    : `Zu vergleichen gibt es noch nichts: Keine Ernte wurde gewogen. Sag mir zum Beispiel „400 g Tomaten von ${name}“.`;
}

/** What there is to tell of a system; null: nothing was logged of it. */
function figuresText(figures: SeasonFigures, s: Speaker): string | null {
  const { litres, nutrientMl, visits, troubleMin, days } = figures;
  const parts = [
    ...(litres > 0 ? [`${s.amount(roughVolume(litres, s.units.volume))} nachgefüllt`] : []),
    ...(nutrientMl > 0 ? [`${stockAmount(nutrientMl, s)} Dünger`] : []),
    ...(visits > 0 ? [visits === 1 ? '1 Tag mit Besuch' : `${visits} Tage mit Besuch`] : []),
    ...(troubleMin > 0 ? [`${s.number(measure(troubleMin, 'none', 0, 0))} min Störung`] : []),
    ...(hasGiven(figures) ? [harvestText(figures, s)] : []),
  ];
  if (parts.length === 0) return null;
  const since = `, ${days} ${days === 1 ? 'Tag' : 'Tage'} ${figures.isFromLogbook ? 'im Logbuch' : 'seit dem Pflanzen'}`;
  const head = `${s.system(figures.system).name} (${cropText(figures)}${days > 0 ? since : ''})`;
  return `${head}: ${parts.join(', ')}.`;
}

function harvestText(figures: SeasonFigures, s: Speaker): string {
  const { harvestG, firstHarvestOn, firstFruitOn, gPerPlant, gPerLitre } = figures;
  if (firstHarvestOn === null && firstFruitOn !== null) {
    return `erste Frucht am ${s.dayAndMonth(firstFruitOn)}, noch nichts gewogen`;
  }
  if (firstHarvestOn === null) return '';
  const grams = (value: number): string => s.amount(measureOf('harvest', value, s.units));
  const shares = [
    ...(gPerPlant === null ? [] : [`${grams(gPerPlant)} je Pflanze`]),
    ...(gPerLitre === null ? [] : [`${s.amount(measure(gPerLitre, 'g', 0, 1))} je Liter`]),
  ];
  const each = shares.length > 0 ? ` (${shares.join(', ')})` : '';
  return `${grams(harvestG)} geerntet seit dem ${s.dayAndMonth(firstHarvestOn)}${each}`;
}

function verdict({ bestPerPlant, bestPerLitre }: Season, s: Speaker): readonly string[] {
  const name = (system: SystemId): string => s.system(system).name;
  if (bestPerPlant !== null && bestPerPlant === bestPerLitre) {
    return [`Am meisten je Pflanze und je Liter: ${name(bestPerPlant)}.`];
  }
  return [
    ...(bestPerPlant === null ? [] : [`Am meisten je Pflanze: ${name(bestPerPlant)}.`]),
    ...(bestPerLitre === null ? [] : [`Am meisten je Liter: ${name(bestPerLitre)}.`]),
  ];
}

const unfairnesses: Readonly<Record<Unfairness, string>> = {
  crops: 'es wächst Verschiedenes darin',
  plants: 'die Zahl der Pflanzen ist weit auseinander',
  days: 'sie wachsen nicht gleich lang',
};

function unfairText(unfair: readonly Unfairness[], s: Speaker): string {
  return `Mit Vorsicht zu vergleichen: ${s.and(unfair.map((each) => unfairnesses[each]))}.`;
}
