import type { Dice } from './dice.ts';
import type { BenchSystem } from './greenhouse-sets.ts';
import type { DayWeather } from './season-weather.ts';

/** The hidden truth of one system and season: litres lost a day, and what they would be without noise. */
export interface HiddenUse {
  readonly litres: readonly number[];
  /** The mean that an observer would know who knows all but the day's noise. */
  readonly meanLitres: readonly number[];
}

/** Four ways in which the world may be built; the estimator is built like none of them. */
export type TruthName = 'logistic' | 'sunlit' | 'thirsty' | 'spells';
export const truthNames: readonly TruthName[] = ['logistic', 'sunlit', 'thirsty', 'spells'];

export function hiddenUse(
  truth: TruthName,
  system: BenchSystem,
  season: readonly DayWeather[],
  latitude: number,
  dice: Dice,
): HiddenUse {
  const grown = system.grownLPerDay * Math.exp(0.25 * dice.normal());
  const factors = truths[truth](season, latitude, dice);
  const prune = pruning(season.length, dice);
  const leak = dice.uniform() < 0.3 ? dice.between(0.005, 0.03) * grown : 0;
  const evaporation = 0.02 * grown;
  const mean = factors.mean.map((m, d) => grown * m * prune[d]! + leak + evaporation);
  const litres = factors.mean.map(
    (m, d) => grown * m * prune[d]! * factors.noise[d]! + leak + evaporation,
  );
  return { litres, meanLitres: mean };
}

interface Factors {
  readonly mean: readonly number[];
  /** Mean about 1. */
  readonly noise: readonly number[];
}

type Truth = (season: readonly DayWeather[], latitude: number, dice: Dice) => Factors;

const truths: Readonly<Record<TruthName, Truth>> = {
  // Logistic growth, grass thirst, log-normal noise with a memory.
  logistic: (season, latitude, dice) => {
    const middle = dice.between(25, 55);
    const rate = dice.between(0.05, 0.09);
    const start = dice.between(0.08, 0.2);
    const growth = season.map((_, d) => start + (1 - start) / (1 + Math.exp(-rate * (d - middle))));
    const driver = season.map((day) => grassThirst(day, latitude) / 4);
    return { mean: times(growth, driver), noise: remembering(season.length, dice, 0.18, 0.6) };
  },
  // Gompertz growth, light alone, noise of two independent kinds without a common shape.
  sunlit: (season, latitude, dice) => {
    const rate = dice.between(0.03, 0.06);
    const lag = dice.between(2, 3.2);
    const growth = season.map((_, d) => Math.exp(-lag * Math.exp(-rate * d)));
    const driver = season.map((day) => 0.15 + 0.85 * (light(day, latitude) / 21));
    const slow = remembering(season.length, dice, 0.1, 0.9);
    const noise = slow.map((s) => s * Math.max(0.3, 1 + 0.14 * dice.normal()));
    return { mean: times(growth, driver), noise };
  },
  // Straight growth with two harvests and age, dry air, heavy-tailed noise.
  thirsty: (season, _latitude, dice) => {
    const cuts = [dice.between(55, 80), dice.between(105, 135)];
    let leaf = dice.between(0.15, 0.3);
    const growth = season.map((_, d) => {
      leaf += d < 120 ? 0.012 : -0.003;
      if (cuts.some((cut) => Math.floor(cut) === d)) leaf *= dice.between(0.55, 0.75);
      return Math.max(0.1, leaf);
    });
    const driver = season.map((day) => 0.25 + 0.75 * (dryness(day) / 1.1));
    const noise = remembering(season.length, dice, 0.1, 0.4).map(
      (n) => n * Math.exp(0.06 * Math.max(-4, Math.min(4, heavy(dice)))),
    );
    return { mean: times(growth, driver), noise };
  },
  // A spurt that doubles in ten days, warmth, and spells of windy and still days.
  spells: (season, _latitude, dice) => {
    const start = dice.between(0.08, 0.15);
    const from = dice.between(10, 30);
    const growth = season.map(
      (_, d) =>
        Math.min(1, start * 2 ** (Math.max(0, d - from) / 10)) *
        (d > 150 ? 1 - 0.008 * (d - 150) : 1),
    );
    const driver = season.map((day) => 2 ** (((day.tMinC + day.tMaxC) / 2 - 22) / 12));
    let windy = false;
    const noise = season.map(() => {
      if (dice.uniform() < 0.22) windy = !windy;
      return (windy ? 1.18 : 0.85) * (1 + dice.between(-0.12, 0.12));
    });
    return { mean: times(growth, driver), noise };
  },
};

function times(a: readonly number[], b: readonly number[]): number[] {
  return a.map((x, i) => x * b[i]!);
}

/** Log-normal with mean 1, its logarithm an AR(1) of this sd and memory. */
function remembering(days: number, dice: Dice, sd: number, memory: number): number[] {
  let state = sd * dice.normal();
  return Array.from({ length: days }, () => {
    state = memory * state + sd * Math.sqrt(1 - memory * memory) * dice.normal();
    return Math.exp(state - (sd * sd) / 2);
  });
}

/** Student's t with three degrees of freedom. */
function heavy(dice: Dice): number {
  const scale = (dice.normal() ** 2 + dice.normal() ** 2 + dice.normal() ** 2) / 3;
  return dice.normal() / Math.sqrt(scale + 1e-9);
}

/** Leaves taken once or twice a season, 20 to 40 %, grown back over three weeks. */
function pruning(days: number, dice: Dice): number[] {
  const cuts = Array.from({ length: dice.uniform() < 0.5 ? 1 : 2 }, () => ({
    on: Math.floor(dice.between(40, 150)),
    share: dice.between(0.2, 0.4),
    weeks: dice.between(2, 4),
  }));
  return Array.from({ length: days }, (_, d) =>
    cuts.reduce(
      (f, cut) =>
        d < cut.on ? f : f * (1 - cut.share * Math.exp(-(d - cut.on) / (7 * cut.weeks))),
      1,
    ),
  );
}

function dayOfYear(date: string): number {
  return (Date.parse(date) - Date.parse(`${date.slice(0, 4)}-01-01`)) / 86_400_000 + 1;
}

/** Sun above the air, MJ/m², written out here so that the truth shares no code with the bot. */
function sunAboveAir(date: string, latitude: number): number {
  const j = (2 * Math.PI * dayOfYear(date)) / 365;
  const tilt = 0.409 * Math.sin(j - 1.39);
  const phi = (latitude * Math.PI) / 180;
  const set = Math.acos(-Math.tan(phi) * Math.tan(tilt));
  const path =
    set * Math.sin(phi) * Math.sin(tilt) + Math.cos(phi) * Math.cos(tilt) * Math.sin(set);
  return 37.6 * (1 + 0.033 * Math.cos(j)) * path;
}

function grassThirst({ date, tMinC, tMaxC }: DayWeather, latitude: number): number {
  const mean = (tMinC + tMaxC) / 2;
  const eto = 0.00094 * (mean + 17.8) * Math.sqrt(Math.max(0.5, tMaxC - tMinC));
  return Math.max(0.3, eto * sunAboveAir(date, latitude));
}

function light({ date, tMinC, tMaxC }: DayWeather, latitude: number): number {
  return 0.17 * Math.sqrt(Math.max(0.5, tMaxC - tMinC)) * sunAboveAir(date, latitude);
}

function dryness({ tMinC, tMaxC }: DayWeather): number {
  const full = (t: number) => 0.61 * Math.exp((17.3 * t) / (t + 237));
  return Math.max(0.05, (full(tMaxC) - full(tMinC)) / 2);
}
