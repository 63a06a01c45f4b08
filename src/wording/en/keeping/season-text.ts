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
    ? `Only ${s.system(only.system).name} has given a weighed harvest so far, so there is nothing to compare it with.`
    : `Nothing can be compared yet: no harvest was weighed. Tell me for example “400 g tomatoes from ${name}”.`;
}

function figuresText(figures: SeasonFigures, s: Speaker): string {
  const { litres, nutrientMl, visits, troubleMin, days } = figures;
  const since = figures.isFromLogbook ? 'in the logbook' : 'since planting';
  const parts = [
    s.amount(roughVolume(litres, s.units.volume)),
    `${stockAmount(nutrientMl, s)} of nutrients`,
    visits === 1 ? '1 day with a visit' : `${visits} days with a visit`,
    `${s.number(measure(troubleMin, 'none', 0, 0))} min of trouble`,
    harvestText(figures, s),
  ];
  const head = `${s.system(figures.system).name} (${cropText(figures)}, ${days} ${days === 1 ? 'day' : 'days'} ${since})`;
  return `${head}: ${parts.join(', ')}.`;
}

function harvestText(figures: SeasonFigures, s: Speaker): string {
  const { harvestG, firstHarvestOn, firstFruitOn, gPerPlant, gPerLitre } = figures;
  if (firstHarvestOn === null && firstFruitOn !== null) {
    return `first fruit on ${s.dayAndMonth(firstFruitOn)}, nothing weighed yet`;
  }
  if (firstHarvestOn === null) return 'nothing picked yet';
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
