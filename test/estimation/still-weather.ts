import type { DayDriver } from '../../src/estimation/day-driver.ts';
import type { WaterBelief } from '../../src/estimation/water-belief.ts';
import type { WaterEvent } from '../../src/estimation/water-event.ts';
import { observe } from '../../src/estimation/water-observe.ts';
import { outlook } from '../../src/estimation/water-outlook.ts';
import { startBelief } from '../../src/estimation/water-start.ts';
import type { WaterSystem } from '../../src/estimation/water-system.ts';

export const hourMs = 3_600_000;
export const dayMs = 24 * hourMs;

export const tubs: WaterSystem = {
  brimL: 108,
  lowL: 72,
  crop: 'cucumber',
  plants: 6,
  filledToBrim: true,
};

/** Days that are all alike. */
export const stillDays: readonly DayDriver[] = Array.from({ length: 460 }, (_, d) => ({
  startMs: d * dayMs,
  endMs: (d + 1) * dayMs,
  etoMm: 3,
  etoLogSd: 0,
  origin: 'observed' as const,
}));

/** Filled to the brim every `everyDays` mornings at eight, each time by what a steady use took. */
export function steadyFills(useLPerDay: number, everyDays: number, fills: number): WaterEvent[] {
  const full: WaterEvent = { kind: 'level', atMs: 8 * hourMs, litres: 108, approximate: false };
  const topUps = Array.from(
    { length: fills },
    (_, i): WaterEvent => ({
      kind: 'top-up',
      atMs: (i + 1) * everyDays * dayMs + 8 * hourMs,
      litres: Math.round(useLPerDay * everyDays),
      approximate: false,
      askedL: null,
    }),
  );
  return [full, ...topUps];
}

export function folded(
  events: readonly WaterEvent[],
  from: WaterBelief = startBelief(tubs, 0),
): WaterBelief {
  return events.reduce((belief, event) => observe(tubs, belief, event, stillDays), from);
}

/** The outlook a while after the last event, with visits at eight on the coming mornings. */
export function outlookOf(belief: WaterBelief, atMs: number) {
  const today = Math.floor(atMs / dayMs);
  const visitsAtMs = Array.from({ length: 40 }, (_, k) =>
    k === 0 ? atMs : (today + k) * dayMs + 8 * hourMs,
  );
  return outlook(tubs, belief, {
    atMs,
    drivers: stillDays.slice(0, today + 62),
    visitsAtMs,
    raiseAtMostL: null,
  });
}
