import { type Arrangement, withSettled } from '../greenhouse/arrangement.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { emptyLogbook, type Logbook, withEntries, withStrikes } from '../logbook/logbook.ts';
import type { PastRound } from '../logbook/rounds.ts';
import { emptyWaterFold, refolded, type WaterFold } from '../logbook/water-fold.ts';
import { type WeatherBook, withWeather } from '../logbook/weather-book.ts';
import type { Changes } from './ports/store.ts';

/** A greenhouse as it stands at `nowMs`: its set-up, its logbook, and what is folded from them. */
export interface Standing {
  readonly greenhouse: Greenhouse;
  /** Nothing is logged before this instant. */
  readonly createdAtMs: number;
  readonly revision: number;
  readonly logbook: Logbook;
  readonly rounds: readonly PastRound[];
  /** What the household settled among its people, earliest first, each in its place for good. */
  readonly arrangements: readonly Arrangement[];
  /** Members who have not joined yet, where others have: nothing reaches them. */
  readonly unjoined: readonly string[];
  readonly weather: WeatherBook;
  readonly water: WaterFold;
  readonly nowMs: number;
}

export function emptyStanding(greenhouse: Greenhouse, createdAtMs: number): Standing {
  return {
    greenhouse,
    createdAtMs,
    revision: -1,
    logbook: emptyLogbook,
    rounds: [],
    arrangements: [],
    unjoined: [],
    weather: new Map(),
    water: emptyWaterFold,
    nowMs: createdAtMs,
  };
}

/** What changes a standing; all parts may be empty. */
export type StandingChanges = Omit<Changes, 'mornings'> & {
  readonly mornings: readonly PastRound[];
};

/** Brings a standing up to what the database holds, and to `nowMs`. */
export function withChanges(
  standing: Standing,
  changes: StandingChanges,
  revision: number,
  nowMs: number,
): Standing {
  const next = {
    ...standing,
    revision,
    nowMs,
    greenhouse: changes.greenhouse ?? standing.greenhouse,
    logbook: withStrikes(withEntries(standing.logbook, changes.entries), changes.strikes),
    rounds:
      changes.mornings.length > 0 ? [...standing.rounds, ...changes.mornings] : standing.rounds,
    arrangements:
      changes.arrangements.length > 0
        ? withSettled(standing.arrangements, changes.arrangements)
        : standing.arrangements,
    weather: withWeather(standing.weather, changes.weather),
  };
  return { ...next, water: refolded(standing.water, next, nowMs) };
}

/** The standing with another logbook, its estimates folded anew. */
export function withLogbook(standing: Standing, logbook: Logbook): Standing {
  const next = { ...standing, logbook };
  return { ...next, water: refolded(standing.water, next, standing.nowMs) };
}

/** The standing with another set-up, its estimates folded anew. */
export function withGreenhouse(standing: Standing, greenhouse: Greenhouse): Standing {
  const next = { ...standing, greenhouse };
  return { ...next, water: refolded(standing.water, next, standing.nowMs) };
}
