import { describe, expect, it } from 'vitest';
import { firstOutside, holds, type ValidRange } from '../../src/science/outcome.ts';

const warmth: ValidRange = { quantity: 'warmth', unit: '°C', from: 0, to: 40 };
const salt: ValidRange = { quantity: 'salt', unit: 'g/kg', from: 0, to: 10 };

describe('the range of a formula', () => {
  it('includes its ends', () => {
    expect(firstOutside([0, warmth], [40, warmth])).toBeUndefined();
  });

  it('excludes what is beyond, and names the first that is', () => {
    expect(firstOutside([20, warmth], [11, salt], [50, warmth])).toEqual({
      ok: false,
      outside: { quantity: 'salt', unit: 'g/kg', from: 0, to: 10, found: 11 },
    });
  });

  it('excludes what is not a number and what is endless', () => {
    expect(firstOutside([Number.NaN, warmth])?.outside.found).toBeNaN();
    expect(firstOutside([Infinity, warmth])?.ok).toBe(false);
  });

  it('leaves a value as it is', () => {
    expect(holds(3)).toEqual({ ok: true, value: 3 });
  });
});
