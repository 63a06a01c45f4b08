import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GreenhouseId } from '../../../src/assistant/ports/store.ts';
import type { LocalDate } from '../../../src/greenhouse/local-time.ts';
import { greenhouses } from '../../greenhouse/greenhouse-arbitrary.ts';
import { demoGreenhouse } from './demo-greenhouse.ts';
import { look, newPlace, type Subject, startMs, write } from './storage-under-test.ts';

export function setUpSuite(subject: Subject): void {
  describe('the set-up', () => {
    it('comes back as it was made, whatever a greenhouse file can hold', async () => {
      const { store } = subject();
      await fc.assert(
        fc.asyncProperty(greenhouses, async (greenhouse) => {
          const id = await store.createGreenhouse(greenhouse, startMs);
          expect(await store.loadGreenhouse(id)).toEqual({ greenhouse, createdAtMs: startMs });
        }),
        { numRuns: 20 },
      );
    });

    it('is listed by name', async () => {
      const { store, greenhouse } = await newPlace(subject);
      expect(await store.greenhouses()).toContainEqual({ id: greenhouse, name: 'Quarry Lane' });
    });

    it('is replaced whole, and told to those who knew the old one', async () => {
      const { store, greenhouse } = await newPlace(subject);
      const { systems, ...rest } = demoGreenhouse;
      const smaller = { ...rest, systems: systems.slice(1), probes: [], chores: [] };
      await write(store, greenhouse, { notices: ['before'] });
      await write(store, greenhouse, { greenhouse: smaller });
      await write(store, greenhouse, { notices: ['after'] });
      expect((await store.loadGreenhouse(greenhouse)).greenhouse).toEqual(smaller);
      const changes = async (since: number) =>
        look(store, greenhouse, async (ledger) => (await ledger.changesSince(since)).greenhouse);
      expect(await changes(1)).toEqual(smaller);
      expect(await changes(2)).toBeNull();
    });

    it('keeps systems that were given up, and what grew in the others', async () => {
      const { store, greenhouse } = await newPlace(subject);
      const [first, ...systems] = demoGreenhouse.systems;
      const grown = [{ crop: 'lettuce', plants: 12, from: null, to: '2027-05-04' as LocalDate }];
      const changed = {
        ...demoGreenhouse,
        systems: systems.map((system) => ({
          ...system,
          plantedOn: '2027-05-04' as LocalDate,
          grown,
        })),
        formerSystems: [first!],
        chores: [],
      };
      await write(store, greenhouse, { greenhouse: changed });
      expect((await store.loadGreenhouse(greenhouse)).greenhouse).toEqual(changed);
    });

    it('says so where there is no such greenhouse', async () => {
      const { store } = subject();
      const nobody = 999_999 as GreenhouseId;
      await expect(store.loadGreenhouse(nobody)).rejects.toThrow('there is no greenhouse 999999');
      await expect(write(store, nobody, {})).rejects.toThrow('there is no greenhouse 999999');
    });
  });
}
