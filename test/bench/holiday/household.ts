import type { LineOut, Rehearsal } from '../season/rehearsal.ts';
import { topUpsOf } from '../season/rehearsal-keeper.ts';
import type { Asked, Season } from '../season/season.ts';
import type { DayWeather } from '../season/season-weather.ts';

export const grower = 'ines';
export const helpers = ['tomas', 'priya', 'olli'] as const;

/** The family's talk with the bot, over its rehearsal. */
export class Household {
  readonly #season: Season;
  readonly #rehearsal: Rehearsal;

  constructor(season: Season, rehearsal: Rehearsal) {
    this.#season = season;
    this.#rehearsal = rehearsal;
  }

  async tellWeather(
    day: number,
    observed: readonly DayWeather[],
    forecast: readonly DayWeather[],
  ): Promise<void> {
    const weather = [...observed.slice(-1), ...forecast];
    await this.#rehearsal.say({ at: this.#at(day, '06:30'), weather });
  }

  /** The rounds of a morning, by reader. */
  async rounds(day: number): Promise<readonly LineOut[]> {
    const answers = await this.#rehearsal.say({ at: this.#at(day, '07:00') });
    return answers.filter(({ kind }) => kind === 'round');
  }

  topUpsOf(round: LineOut): readonly Asked[] {
    return topUpsOf(round, this.#season);
  }

  say(day: number, time: string, from: string, text: string): Promise<readonly LineOut[]> {
    return this.#rehearsal.say({ at: this.#at(day, time), from, text });
  }

  /** What comes unasked up to a time of day. */
  wait(day: number, time: string): Promise<readonly LineOut[]> {
    return this.#rehearsal.say({ at: this.#at(day, time) });
  }

  press(day: number, time: string, from: string, press: string): Promise<readonly LineOut[]> {
    return this.#rehearsal.say({ at: this.#at(day, time), from, press });
  }

  /** Everything of the round that is no top-up, ticked off. */
  async tickTheRest(day: number, time: string, from: string, round: LineOut): Promise<void> {
    const ticks = (round.buttons ?? [])
      .flat()
      .filter(({ label }) => label.startsWith('✓') && !label.startsWith('✓ Top up'));
    for (const { press } of ticks) await this.press(day, time, from, press);
  }

  aliasOf(system: number): string {
    return this.#season.systems[system]!.alias;
  }

  dateOf(day: number): string {
    return this.#season.weather[day]!.date;
  }

  #at(day: number, time: string): string {
    return `${this.dateOf(day)}T${time}:00${this.#season.place.utcOffset}`;
  }
}
