import { takeDangerAmounts } from './dangers/danger-in.ts';
import { type Fact, inFull } from './fact.ts';
import type { Mood } from './moods/mood.ts';
import type { Frame } from './reading/frame.ts';
import { recogniseAeration } from './recognisers/aeration.ts';
import { recogniseAndOfAnother } from './recognisers/and-of-another.ts';
import { recogniseCalibrations } from './recognisers/calibration.ts';
import { recogniseChanges } from './recognisers/change.ts';
import { recogniseCleaning } from './recognisers/cleaning.ts';
import { recogniseDoses } from './recognisers/dose.ts';
import { recogniseFailures } from './recognisers/duty-failed.ts';
import { recogniseFillTimes } from './recognisers/fill-time.ts';
import { recogniseHarvests } from './recognisers/harvest.ts';
import { recogniseLeftOvers } from './recognisers/left-over.ts';
import { recogniseLevels } from './recognisers/level.ts';
import { takeNotReadings } from './recognisers/not-readings.ts';
import { recogniseMoreOfLogged } from './recognisers/of-just-logged.ts';
import { recogniseOneMore } from './recognisers/one-more.ts';
import { recogniseOutages } from './recognisers/outage.ts';
import { recognisePartsOfTold } from './recognisers/part-of-told.ts';
import { recogniseReadAnew } from './recognisers/read-anew.ts';
import { recogniseReadings } from './recognisers/readings.ts';
import { recogniseRemainders } from './recognisers/remainder.ts';
import { recogniseSameAsBefore, withEachOfJoined } from './recognisers/same-as-before.ts';
import { recogniseShorthand } from './recognisers/shorthand.ts';
import { recogniseSwitchedByTime } from './recognisers/switched-by-time.ts';
import { recogniseTopUps } from './recognisers/top-up.ts';
import { recogniseTroubles } from './recognisers/trouble.ts';
import { recogniseWellBeing } from './recognisers/well-being.ts';
import { withWhatWasNeeded } from './refiners/as-needed.ts';

/** In this order: the more a pattern asks for, the earlier; each sees what those before it have told. */
const recognisers: readonly ((frame: Frame, told: readonly Fact[]) => Fact[])[] = [
  recogniseCalibrations,
  recogniseAeration,
  recogniseFillTimes,
  recogniseCleaning,
  recogniseSwitchedByTime,
  recogniseOutages,
  recogniseDoses,
  recogniseHarvests,
  recogniseChanges,
  recogniseTopUps,
  recogniseRemainders,
  recogniseOneMore,
  recogniseMoreOfLogged,
  recogniseAndOfAnother,
  recognisePartsOfTold,
  recogniseLevels,
  recogniseReadAnew,
  recogniseReadings,
  recogniseShorthand,
  recogniseLeftOvers,
];

export function factsOf(frame: Frame, moods: readonly (Mood | null)[]): Fact[] {
  const facts = recogniseFailures(frame).map(inFull);
  takeNotReadings(frame);
  takeDangerAmounts(frame, moods);
  for (const recognise of recognisers) facts.push(...recognise(frame, facts).map(inFull));
  facts.push(...recogniseSameAsBefore(frame, moods, facts));
  const given = withWhatWasNeeded(frame, facts, moods);
  facts.splice(0, facts.length, ...given);
  facts.push(...recogniseTroubles(frame, moods, facts));
  facts.push(...recogniseWellBeing(frame, moods, facts));
  return withEachOfJoined(frame, facts).sort((a, b) => a.at - b.at);
}
