import type { KeepingAnswer } from '../../../assistant/replies/keeping.ts';
import type { SystemId } from '../../../greenhouse/system.ts';
import type { Season, SeasonFigures, Unfairness } from '../../../planning/season.ts';
import { measure } from '../../spoken/measure.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { cropText } from './crop-text.ts';
import { stockAmount } from './stock-text.ts';

/** How the systems have done beside each other, and where comparing them is not fair. */
export function seasonText(
  { season, asksBest }: Extract<KeepingAnswer, { kind: 'season' }>,
  s: Speaker,
): string {
  const figures = season.systems.map((each) => figuresText(each, s));
  const compared = [
    ...verdict(season, s),
    ...(season.unfair.length > 0 ? [unfairText(season.unfair, s)] : []),
  ];
  if (!asksBest) return [...figures, ...compared].join('\n');
  const lead = compared.length > 0 ? compared : [nothingToCompare(season, s)];
  return [...lead, ...figures].join('\n');
}

function nothingToCompare({ systems }: Season, s: Speaker): string {
  const only = systems.find(({ harvestG }) => harvestG > 0);
  const name = s.greenhouse.systems[0]?.name ?? '';
  return only
    ? `Gewogen geerntet wurde bisher nur von ${s.system(only.system).name}, also gibt es nichts zu vergleichen.`
    : `Zu vergleichen gibt es noch nichts: Keine Ernte wurde gewogen. Sag mir zum Beispiel „400 g Tomaten von ${name}“.`;
}

function figuresText(figures: SeasonFigures, s: Speaker): string {
  const { litres, nutrientMl, visits, troubleMin, days } = figures;
  const since = figures.isFromLogbook ? 'im Logbuch' : 'seit dem Pflanzen';
  const parts = [
    s.amount(roughVolume(litres, s.units.volume)),
    `${stockAmount(nutrientMl, s)} Dünger`,
    visits === 1 ? '1 Tag mit Besuch' : `${visits} Tage mit Besuch`,
    `${s.number(measure(troubleMin, 'none', 0, 0))} min Störung`,
    harvestText(figures, s),
  ];
  const head = `${s.system(figures.system).name} (${cropText(figures)}, ${days} ${days === 1 ? 'Tag' : 'Tage'} ${since})`;
  return `${head}: ${parts.join(', ')}.`;
}

function harvestText(figures: SeasonFigures, s: Speaker): string {
  const { harvestG, firstHarvestOn, firstFruitOn, gPerPlant, gPerLitre } = figures;
  if (firstHarvestOn === null && firstFruitOn !== null) {
    return `erste Frucht am ${s.dayAndMonth(firstFruitOn)}, noch nichts gewogen`;
  }
  if (firstHarvestOn === null) return 'noch nichts geerntet';
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
