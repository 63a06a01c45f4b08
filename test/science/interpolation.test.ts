import { describe, expect, it } from 'vitest';
import { interpolate, spanOf, type Table } from '../../src/science/interpolation.ts';

const table: Table = [
  [0, 10],
  [5, 20],
  [10, 0],
];

describe('a table', () => {
  it('gives its entries where it has them and the straight line in between', () => {
    expect(interpolate(table, 0)).toBe(10);
    expect(interpolate(table, 10)).toBe(0);
    expect(interpolate(table, 2.5)).toBe(15);
    expect(interpolate(table, 7.5)).toBe(10);
  });

  it('knows where it begins and ends, and breaks when asked beyond', () => {
    expect(spanOf(table)).toEqual({ from: 0, to: 10 });
    expect(() => interpolate(table, 10.1)).toThrow(RangeError);
    expect(() => interpolate(table, -1)).toThrow(RangeError);
  });
});
