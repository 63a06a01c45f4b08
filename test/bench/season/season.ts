import { type Dice, diceOf } from './dice.ts';
import { type BenchSystem, greenhouseSets } from './greenhouse-sets.ts';
import { type HiddenUse, hiddenUse, type TruthName } from './hidden-use.ts';
import { type BenchPlace, type DayWeather, forecastOf, seasonOf } from './season-weather.ts';

/** One season of one greenhouse: the weather, the systems and what they will truly lose. */
export interface Season {
  readonly name: string;
  readonly place: BenchPlace;
  readonly systems: readonly BenchSystem[];
  readonly weather: readonly DayWeather[];
  readonly uses: readonly HiddenUse[];
}

export function makeSeason(
  place: BenchPlace,
  year: number,
  set: string,
  truth: TruthName,
  allDays: readonly DayWeather[],
): Season {
  const weather = seasonOf(allDays, year);
  const name = `${place.name} ${year} ${set} ${truth}`;
  const systems = greenhouseSets[set]!;
  const uses = systems.map((system) =>
    hiddenUse(truth, system, weather, place.latitude, diceOf(`${name} ${system.name}`)),
  );
  return { name, place, systems, weather, uses };
}

/** What the keeper is told of the weather: the days gone and a forecast, the days gone, or nothing. */
export type Sky = 'forecasts' | 'observed' | 'no weather';
export const skies: readonly Sky[] = ['forecasts', 'observed', 'no weather'];

/** What a morning's round asks for. */
export interface Asked {
  readonly system: number;
  readonly litres: number;
  readonly alongside: boolean;
  /** Where the water stands is to be told as well. */
  readonly wantsLevel?: boolean;
}

/** A figure foreseen, for the scores. */
export interface Foreseen {
  readonly litres: number;
  readonly litresSd: number;
  readonly useNext: readonly {
    readonly days: number;
    readonly p5: number;
    readonly p50: number;
    readonly p95: number;
  }[];
  /** Days ahead of today's date; null: beyond the horizon. */
  readonly lowInDays: {
    readonly p5: number | null;
    readonly p50: number | null;
    readonly p95: number | null;
  };
}

/** Whoever keeps the duties in a season: the bot through its rehearsal, or a rule to compare with. */
export interface Keeper {
  /** Day `day` begins; `observed` is all weather before it, `forecast` what is foretold from it on. */
  morning(
    day: number,
    observed: readonly DayWeather[],
    forecast: readonly DayWeather[],
  ): Promise<readonly Asked[]>;
  /** The helper says what a system took. */
  toppedUp(day: number, system: number, litres: number): Promise<void>;
  /** What it foresees this morning, where it foresees anything. */
  foresees?(day: number): Promise<readonly Foreseen[]>;
}

export interface Helper {
  /** Fills to the brim, or adds just what was asked. */
  readonly way: 'brim' | 'listed';
  /** Forgets one report in this many. */
  readonly forgetsOneIn: number;
  readonly roundsToL: number;
}

export interface Outcome {
  readonly trips: number;
  readonly tripDays: readonly number[];
  readonly lowDays: number;
  readonly systemDays: number;
  /** Levels at the start of each day, by day and system. */
  readonly levels: readonly (readonly number[])[];
  readonly foreseen: readonly (readonly Foreseen[])[];
}

/** Plays a season with a keeper and a helper who goes only when a top-up is due. */
export async function playSeason(
  season: Season,
  keeper: Keeper,
  helper: Helper,
  sky: Sky,
): Promise<Outcome> {
  const dice = diceOf(`${season.name} helper`);
  const skyDice = diceOf(`${season.name} sky`);
  const levels = season.systems.map((system) => system.brimL);
  const history: number[][] = [];
  const foreseen: (readonly Foreseen[])[] = [];
  const tripDays: number[] = [];
  let lowDays = 0;
  for (let day = 0; day < season.weather.length; day += 1) {
    history.push(levels.slice());
    const ahead = season.weather.slice(day, day + 7);
    const forecast = forecastOf(ahead, skyDice);
    const asked = await keeper.morning(
      day,
      sky === 'no weather' ? [] : season.weather.slice(0, day),
      sky === 'forecasts' ? forecast : [],
    );
    if (keeper.foresees) foreseen.push(await keeper.foresees(day));
    if (asked.some((duty) => !duty.alongside)) {
      tripDays.push(day);
      for (const duty of asked) await topUp(season, keeper, helper, levels, duty, day, dice);
    }
    for (const [i, system] of season.systems.entries()) {
      levels[i] = Math.max(0, levels[i]! - season.uses[i]!.litres[day]!);
      if (levels[i] < system.lowL) lowDays += 1;
    }
  }
  const systemDays = season.systems.length * season.weather.length;
  return { trips: tripDays.length, tripDays, lowDays, systemDays, levels: history, foreseen };
}

async function topUp(
  season: Season,
  keeper: Keeper,
  helper: Helper,
  levels: number[],
  duty: Asked,
  day: number,
  dice: Dice,
): Promise<void> {
  const room = season.systems[duty.system]!.brimL - levels[duty.system]!;
  const added = helper.way === 'brim' ? room : Math.min(room, duty.litres);
  levels[duty.system] = levels[duty.system]! + added;
  const forgets = dice.uniform() * helper.forgetsOneIn < 1;
  const said = Math.round(added / helper.roundsToL) * helper.roundsToL;
  if (!forgets && said > 0) await keeper.toppedUp(day, duty.system, said);
}
