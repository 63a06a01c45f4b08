import { firstOutside, holds, type Outcome, type ValidRange } from '../outcome.ts';
import type { Litre } from '../units/amount.ts';
import { type MilligramPerL, milligramPerL } from '../units/concentration.ts';

/** A tank of still water with roots in it. */
export interface RootedTank {
  readonly waterL: Litre;
  readonly startMgPerL: MilligramPerL;
  readonly saturationMgPerL: MilligramPerL;
  /** What all roots together use, mg of oxygen an hour. */
  readonly rootsMgPerHour: number;
  /** kLa: share of the deficit that the surface or an air stone makes good, 1/h; 0 for none. */
  readonly exchangePerHour: number;
}

/** Hours until a limit is reached, or that it never is because the surface gives enough. */
export type TimeToLimit =
  | { readonly kind: 'reached'; readonly hours: number }
  | { readonly kind: 'never' };

const water: ValidRange = { quantity: 'water', unit: 'L', from: 0.1, to: 1e6 };
const oxygen: ValidRange = { quantity: 'dissolved oxygen', unit: 'mg/L', from: 0, to: 40 };
const roots: ValidRange = { quantity: 'oxygen use of roots', unit: 'mg/h', from: 0, to: 1e7 };
const exchange: ValidRange = { quantity: 'gas exchange', unit: '1/h', from: 0, to: 100 };

const outsideTank = (tank: RootedTank) =>
  firstOutside(
    [tank.waterL, water],
    [tank.startMgPerL, oxygen],
    [tank.saturationMgPerL, oxygen],
    [tank.rootsMgPerHour, roots],
    [tank.exchangePerHour, exchange],
  );

/** Where the oxygen comes to rest when the surface gives what the roots take; may be below zero. */
const restingMgPerL = (tank: RootedTank): number =>
  tank.saturationMgPerL - tank.rootsMgPerHour / (tank.waterL * tank.exchangePerHour);

/**
 * Oxygen in a rooted tank after some hours.
 *
 *     V dC/dt = kLa V (C* − C) − q m      C in mg/L, V in L, q m in mg/h, kLa in 1/h
 *
 * Solved with a constant use; never below zero.
 * Source: oxygen balance of a mixed vessel (two-film theory, Lewis and Whitman 1924).
 * @example oxygenAfterMgPerL({ waterL: litre(20), startMgPerL: milligramPerL(8),
 *   saturationMgPerL: milligramPerL(9), rootsMgPerHour: 10, exchangePerHour: 0 }, 10) // 3
 */
export function oxygenAfterMgPerL(tank: RootedTank, hours: number): Outcome<MilligramPerL> {
  const outside =
    outsideTank(tank) ??
    firstOutside([hours, { quantity: 'time', unit: 'h', from: 0, to: Number.MAX_VALUE }]);
  if (outside) return outside;
  if (tank.exchangePerHour === 0) {
    return holds(
      milligramPerL(Math.max(0, tank.startMgPerL - (tank.rootsMgPerHour / tank.waterL) * hours)),
    );
  }
  const resting = restingMgPerL(tank);
  const left = (tank.startMgPerL - resting) * Math.exp(-tank.exchangePerHour * hours);
  return holds(milligramPerL(Math.max(0, resting + left)));
}

/**
 * Hours until the oxygen in a rooted tank has fallen to a limit; 0 when it is there already.
 *
 *     without exchange   h = (C₀ − Climit) V / (q m)
 *     with exchange      h = −ln[(Climit − Cr)/(C₀ − Cr)] / kLa,   Cr = C* − q m/(kLa V)
 *
 * @example hoursToOxygenLimit({ waterL: litre(20), startMgPerL: milligramPerL(8),
 *   saturationMgPerL: milligramPerL(9), rootsMgPerHour: 10, exchangePerHour: 0 }, milligramPerL(3))
 *   // { kind: 'reached', hours: 10 }
 */
export function hoursToOxygenLimit(
  tank: RootedTank,
  limitMgPerL: MilligramPerL,
): Outcome<TimeToLimit> {
  const outside = outsideTank(tank) ?? firstOutside([limitMgPerL, oxygen]);
  if (outside) return outside;
  if (tank.startMgPerL <= limitMgPerL) return holds({ kind: 'reached', hours: 0 });
  if (tank.rootsMgPerHour === 0 && tank.exchangePerHour === 0) return holds({ kind: 'never' });
  if (tank.exchangePerHour === 0) {
    const spareMg = (tank.startMgPerL - limitMgPerL) * tank.waterL;
    return holds({ kind: 'reached', hours: spareMg / tank.rootsMgPerHour });
  }
  const resting = restingMgPerL(tank);
  if (resting >= limitMgPerL) return holds({ kind: 'never' });
  const hours =
    Math.log((tank.startMgPerL - resting) / (limitMgPerL - resting)) / tank.exchangePerHour;
  return holds({ kind: 'reached', hours });
}
