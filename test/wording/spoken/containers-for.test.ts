import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { containersFor, halfText } from '../../../src/wording/spoken/containers-for.ts';

const can = { name: 'can', litres: 10 };
const jug = { name: 'jug', litres: 2 };

function counted(litres: number, rounding: 'nearest' | 'down' = 'nearest'): string | null {
  const told = containersFor(litres, [jug, can], rounding);
  return told && `${halfText(told.count)} ${told.container.name}`;
}

describe('a volume in containers', () => {
  it('is counted to the half in the largest that it fills', () => {
    expect(counted(43)).toBe('4½ can');
    expect(counted(60)).toBe('6 can');
    expect(counted(10)).toBe('1 can');
    expect(counted(3)).toBe('1½ jug');
  });

  it('is counted in the smaller one where the larger does not come out even', () => {
    expect(counted(12.5)).toBe('6½ jug');
  });

  it('is not counted where no container is small enough, or the count is beyond carrying', () => {
    expect(counted(1)).toBeNull();
    expect(counted(900)).toBeNull();
    expect(containersFor(43, [], 'nearest')).toBeNull();
  });

  it('is never rounded up where too much does harm', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (litres) => {
        const told = containersFor(litres, [jug, can], 'down');
        if (told) expect(told.count * told.container.litres).toBeLessThanOrEqual(litres + 1e-9);
      }),
    );
  });

  it('is told within an eighth of the volume', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 500, noNaN: true }), (litres) => {
        const told = containersFor(litres, [jug, can], 'nearest');
        if (!told) return;
        expect(told.count).toBeGreaterThanOrEqual(1);
        expect(Math.abs(told.count * told.container.litres - litres)).toBeLessThan(litres / 8);
      }),
    );
  });
});
