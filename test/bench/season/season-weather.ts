import { readFileSync } from 'node:fs';
import type { Dice } from './dice.ts';

export interface BenchPlace {
  readonly name: 'Seattle' | 'New York';
  readonly latitude: number;
  readonly longitude: number;
  readonly timeZone: string;
  /** The same all season: summer time runs throughout. */
  readonly utcOffset: string;
}

export const places: readonly BenchPlace[] = [
  {
    name: 'Seattle',
    latitude: 47.61,
    longitude: -122.33,
    timeZone: 'America/Los_Angeles',
    utcOffset: '-07:00',
  },
  {
    name: 'New York',
    latitude: 40.71,
    longitude: -74.01,
    timeZone: 'America/New_York',
    utcOffset: '-04:00',
  },
];
export const years = [2012, 2013, 2014, 2015] as const;

export interface DayWeather {
  readonly date: string;
  readonly tMinC: number;
  readonly tMaxC: number;
}

/** Real daily weather, `npm vega-datasets` data/weather.csv, by place. */
export function readWeather(): ReadonlyMap<string, readonly DayWeather[]> {
  const file = new URL('../../../node_modules/vega-datasets/data/weather.csv', import.meta.url);
  const byPlace = new Map<string, DayWeather[]>();
  for (const line of readFileSync(file, 'utf8').trim().split('\n').slice(1)) {
    const [place = '', date = '', , tMax = '', tMin = ''] = line.split(',');
    const days = byPlace.get(place) ?? [];
    days.push({ date, tMinC: Number(tMin), tMaxC: Number(tMax) });
    byPlace.set(place, days);
  }
  return byPlace;
}

/** The days from 15 April to 10 October of a year. */
export function seasonOf(days: readonly DayWeather[], year: number): readonly DayWeather[] {
  return days.filter(({ date }) => date >= `${year}-04-15` && date <= `${year}-10-10`);
}

/**
 * A week's forecast made on a morning: the truth plus an error that hangs together from day to day
 * and grows with the lead, about 1 °C for today and 3 °C a week ahead.
 */
export function forecastOf(ahead: readonly DayWeather[], dice: Dice): DayWeather[] {
  let error = dice.normal();
  return ahead.map(({ date, tMinC, tMaxC }, lead) => {
    error = 0.8 * error + 0.6 * dice.normal();
    const off = error * (0.9 + 0.3 * lead);
    const spread = 0.5 * dice.normal() * (0.9 + 0.15 * lead);
    const low = tMinC + off - spread;
    return { date, tMinC: round(low), tMaxC: round(Math.max(low + 0.5, tMaxC + off + spread)) };
  });
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
