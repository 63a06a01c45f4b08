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
    return `Nothing has been picked and weighed yet. Tell me for example “400 g tomatoes from ${s.greenhouse.systems[0]?.name ?? ''}”.`;
  }
  const without = systems
    .filter((each) => !hasGiven(each) && each.plants > 0)
    .map(({ system }) => s.system(system).name);
  return [
    ...systems.filter(hasGiven).map((each) => pickedText(each, s)),
    ...(without.length > 0 ? [`Not yet: ${s.and(without)}.`] : []),
  ].join('\n');
}

/** A line for each system of which there is something to tell. */
function goingLines({ systems }: Season, s: Speaker): readonly string[] {
  const told = systems.flatMap((each) => figuresText(each, s) ?? []);
  return told.length > 0
    ? told
    : ['Nothing has been logged yet that would tell. “what needs doing” says what is due.'];
}

function pickedText(figures: SeasonFigures, s: Speaker): string {
  return `${s.system(figures.system).name} (${cropText(figures)}): ${harvestText(figures, s)}.`;
}

function nothingToCompare({ systems }: Season, s: Speaker): string {
  const only = systems.find(({ harvestG }) => harvestG > 0);
  const name = s.greenhouse.systems[0]?.name ?? '';
  return only
    ? `Only ${s.system(only.system).name} has given a weighed harvest so far, so there is nothing to compare it with.`
    : `Nothing can be compared yet: no harvest was weighed. Tell me for example “400 g tomatoes from ${name}”.`;
}

/** What there is to tell of a system; null: nothing was logged of it. */
function figuresText(figures: SeasonFigures, s: Speaker): string | null {
  const { litres, nutrientMl, visits, troubleMin, days } = figures;
  const parts = [
    ...(litres > 0 ? [`${s.amount(roughVolume(litres, s.units.volume))} put in`] : []),
    ...(nutrientMl > 0 ? [`${stockAmount(nutrientMl, s)} of nutrients`] : []),
    ...(visits > 0 ? [visits === 1 ? '1 day with a visit' : `${visits} days with a visit`] : []),
    ...(troubleMin > 0 ? [`${s.number(measure(troubleMin, 'none', 0, 0))} min of trouble`] : []),
    ...(hasGiven(figures) ? [harvestText(figures, s)] : []),
  ];
  if (parts.length === 0) return null;
  const since = `, ${days} ${days === 1 ? 'day' : 'days'} ${figures.isFromLogbook ? 'in the logbook' : 'since planting'}`;
  const head = `${s.system(figures.system).name} (${cropText(figures)}${days > 0 ? since : ''})`;
  return `${head}: ${parts.join(', ')}.`;
}

function harvestText(figures: SeasonFigures, s: Speaker): string {
  const { harvestG, firstHarvestOn, firstFruitOn, gPerPlant, gPerLitre } = figures;
  if (firstHarvestOn === null && firstFruitOn !== null) {
    return `first fruit on ${s.dayAndMonth(firstFruitOn)}, nothing weighed yet`;
  }
  if (firstHarvestOn === null) return '';
  const grams = (value: number): string => s.amount(measureOf('harvest', value, s.units));
  const shares = [
    ...(gPerPlant === null ? [] : [`${grams(gPerPlant)} a plant`]),
    ...(gPerLitre === null ? [] : [`${s.amount(measure(gPerLitre, 'g', 0, 1))} a litre`]),
  ];
  const each = shares.length > 0 ? ` (${shares.join(', ')})` : '';
  return `${grams(harvestG)} picked since ${s.dayAndMonth(firstHarvestOn)}${each}`;
}

function verdict({ bestPerPlant, bestPerLitre }: Season, s: Speaker): readonly string[] {
  const name = (system: SystemId): string => s.system(system).name;
  if (bestPerPlant !== null && bestPerPlant === bestPerLitre) {
    return [`Most a plant and most a litre: ${name(bestPerPlant)}.`];
  }
  return [
    ...(bestPerPlant === null ? [] : [`Most a plant: ${name(bestPerPlant)}.`]),
    ...(bestPerLitre === null ? [] : [`Most a litre: ${name(bestPerLitre)}.`]),
  ];
}

const unfairnesses: Readonly<Record<Unfairness, string>> = {
  crops: 'they grow different crops',
  plants: 'the numbers of plants are far apart',
  days: 'they have not grown equally long',
};

function unfairText(unfair: readonly Unfairness[], s: Speaker): string {
  return `Take the comparison with care: ${s.and(unfair.map((each) => unfairnesses[each]))}.`;
}
