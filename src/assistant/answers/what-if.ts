import { localDateOf } from '../../greenhouse/local-time.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import { refolded } from '../../logbook/water-fold.ts';
import { waterOutlooks } from '../../planning/water-outlooks.ts';
import { weatherIf } from '../../planning/what-if/weather-if.ts';
import { whatIf } from '../../planning/what-if/what-if.ts';
import { boardQuestion } from '../board-question.ts';
import type { Answer } from '../replies/answer.ts';
import type { Standing } from '../standing.ts';

/** How it would go, reckoned by the same model as the duties; nothing is settled by asking. */
export function whatIfAnswer(standing: Standing, scenario: Scenario, nowMs: number): Answer {
  const board = boardQuestion(standing, nowMs);
  if (scenario.kind !== 'weather') {
    return { kind: 'what-if', told: whatIf(scenario, board, board.outlooks) };
  }
  const today = localDateOf(nowMs, standing.greenhouse.timeZone);
  const weather = weatherIf(standing.weather, scenario, today);
  const water = refolded(standing.water, { ...standing, weather }, nowMs);
  const outlooks = waterOutlooks(standing.greenhouse, water, nowMs);
  return { kind: 'what-if', told: whatIf(scenario, board, outlooks) };
}
