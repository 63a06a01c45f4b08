import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/greenhouse/entry.ts';
import type { LocalDate } from '../../../src/greenhouse/local-time.ts';
import { systemIdAt } from '../../../src/greenhouse/system.ts';
import type { WeatherDay } from '../../../src/greenhouse/weather.ts';
import { entry, look, newPlace, type Subject, startMs, write } from './storage-under-test.ts';

const optional: fc.Arbitrary<Partial<Entry>> = fc.record(
  {
    approximate: fc.boolean(),
    product: fc.string({ unit: 'binary' }),
    askedL: fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 }),
    saidAs: fc.constantFrom({ kind: 'depth', cm: 12 }, { kind: 'share', share: 0.5 }),
    probe: fc.string(),
    read: fc.double({ noNaN: true, noDefaultInfinity: true, min: 0 }),
    of: fc.constantFrom('power', 'pump', 'air-pump'),
    duty: fc.constantFrom('top-up', 'chore'),
    chore: fc.string(),
    note: fc.string({ unit: 'binary', maxLength: 200 }),
    system: fc.constantFrom(systemIdAt(1), systemIdAt(2)),
    // PostgreSQL is sent the text of a number, and JavaScript writes negative zero as 0.
    value: fc
      .double({ noNaN: true, noDefaultInfinity: true })
      .map((value) => (value === 0 ? 0 : value)),
    source: fc.constantFrom({ kind: 'sensor', messageId: 'x' }),
  },
  { requiredKeys: [] },
);

export function logbookSuite(subject: Subject): void {
  const changes = (place: Awaited<ReturnType<typeof newPlace>>, since: number) =>
    look(place.store, place.greenhouse, (ledger) => ledger.changesSince(since));

  describe('the logbook', () => {
    it('gives every entry back as it was written', async () => {
      const place = await newPlace(subject);
      const written: Entry[] = [];
      await fc.assert(
        fc.asyncProperty(fc.array(optional, { maxLength: 4 }), async (drafts) => {
          const entries = drafts.map((draft, i) => entry(written.length + i + 1, draft));
          await write(place.store, place.greenhouse, { entries });
          written.push(...entries);
        }),
        { numRuns: 30 },
      );
      expect((await changes(place, -1)).entries).toEqual(written);
    });

    it('tells what is new since a revision, each handling being one', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      await write(store, greenhouse, { entries: [entry(1), entry(2)] });
      await write(store, greenhouse, {});
      await write(store, greenhouse, { entries: [entry(3)] });
      const since = async (revision: number) =>
        (await changes(place, revision)).entries.map(({ no }) => no);
      expect(await since(0)).toEqual([1, 2, 3]);
      expect(await since(1)).toEqual([3]);
      expect(await since(2)).toEqual([3]);
      expect(await since(3)).toEqual([]);
    });

    it('keeps the first strike of an entry, beside it', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      const strike = { entry: entry(1).no, byHandle: 'ines', atMs: startMs + 7 };
      await write(store, greenhouse, { entries: [entry(1), entry(2)] });
      await write(store, greenhouse, { strikes: [strike] });
      await write(store, greenhouse, {
        strikes: [{ ...strike, byHandle: 'olli', atMs: startMs + 9 }],
      });
      expect((await changes(place, -1)).entries).toEqual([
        entry(1, { struck: { byHandle: 'ines', atMs: startMs + 7 } }),
        entry(2),
      ]);
      expect(await changes(place, 1)).toMatchObject({ entries: [], strikes: [strike] });
      expect((await changes(place, 2)).strikes).toEqual([]);
    });

    it('takes an entry that is struck already, and one struck as it is written', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      const struck = { byHandle: 'ines', atMs: startMs };
      await write(store, greenhouse, {
        entries: [entry(1, { struck }), entry(2)],
        strikes: [{ entry: entry(2).no, byHandle: 'ines', atMs: startMs }],
      });
      expect((await changes(place, -1)).entries).toEqual([
        entry(1, { struck }),
        entry(2, { struck }),
      ]);
    });

    it('refuses to change or erase an entry or a strike', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      const strikes = [{ entry: entry(1).no, byHandle: 'ines', atMs: startMs }];
      await write(store, greenhouse, { entries: [entry(1)], strikes });
      for (const table of ['entries', 'strikes']) {
        for (const statement of [
          `update ${table} set at_ms = 0 where greenhouse = ${greenhouse}`,
          `delete from ${table} where greenhouse = ${greenhouse}`,
          `truncate ${table} cascade`,
        ]) {
          await expect(subject().run(statement), statement).rejects.toThrow('append-only');
        }
      }
      expect((await changes(place, -1)).entries).toHaveLength(1);
    });

    it('refuses a strike of an entry that does not exist, and a number used before', async () => {
      const { store, greenhouse } = await newPlace(subject);
      const strikes = [{ entry: entry(5).no, byHandle: 'ines', atMs: startMs }];
      await expect(write(store, greenhouse, { strikes })).rejects.toThrow();
      await write(store, greenhouse, { entries: [entry(1)] });
      await expect(write(store, greenhouse, { entries: [entry(1)] })).rejects.toThrow();
    });

    it('takes thousands at once', async () => {
      const place = await newPlace(subject);
      const entries = Array.from({ length: 9000 }, (_, i) => entry(i + 1));
      await write(place.store, place.greenhouse, { entries });
      const read = (await changes(place, -1)).entries;
      expect(read).toHaveLength(9000);
      expect(read.at(-1)).toEqual(entry(9000));
    });

    it('knows each morning once, with what it asked for', async () => {
      const place = await newPlace(subject);
      const morning = {
        date: '2027-05-04' as LocalDate,
        sentAtMs: startMs,
        duties: [
          { kind: 'top-up' as const, system: systemIdAt(1), dueOn: '2027-05-04' as LocalDate },
        ],
        outgoing: [],
      };
      await write(place.store, place.greenhouse, { morning });
      await expect(write(place.store, place.greenhouse, { morning })).rejects.toThrow();
      expect((await changes(place, 0)).mornings).toEqual([morning]);
      expect((await changes(place, 1)).mornings).toEqual([]);
    });
  });

  describe('the weather', () => {
    const day = (date: string, more: Partial<WeatherDay> = {}): WeatherDay => ({
      date: date as LocalDate,
      tMinC: 8,
      tMaxC: 17,
      observed: false,
      toldOn: '2027-05-04' as LocalDate,
      ...more,
    });

    it('is as last told, but an observation stands before any forecast', async () => {
      const place = await newPlace(subject);
      const { store, greenhouse } = place;
      const seen = { observed: true, tMaxC: 20, windMs: 0, rhMeanPercent: 70, solarMjM2: 18.5 };
      await write(store, greenhouse, {
        weather: [day('2027-05-04'), day('2027-05-05'), day('2027-05-04', { tMaxC: 18 })],
      });
      await write(store, greenhouse, { weather: [day('2027-05-04', seen), day('2027-05-04')] });
      await write(store, greenhouse, {
        weather: [day('2027-05-04', { tMaxC: 1 }), day('2027-05-05', { tMaxC: 2 })],
      });
      expect((await changes(place, -1)).weather).toEqual([
        day('2027-05-04', seen),
        day('2027-05-05', { tMaxC: 2 }),
      ]);
      expect((await changes(place, 2)).weather).toEqual([day('2027-05-05', { tMaxC: 2 })]);
    });
  });
}
