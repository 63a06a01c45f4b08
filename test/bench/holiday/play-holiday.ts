import type { LineOut, Rehearsal } from '../season/rehearsal.ts';
import { forecastOf } from '../season/season-weather.ts';
import { daysAtHome, type Holiday } from './holiday.ts';
import { grower, Household, helpers } from './household.ts';

/** How those who step in are. */
export interface Manners {
  /** The one whose turn it is misses one trip in this many, and does not answer when asked. */
  readonly missesOneIn: number;
  /** Chance that another helper, offered the trip, makes it that evening. */
  readonly stepsIn: number;
  /** A top-up is not told one time in this many. */
  readonly forgetsOneIn: number;
}

export interface HolidayOutcome {
  readonly trips: number;
  /** Days that ended below the low mark, by system. */
  readonly lowDays: readonly number[];
  /** Days that ended dry, by system. */
  readonly dryDays: readonly number[];
}

/**
 * Roots are dry when the water has fallen below this share of the low mark. Common practice has no
 * figure: the low mark is where the grower wants water again, and roots hang well below it, about
 * down to the floor of a tub; with a quarter of that water gone, those at its edge hang in air.
 */
export const DRY_SHARE = 0.75;

/** Plays weeks at home and then the holiday; what is counted is the holiday. */
export async function playHoliday(
  holiday: Holiday,
  rehearsal: Rehearsal,
  manners: Manners,
): Promise<HolidayOutcome> {
  const play = new Play(holiday, rehearsal, manners);
  const days = holiday.season.weather.length;
  for (let day = 0; day < days; day += 1) await play.day(day);
  return play.outcome;
}

class Play {
  readonly #holiday: Holiday;
  readonly #household: Household;
  readonly #manners: Manners;
  readonly #levels: number[];
  readonly #lowDays: number[];
  readonly #dryDays: number[];
  #trips = 0;

  constructor(holiday: Holiday, rehearsal: Rehearsal, manners: Manners) {
    this.#holiday = holiday;
    this.#household = new Household(holiday.season, rehearsal);
    this.#manners = manners;
    const { systems } = holiday.season;
    this.#levels = systems.map(({ brimL }) => brimL);
    this.#lowDays = systems.map(() => 0);
    this.#dryDays = systems.map(() => 0);
  }

  get outcome(): HolidayOutcome {
    return { trips: this.#trips, lowDays: this.#lowDays, dryDays: this.#dryDays };
  }

  async day(day: number): Promise<void> {
    const { season, dice } = this.#holiday;
    const ahead = season.weather.slice(day, day + 7);
    if (day === 0) await this.#fillUp(day);
    await this.#household.tellWeather(day, season.weather.slice(0, day), forecastOf(ahead, dice));
    const rounds = await this.#household.rounds(day);
    if (day < daysAtHome) await this.#atHome(day, rounds);
    else await this.#away(day, rounds);
    for (const [i, system] of season.systems.entries()) {
      const left = Math.max(0, this.#levels[i]! - season.uses[i]!.litres[day]!);
      this.#levels[i] = left;
      if (day < daysAtHome) continue;
      if (left < system.lowL) this.#lowDays[i]! += 1;
      if (left < DRY_SHARE * system.lowL) this.#dryDays[i]! += 1;
    }
  }

  async #atHome(day: number, rounds: readonly LineOut[]): Promise<void> {
    const round = rounds.find(({ to }) => to === grower);
    if (round) await this.#goFor(day, '08:30', grower, round, false);
    if (day === daysAtHome - 1) await this.#announce(day);
  }

  /** Tells the absence, has all three step in, and fills everything before leaving. */
  async #announce(day: number): Promise<void> {
    const { season } = this.#holiday;
    const [from, until] = [season.weather[day + 1]!.date, season.weather.at(-1)!.date];
    const text = `I'm away from ${from} to ${until}`;
    const asked = await this.#household.say(day, '20:00', grower, text);
    const all = asked.flatMap(({ buttons }) => (buttons ?? []).flat())[0];
    if (!all) throw new Error(`nobody was asked who steps in: ${JSON.stringify(asked)}`);
    await this.#household.press(day, '20:01', grower, all.press);
  }

  async #fillUp(day: number): Promise<void> {
    for (const [i, { alias, brimL }] of this.#holiday.season.systems.entries()) {
      this.#levels[i] = brimL;
      await this.#household.say(day, '06:00', grower, `${alias} level ${String(brimL)} l`);
    }
  }

  async #away(day: number, rounds: readonly LineOut[]): Promise<void> {
    // Who leaves fills everything in the morning, as the plan says.
    if (day === daysAtHome) {
      for (const [i, { alias, brimL }] of this.#holiday.season.systems.entries()) {
        this.#levels[i] = brimL;
        await this.#household.say(day, '07:10', grower, `${alias} level ${String(brimL)} l`);
      }
      return;
    }
    const round = rounds.find(({ to }) => to !== grower);
    if (!round?.due?.some(({ alongside }) => alongside !== true)) return;
    const { dice } = this.#holiday;
    if (dice.uniform() * this.#manners.missesOneIn >= 1) {
      return this.#goFor(day, '09:00', round.to!, round, true);
    }
    const stepsIn = await this.#offered(day, round.to!);
    if (stepsIn !== null) await this.#goFor(day, '19:30', stepsIn, round, true);
  }

  /** Who of the others takes what was left undone, when it is offered. */
  async #offered(day: number, missing: string): Promise<string | null> {
    const said = await this.#household.wait(day, '19:00');
    for (const helper of helpers.filter((each) => each !== missing)) {
      const offer = said.find(({ kind, to }) => kind === 'alert' && to === helper);
      if (!offer || this.#holiday.dice.uniform() >= this.#manners.stepsIn) continue;
      const takes = (offer.buttons ?? []).flat().find(({ label }) => label.startsWith('I'));
      if (takes) await this.#household.press(day, '19:01', helper, takes.press);
      return helper;
    }
    return null;
  }

  /** Somebody goes, does what the round lists and tells of it, or forgets to. */
  async #goFor(
    day: number,
    time: string,
    who: string,
    round: LineOut,
    counts: boolean,
  ): Promise<void> {
    const { season, dice } = this.#holiday;
    if (!round.due?.some(({ alongside }) => alongside !== true)) return;
    if (counts) this.#trips += 1;
    for (const { system, litres, wantsLevel } of this.#household.topUpsOf(round)) {
      const { brimL, method } = season.systems[system]!;
      const room = brimL - this.#levels[system]!;
      // Jars take what was asked; all else is filled.
      const added = method === 'non-circulating' ? Math.min(room, litres) : room;
      this.#levels[system]! += added;
      const said = Math.round(added * 2) / 2;
      const forgets = dice.uniform() * this.#manners.forgetsOneIn < 1;
      if (forgets || said <= 0) continue;
      const alias = this.#household.aliasOf(system);
      await this.#household.say(day, time, who, `topped up the ${alias} ${String(said)} l`);
      if (!wantsLevel) continue;
      const level = String(Math.round(this.#levels[system]!));
      await this.#household.say(day, time, who, `${alias} level ${level} l`);
    }
    await this.#household.tickTheRest(day, time, who, round);
  }
}
