import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { type Logbook, emptyLogbook, withEntries, withStrikes } from '../logbook/logbook.ts';
import { type WaterFold, emptyWaterFold, refolded } from '../logbook/water-fold.ts';
import { type WeatherBook, withWeather } from '../logbook/weather-book.ts';
import type { Changes } from './ports/store.ts';

/** A greenhouse as it stands: its set-up, its logbook, and what is folded from them. */
export interface Standing {
  readonly greenhouse: Greenhouse;
  /** Nothing is logged before this instant. */
  readonly createdAtMs: number;
  readonly revision: number;
  readonly logbook: Logbook;
  readonly weather: WeatherBook;
  readonly water: WaterFold;
}

export function emptyStanding(greenhouse: Greenhouse, createdAtMs: number): Standing {
  return {
    greenhouse,
    createdAtMs,
    revision: -1,
    logbook: emptyLogbook,
    weather: new Map(),
    water: emptyWaterFold,
  };
}

/** Brings a standing up to what the database holds. */
export function withChanges(standing: Standing, changes: Changes, revision: number): Standing {
  const logbook = withStrikes(withEntries(standing.logbook, changes.entries), changes.strikes);
  const weather = withWeather(standing.weather, changes.weather);
  const greenhouse = changes.greenhouse ?? standing.greenhouse;
  const water = refolded(standing.water, { greenhouse, logbook, weather });
  return { ...standing, greenhouse, revision, logbook, weather, water };
}

export function withLogbook(standing: Standing, logbook: Logbook): Standing {
  const { greenhouse, weather } = standing;
  return { ...standing, logbook, water: refolded(standing.water, { greenhouse, logbook, weather }) };
}
