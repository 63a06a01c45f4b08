import { type Dice, diceOf } from '../season/dice.ts';
import { ecRange, phRange } from '../season/greenhouse-file.ts';
import type { LineOut, Rehearsal } from '../season/rehearsal.ts';
import { topUpsOf } from '../season/rehearsal-keeper.ts';
import type { Season } from '../season/season.ts';
import { forecastOf } from '../season/season-weather.ts';
import { type Solution, solutionOf } from './solution.ts';

type Due = NonNullable<LineOut['due']>[number];

export interface AllDutiesOutcome {
  /** Days on which somebody went, for whatever duty. */
  readonly trips: number;
  /** Of these, days on which water asked for it. */
  readonly waterTrips: number;
  /** What made the other trips, counted by kind of duty. */
  readonly causes: ReadonlyMap<string, number>;
  /** Warnings of what does not fit, by what they speak of; nothing was ever wrong. */
  readonly falseAlerts: ReadonlyMap<string, number>;
  readonly lowDays: number;
  /** System-days on which pH or EC was well out of range. */
  readonly offDays: number;
  readonly systemDays: number;
}

/** Out of range by less than this is no harm: in pH, and in mS/cm. */
const SLIGHTLY = { ph: 0.3, ec: 0.2 };
const FORGETS_ONE_IN = 10;
const PH_METER_SD = 0.04;
const EC_METER_SD = 0.03;
/** What is ticked off by its button; all else is told in words, with figures. */
const TICKED = /^✓ (?!Top up|Check|Add|Change|Calibrate)/;

/** What a warning speaks of, by its words. */
const WARNINGS: readonly (readonly [of: string, words: RegExp])[] = [
  ['too much used', /has lost about/],
  ['too little used', /has used (?:only|hardly)/],
  ['pH on the move', /^The pH of .* has (?:risen|fallen)/],
  ['EC on the move', /^The EC of .* has (?:risen|fallen)/],
  ['standing still', /times in a row|does not move/],
];

/** A season in which the grower does all that the round of a trip lists, and tells of it. */
export async function playAllDuties(
  season: Season,
  rehearsal: Rehearsal,
): Promise<AllDutiesOutcome> {
  const play = new Play(season, rehearsal);
  for (let day = 0; day < season.weather.length; day += 1) await play.day(day);
  return play.outcome;
}

class Play {
  readonly #season: Season;
  readonly #rehearsal: Rehearsal;
  readonly #dice: Dice;
  readonly #skyDice: Dice;
  readonly #levels: number[];
  readonly #solutions: readonly Solution[];
  readonly #causes = new Map<string, number>();
  readonly #falseAlerts = new Map<string, number>();
  #trips = 0;
  #waterTrips = 0;
  #lowDays = 0;
  #offDays = 0;

  constructor(season: Season, rehearsal: Rehearsal) {
    this.#season = season;
    this.#rehearsal = rehearsal;
    this.#dice = diceOf(`${season.name} all duties`);
    this.#skyDice = diceOf(`${season.name} sky`);
    this.#levels = season.systems.map(({ brimL }) => brimL);
    this.#solutions = season.systems.map(() => solutionOf(phRange, ecRange, this.#dice));
  }

  get outcome(): AllDutiesOutcome {
    return {
      trips: this.#trips,
      waterTrips: this.#waterTrips,
      causes: this.#causes,
      falseAlerts: this.#falseAlerts,
      lowDays: this.#lowDays,
      offDays: this.#offDays,
      systemDays: this.#season.systems.length * this.#season.weather.length,
    };
  }

  async day(day: number): Promise<void> {
    const { systems } = this.#season;
    if (day === 0) {
      for (const { alias, brimL } of systems) {
        await this.#say(day, '06:00', `${alias} level ${String(brimL)} l`);
      }
    }
    const round = await this.#morning(day);
    const due = (round?.due ?? []).filter(({ alongside }) => alongside !== true);
    if (round && due.length > 0) {
      this.#countTrip(due);
      await this.#goFor(day, round);
    }
    this.#dayPasses(day);
  }

  async #morning(day: number): Promise<LineOut | undefined> {
    const { weather } = this.#season;
    const forecast = forecastOf(weather.slice(day, day + 7), this.#skyDice);
    const known = [...weather.slice(Math.max(0, day - 1), day), ...forecast];
    await this.#hears({ at: this.#at(day, '06:30'), weather: known });
    const answers = await this.#hears({ at: this.#at(day, '07:00') });
    return answers.find(({ kind }) => kind === 'round');
  }

  #countTrip(due: readonly Due[]): void {
    this.#trips += 1;
    const kinds = new Set(due.map(({ duty }) => duty));
    if (kinds.has('top-up')) {
      this.#waterTrips += 1;
      return;
    }
    for (const kind of kinds) this.#causes.set(kind, (this.#causes.get(kind) ?? 0) + 1);
  }

  async #goFor(day: number, round: LineOut): Promise<void> {
    const due = round.due ?? [];
    await this.#topUp(day, round);
    for (const duty of due) {
      if (duty.duty === 'reservoir-change') await this.#change(day, this.#indexOf(duty.system));
      if (duty.duty === 'calibration') await this.#calibrate(day, duty.probe!);
    }
    for (const { label, press } of (round.buttons ?? []).flat()) {
      if (!TICKED.test(label)) continue;
      await this.#hears({ at: this.#at(day, '08:50'), from: 'ines', press });
    }
    for (const { duty, system, why } of due) {
      if (duty !== 'check') continue;
      await this.#measure(day, '09:00', this.#indexOf(system), why.includes('level'));
    }
    await this.#doseWhatIsOut(day, '09:10', '09:40');
    await this.#doseWhatIsOut(day, '09:50', '10:20');
  }

  async #topUp(day: number, round: LineOut): Promise<void> {
    for (const { system, litres, wantsLevel } of topUpsOf(round, this.#season)) {
      const { brimL, method, alias } = this.#season.systems[system]!;
      const room = brimL - this.#levels[system]!;
      const added = method === 'non-circulating' ? Math.min(room, litres) : room;
      this.#levels[system]! += added;
      const said = inHalves(added);
      const forgets = this.#dice.uniform() * FORGETS_ONE_IN < 1;
      if (!forgets && added >= 0.25)
        await this.#say(day, '08:30', `topped up the ${alias} ${said} l`);
      if (!wantsLevel) continue;
      await this.#say(day, '08:30', `${alias} level ${inHalves(this.#levels[system]!)} l`);
    }
  }

  async #change(day: number, system: number): Promise<void> {
    const { brimL, alias } = this.#season.systems[system]!;
    this.#solutions[system]!.renewed();
    this.#levels[system] = brimL;
    await this.#say(day, '08:45', `changed the ${alias} solution, all ${String(brimL)} l new`);
  }

  async #calibrate(day: number, probe: string): Promise<void> {
    const told = probe === 'pen' ? '7.00 read 7.02, 4.00 read 4.03' : '1.41 read 1.42';
    await this.#say(day, '08:45', `calibrated the ${probe}: ${told}`);
  }

  async #measure(day: number, time: string, system: number, withLevel: boolean): Promise<void> {
    const { alias } = this.#season.systems[system]!;
    const solution = this.#solutions[system]!;
    const ph = (solution.ph + PH_METER_SD * this.#dice.normal()).toFixed(1);
    const ec = (solution.ec + EC_METER_SD * this.#dice.normal()).toFixed(1);
    const level = withLevel ? ` level ${inHalves(this.#levels[system]!)} l` : '';
    await this.#say(day, time, `${alias} ph ${ph} ec ${ec}${level}`);
  }

  /** What the readings call for is put in on the same visit, and measured again. */
  async #doseWhatIsOut(day: number, time: string, later: string): Promise<void> {
    const answers = await this.#say(day, time, 'what needs doing?');
    const due = answers.find(({ kind }) => kind === 'answer')?.due ?? [];
    const doses = due.filter(({ duty }) => duty === 'dose');
    for (const { system, product, mL } of doses) {
      const quantity = product!.startsWith('ph') ? 'ph' : 'ec';
      const [low, high] = quantity === 'ph' ? phRange : ecRange;
      const position = this.#indexOf(system);
      this.#solutions[position]!.dosedTowards(quantity, (low + high) / 2);
      const { alias } = this.#season.systems[position]!;
      await this.#say(day, time, `added ${String(mL)} ml ${product!} to the ${alias}`);
    }
    for (const system of new Set(doses.map((dose) => dose.system))) {
      await this.#measure(day, later, this.#indexOf(system), false);
    }
  }

  #dayPasses(day: number): void {
    for (const [i, { lowL }] of this.#season.systems.entries()) {
      this.#levels[i] = Math.max(0, this.#levels[i]! - this.#season.uses[i]!.litres[day]!);
      if (this.#levels[i] < lowL) this.#lowDays += 1;
      const solution = this.#solutions[i]!;
      const isOff =
        isBeyond(solution.ph, phRange, SLIGHTLY.ph) || isBeyond(solution.ec, ecRange, SLIGHTLY.ec);
      if (isOff) this.#offDays += 1;
      solution.nextDay();
    }
  }

  #say(day: number, time: string, text: string): Promise<readonly LineOut[]> {
    return this.#hears({ at: this.#at(day, time), from: 'ines', text });
  }

  async #hears(line: object): Promise<readonly LineOut[]> {
    const answers = await this.#rehearsal.say(line);
    for (const { kind, text = '' } of answers) {
      const warning = kind === 'alert' && WARNINGS.find(([, words]) => words.test(text));
      if (!warning) continue;
      this.#falseAlerts.set(warning[0], (this.#falseAlerts.get(warning[0]) ?? 0) + 1);
    }
    return answers;
  }

  #indexOf(system: string | null): number {
    return this.#season.systems.findIndex(({ name }) => name === system);
  }

  #at(day: number, time: string): string {
    return `${this.#season.weather[day]!.date}T${time}:00${this.#season.place.utcOffset}`;
  }
}

/** As a jug is read. */
function inHalves(litres: number): string {
  return String(Math.round(2 * litres) / 2);
}

function isBeyond(value: number, [low, high]: readonly [number, number], by: number): boolean {
  return value < low - by || value > high + by;
}
