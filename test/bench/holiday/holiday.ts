import { type Dice, diceOf } from '../season/dice.ts';
import { truthNames } from '../season/hidden-use.ts';
import { makeSeason, type Season } from '../season/season.ts';
import { type BenchPlace, type DayWeather, places, years } from '../season/season-weather.ts';

/** Weeks at home, in which the bot learns, then a holiday; one stretch of a season. */
export interface Holiday {
  readonly name: string;
  /** From the first day at home to the last one away. */
  readonly season: Season;
  readonly dice: Dice;
}

export const daysAtHome = 28;
export const daysAway = 14;
const sets = ['three', 'four', 'six'] as const;
/** Of a season that begins on 15 April: holidays begin from June to September. */
const firstStart = 45;
const startsOver = 110;

/** The nth of a hundred: every place, year, truth and greenhouse comes up, at all times of summer. */
export function nthHoliday(
  n: number,
  weather: ReadonlyMap<string, readonly DayWeather[]>,
): Holiday {
  const place: BenchPlace = places[n % 2]!;
  const year = years[Math.floor(n / 2) % years.length]!;
  const truth = truthNames[Math.floor(n / 8) % truthNames.length]!;
  const whole = makeSeason(place, year, sets[n % sets.length]!, truth, weather.get(place.name)!);
  const leaves = firstStart + ((n * 37) % startsOver);
  const season = stretchOf(whole, leaves - daysAtHome, daysAtHome + daysAway);
  const name = `${whole.name} from ${season.weather[daysAtHome]!.date}`;
  return { name, season, dice: diceOf(name) };
}

export function stretchOf(season: Season, from: number, days: number): Season {
  return {
    ...season,
    weather: season.weather.slice(from, from + days),
    uses: season.uses.map(({ litres, meanLitres }) => ({
      litres: litres.slice(from, from + days),
      meanLitres: meanLitres.slice(from, from + days),
    })),
  };
}
