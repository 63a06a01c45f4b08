import { IANAZone } from 'luxon';
import { describe, expect, it } from 'vitest';
import { nearestTown, towns } from '../../src/greenhouse/places/towns.ts';
import { readPlace } from '../../src/understanding/wishes/read-place.ts';

describe('The towns', () => {
  it('have a clock that exists and a place on the globe', () => {
    for (const { name, latitude, longitude, timeZone } of towns) {
      expect(IANAZone.isValidZone(timeZone), `${name}: ${timeZone}`).toBe(true);
      expect(Math.abs(latitude), name).toBeLessThan(72);
      expect(Math.abs(longitude), name).toBeLessThanOrEqual(180);
      // The sun's clock and the wall's are never further apart than this.
      const offsetH = new IANAZone(timeZone).offset(Date.parse('2027-01-15T12:00:00Z')) / 60;
      expect(Math.abs(offsetH - longitude / 15), name).toBeLessThan(2.6);
    }
  });

  it('are the nearest to themselves', () => {
    for (const { latitude, longitude, timeZone } of towns) {
      expect(nearestTown(latitude, longitude).timeZone).toBe(timeZone);
    }
  });
});

describe('A place', () => {
  it.each([
    ['Galway', 'Galway'],
    ['galwya', 'Galway'],
    ['münchen', 'München'],
    ['munchen', 'München'],
    ['Muenchen', 'München'],
    ['zurich, switzerland', 'Zürich'],
    ['new york', 'New York'],
    ['edinb', 'Edinburgh'],
  ])('is found by “%s”', (said, name) => {
    expect(readPlace(said)?.name).toBe(name);
  });

  it('is taken in degrees, with the clock of the nearest town', () => {
    expect(readPlace('53.3, -7.3')).toMatchObject({
      latitude: 53.3,
      longitude: -7.3,
      timeZone: 'Europe/Dublin',
    });
    expect(readPlace('33.9 S 151.2 E')).toMatchObject({
      latitude: -33.9,
      timeZone: 'Australia/Sydney',
    });
  });

  it('is not made up', () => {
    expect(readPlace('Atlantis')).toBeNull();
    expect(readPlace('95, 10')).toBeNull();
    expect(readPlace('')).toBeNull();
  });
});
