import { describe, expect, it } from 'vitest';
import type { Entry, EntryDraft, EntryNo } from '../../src/greenhouse/entry.ts';
import type { Greenhouse } from '../../src/greenhouse/greenhouse.ts';
import type { Quantity } from '../../src/greenhouse/quantity.ts';
import { emptyLogbook, withEntries } from '../../src/logbook/logbook.ts';
import { seasonOf } from '../../src/planning/season.ts';
import { buckets, date, entry, jars, quarryLane } from '../wording/quarry-lane.ts';

const createdAtMs = Date.parse('2027-03-01T08:00:00Z');
const nowMs = Date.parse('2027-05-04T08:20:00+01:00');

type Said = readonly [Quantity, number, string, Partial<EntryDraft>];

function season(said: readonly Said[], greenhouse: Greenhouse = quarryLane) {
  const entries = said.map(
    ([quantity, value, at, more], i): Entry => ({
      ...entry(quantity, value, { ...more, atMs: Date.parse(at) }),
      no: (i + 1) as EntryNo,
    }),
  );
  return seasonOf(greenhouse, withEntries(emptyLogbook, entries), createdAtMs, nowMs);
}

const of = { system: buckets };

describe('The season', () => {
  it('adds up litres, nutrients, visits and the harvest since planting', () => {
    const planted = {
      ...quarryLane,
      systems: quarryLane.systems.map((system) =>
        system.id === buckets ? { ...system, plantedOn: date('2027-04-01') } : system,
      ),
    };
    const { systems } = season(
      [
        ['top-up', 99, '2027-03-20T09:00:00Z', of],
        ['top-up', 12, '2027-04-02T09:00:00+01:00', of],
        ['reservoir-change', 108, '2027-04-10T09:00:00+01:00', of],
        ['dose', 20, '2027-04-10T09:00:00+01:00', { ...of, product: 'nutrient-a' }],
        ['dose', 5, '2027-04-10T09:00:00+01:00', { ...of, product: 'ph-down' }],
        ['harvest', 600, '2027-04-28T09:00:00+01:00', of],
        ['harvest', 1200, '2027-05-01T09:00:00+01:00', of],
      ],
      planted,
    );
    expect(systems.find(({ system }) => system === buckets)).toMatchObject({
      isFromLogbook: false,
      days: 33,
      litres: 120,
      nutrientMl: 20,
      visits: 4,
      harvestG: 1800,
      firstHarvestOn: '2027-04-28',
      gPerPlant: 300,
      gPerLitre: 15,
    });
  });

  it('counts minutes of trouble once, however many things were out', () => {
    const { systems } = season([
      ['outage', 1, '2027-05-01T10:00:00+01:00', { system: null, of: 'power' }],
      ['outage', 1, '2027-05-01T10:30:00+01:00', { ...of, of: 'air-pump' }],
      ['restored', 1, '2027-05-01T11:00:00+01:00', { system: null, of: 'power' }],
      ['restored', 1, '2027-05-01T11:15:00+01:00', { ...of, of: 'air-pump' }],
    ]);
    const trouble = new Map(systems.map(({ system, troubleMin }) => [system, troubleMin]));
    expect(trouble.get(buckets)).toBe(75);
    expect(trouble.get(jars)).toBe(60);
  });

  it('names the best only among those that gave something, with what makes it unfair', () => {
    const one = season([['harvest', 600, '2027-05-01T10:00:00+01:00', of]]);
    expect(one).toMatchObject({ bestPerPlant: null, unfair: [] });
    const two = season([
      ['top-up', 10, '2027-05-01T09:00:00+01:00', of],
      ['top-up', 1, '2027-05-01T09:00:00+01:00', { system: jars }],
      // 6 plants with 100 g each, and 12 with 40 g: but of 10 L, and of one.
      ['harvest', 600, '2027-05-01T10:00:00+01:00', of],
      ['harvest', 480, '2027-05-01T10:00:00+01:00', { system: jars }],
    ]);
    expect(two).toMatchObject({
      bestPerPlant: buckets,
      bestPerLitre: jars,
      unfair: ['crops', 'plants'],
    });
  });
});
