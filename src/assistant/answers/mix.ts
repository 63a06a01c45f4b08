import { concentrateCautions } from '../../planning/cautions-for.ts';
import { doseTold } from '../../planning/dose-bounds.ts';
import { concentratesOf, eachConcentrateMl } from '../../planning/strength-dose.ts';
import type { Ask } from '../../understanding/statement.ts';
import { boardQuestion } from '../board-question.ts';
import type { AdviceAnswer } from '../replies/advice.ts';
import type { Standing } from '../standing.ts';

/** The middle of what is kept at all, where neither a strength nor a system was named. */
const USUAL_EC_MS_PER_CM = 1.6;

/** mL of each concentrate for so many litres of the household's water. */
export function mixFor(
  standing: Standing,
  ask: Extract<Ask, { kind: 'mix' }>,
  nowMs: number,
): AdviceAnswer {
  const { greenhouse, logbook } = standing;
  const concentrates = concentratesOf(boardQuestion(standing, nowMs));
  const system = greenhouse.systems.find(({ id }) => id === ask.system);
  const [lowest, highest] = system?.ecMsPerCm ?? [USUAL_EC_MS_PER_CM, USUAL_EC_MS_PER_CM];
  const ecMsPerCm = ask.ecMsPerCm ?? (lowest + highest) / 2;
  const eachMl =
    concentrates &&
    eachConcentrateMl(concentrates, {
      litres: ask.litres,
      fromMsPerCm: greenhouse.water.ecMsPerCm,
      toMsPerCm: ecMsPerCm,
    });
  const parts = concentrates ? [concentrates.partA, concentrates.partB] : [];
  return {
    kind: 'mix',
    litres: ask.litres,
    ecMsPerCm,
    waterEcMsPerCm: greenhouse.water.ecMsPerCm,
    concentrates:
      eachMl === null ? null : parts.map(({ product }) => ({ product, mL: doseTold(eachMl) })),
    basis: concentrates?.basis ?? { kind: 'usual-strength', strength: 0 },
    cautions: concentrateCautions(
      logbook,
      greenhouse.systems.map(({ id }) => id),
      parts[0]?.product ?? 'nutrient-a',
    ),
  };
}
