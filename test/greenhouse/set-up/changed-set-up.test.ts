import { describe, expect, it } from 'vitest';
import { changedSetUp, nextSystemId } from '../../../src/greenhouse/set-up/changed-set-up.ts';
import type { SetUpChange } from '../../../src/greenhouse/set-up/set-up-change.ts';
import { patchBetween, withoutPatch } from '../../../src/greenhouse/set-up/set-up-patch.ts';
import {
  bench,
  buckets,
  date,
  gutters,
  jars,
  quarryLane,
  today,
} from '../../wording/quarry-lane.ts';

const nothingUsed = () => 0;

const changes: readonly SetUpChange[] = [
  { kind: 'chore-added', chore: { name: 'wash', system: null, everyDays: 9, lastDoneOn: null } },
  { kind: 'chore-moved', name: 'tie up the tomatoes', everyDays: 4 },
  { kind: 'chore-dropped', name: 'tie up the tomatoes' },
  { kind: 'system-renamed', system: jars, name: 'Window shelf' },
  { kind: 'system-dropped', system: jars },
  { kind: 'figure-set', system: bench, figure: 'brimL', value: 620 },
  { kind: 'range-set', system: bench, quantity: 'water-temperature', range: [15, 25] },
  { kind: 'alias-added', system: jars, alias: 'glasses' },
  { kind: 'alias-dropped', system: jars, alias: 'kratky' },
  { kind: 'planted', system: jars, crop: 'basil', plants: 6, on: today },
  { kind: 'cleared', system: jars, on: today },
  { kind: 'language-set', handle: 'olli', language: 'de' },
  { kind: 'container-set', name: 'jug', litres: 3 },
  { kind: 'container-dropped', name: 'jug' },
  { kind: 'stock-added', product: 'ph-down', mL: 500 },
  { kind: 'stock-counted', product: 'cal-mag', mL: 500 },
];

describe('A changed set-up', () => {
  it.each(changes)('with $kind is taken back by its patch', (change) => {
    const changed = changedSetUp(quarryLane, change, nothingUsed);
    if (!changed.ok) throw new Error(`refused: ${changed.because.kind}`);
    const { greenhouse } = changed;
    expect(greenhouse).not.toEqual(quarryLane);
    expect(withoutPatch(greenhouse, patchBetween(quarryLane, greenhouse))).toEqual(quarryLane);
  });

  it('keeps what was changed elsewhere when a patch is taken back, and gives up where the same part was', () => {
    const [add, , , , , brim] = changes;
    const added = changedSetUp(quarryLane, add!, nothingUsed);
    if (!added.ok) throw new Error('refused');
    const patch = patchBetween(quarryLane, added.greenhouse);
    const both = changedSetUp(added.greenhouse, brim!, nothingUsed);
    if (!both.ok) throw new Error('refused');
    expect(withoutPatch(both.greenhouse, patch)?.systems).toEqual(both.greenhouse.systems);
    expect(withoutPatch(both.greenhouse, patch)?.chores).toEqual(quarryLane.chores);
    const dropped = changedSetUp(
      both.greenhouse,
      { kind: 'chore-dropped', name: 'wash' },
      nothingUsed,
    );
    if (!dropped.ok) throw new Error('refused');
    expect(withoutPatch(dropped.greenhouse, patch)).toBeNull();
  });

  it('hides a dropped system and never gives its id away', () => {
    const dropped = changedSetUp(quarryLane, { kind: 'system-dropped', system: jars }, nothingUsed);
    if (!dropped.ok) throw new Error('refused');
    expect(dropped.greenhouse.systems.map(({ id }) => id)).toEqual([bench, buckets, gutters]);
    expect(dropped.greenhouse.formerSystems?.map(({ id }) => id)).toEqual([jars]);
    expect(nextSystemId(dropped.greenhouse)).toBe('s5');
  });

  it('remembers what grew before', () => {
    const planted = changedSetUp(
      quarryLane,
      { kind: 'planted', system: jars, crop: 'basil', plants: 6, on: date('2027-05-04') },
      nothingUsed,
    );
    if (!planted.ok) throw new Error('refused');
    expect(planted.greenhouse.systems[3]).toMatchObject({
      crop: 'basil',
      plants: 6,
      plantedOn: '2027-05-04',
      grown: [{ crop: 'lettuce', plants: 12, from: null, to: '2027-05-04' }],
    });
  });

  it('counts a bottle on from what is left, whatever was used before', () => {
    const mlOf = (kind: 'stock-added' | 'stock-counted', used: number) => {
      const changed = changedSetUp(quarryLane, { kind, product: 'ph-down', mL: 1000 }, () => used);
      if (!changed.ok) throw new Error('refused');
      return changed.greenhouse.stock[2]!.mL - used;
    };
    // Of 850 mL, 250 were used: 600 are left.
    expect(mlOf('stock-added', 250)).toBe(1600);
    expect(mlOf('stock-counted', 250)).toBe(1000);
    // More was logged than there was: what is bought is all there is.
    expect(mlOf('stock-added', 900)).toBe(1000);
  });

  it.each([
    [{ kind: 'chore-dropped', name: 'nothing' }, 'no-such-chore'],
    [
      {
        kind: 'chore-added',
        chore: { name: 'Tie up the tomatoes', system: null, everyDays: 3, lastDoneOn: null },
      },
      'chore-there',
    ],
    [{ kind: 'system-renamed', system: jars, name: 'DWC' }, 'name-taken'],
    [{ kind: 'alias-added', system: jars, alias: 'bench' }, 'name-taken'],
    [{ kind: 'figure-set', system: bench, figure: 'lowL', value: 600 }, 'low-above-brim'],
    [{ kind: 'figure-set', system: bench, figure: 'brimL', value: 150 }, 'low-above-brim'],
    [{ kind: 'figure-set', system: bench, figure: 'plants', value: 20 }, 'same-already'],
    [{ kind: 'system-dropped', system: bench }, 'has-chores'],
    [{ kind: 'container-dropped', name: 'bath' }, 'no-such-container'],
    [{ kind: 'range-set', system: bench, quantity: 'ph', range: [6.4, 5.8] }, 'out-of-bounds'],
    [{ kind: 'container-set', name: 'can', litres: 0 }, 'out-of-bounds'],
  ] as const)('is refused where it cannot be: %o', (change, because) => {
    expect(changedSetUp(quarryLane, change as SetUpChange, nothingUsed)).toMatchObject({
      ok: false,
      because: { kind: because },
    });
  });
});
