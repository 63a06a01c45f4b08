import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { localTimeOf } from '../../src/greenhouse/local-time.ts';
import { dayTicks, onWall } from '../../src/pictures/wall-clock.ts';

const zones = ['Europe/London', 'America/New_York', 'Australia/Lord_Howe', 'Pacific/Auckland'];
const instants = fc.integer({
  min: Date.parse('2020-01-01T00:00:00Z'),
  max: Date.parse('2035-01-01T00:00:00Z'),
});

describe('the time axis', () => {
  it('shows every instant at the hour that the greenhouse’s clock shows', () => {
    fc.assert(
      fc.property(instants, fc.constantFrom(...zones), (atMs, zone) => {
        const shown = onWall(atMs, zone).toISOString().slice(0, 16);
        expect(shown).toBe(localTimeOf(atMs, zone).toFormat("yyyy-MM-dd'T'HH:mm"));
      }),
    );
  });

  it('names few days, evenly apart, each where its midnight is', () => {
    const spans = fc.integer({ min: 0, max: 90 * 86_400_000 });
    fc.assert(
      fc.property(instants, spans, fc.constantFrom(...zones), (fromMs, spanMs, zone) => {
        const ticks = dayTicks(fromMs, fromMs + spanMs, zone);
        expect(ticks.length).toBeLessThanOrEqual(7);
        const steps = ticks.slice(1).map(({ at }, before) => +at - +ticks[before]!.at);
        expect(new Set(steps).size).toBeLessThanOrEqual(1);
        for (const { at, date } of ticks) {
          expect(at.toISOString()).toBe(`${date}T00:00:00.000Z`);
          expect(+at).toBeGreaterThan(+onWall(fromMs, zone));
          expect(+at).toBeLessThanOrEqual(+onWall(fromMs + spanMs, zone));
        }
      }),
    );
  });
});
