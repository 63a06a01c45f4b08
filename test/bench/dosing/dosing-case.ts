import type { Greenhouse, StockItem } from '../../../src/greenhouse/greenhouse.ts';
import { type Dice, diceOf } from '../season/dice.ts';
import { carbonUnderAirMmolPerL, Reservoir } from './reservoir.ts';

/** One case: a greenhouse as the bot knows it, and what is really in the tank and the bottle. */
export interface DosingCase {
  readonly name: string;
  readonly greenhouse: Greenhouse;
  readonly systemIndex: number;
  readonly reservoir: Reservoir;
  readonly toldLitres: number;
  readonly ecMsPerCm: number;
  readonly waterC: number;
  /** meq/mL that is really in each bottle. */
  readonly trueMeqPerMl: { readonly down: number; readonly up: number };
  /** What the pen shows for a true pH. */
  readonly shown: (ph: number) => number;
}

const PEN_SD = 0.03;
const PEN_OFFSET_SD = 0.03;

/** Half start at 5.2, half at 7.4; half with soft and half with hard water; all else by the dice. */
export function dosingCase(base: Greenhouse, index: number): DosingCase {
  const dice = diceOf(`dosing ${index}`);
  const startPh = index % 2 === 0 ? 5.2 : 7.4;
  const isHard = Math.floor(index / 2) % 2 === 1;
  const alkalinityMeqL = isHard ? dice.between(2, 5) : dice.between(0.05, 0.5);
  const systemIndex = Math.floor(dice.uniform() * base.systems.length);
  const system = base.systems[systemIndex]!;
  const litres = dice.between(system.lowL + 0.3 * (system.brimL - system.lowL), system.brimL);
  const waterC = dice.between(16, 26);
  const ecMsPerCm = (system.ecMsPerCm[0] + system.ecMsPerCm[1]) / 2;
  const isLabelled = dice.uniform() < 0.5;
  const trueMeqPerMl = { down: strength(dice), up: strength(dice) };
  return {
    name: `${startPh} ${isHard ? 'hard' : 'soft'} ${system.name}${isLabelled ? ', labelled' : ''}`,
    greenhouse: {
      ...base,
      water: { ...base.water, alkalinityMeqL },
      stock: base.stock.map((item) => stocked(item, trueMeqPerMl, isLabelled, dice)),
    },
    systemIndex,
    reservoir: new Reservoir({
      litres,
      waterC,
      startPh,
      carbonMmolPerL: carbon(startPh, alkalinityMeqL, waterC, dice),
      phosphateMmolPerL: ecMsPerCm * dice.between(0.25, 0.65),
      exchangePerHour: dice.between(0.02, 0.4),
      mixingMin: dice.between(3, 8),
    }),
    toldLitres: litres * (1 + 0.03 * dice.normal()),
    ecMsPerCm,
    waterC,
    trueMeqPerMl,
    shown: pen(dice),
  };
}

/** From thin home bottles to trade concentrates. */
function strength(dice: Dice): number {
  return Math.min(12, Math.max(0.8, 3 * Math.exp(0.8 * dice.normal())));
}

function stocked(
  item: StockItem,
  trueMeqPerMl: DosingCase['trueMeqPerMl'],
  isLabelled: boolean,
  dice: Dice,
): StockItem {
  const plenty = { ...item, mL: 20_000 };
  const held = { 'ph-down': trueMeqPerMl.down, 'ph-up': trueMeqPerMl.up }[item.product];
  if (held === undefined || !isLabelled) return plenty;
  return { ...plenty, meqPerMl: held * (1 + 0.05 * dice.normal()) };
}

/** Hard water that was soured still holds some of its carbonate; soft water what the air and roots give. */
function carbon(startPh: number, alkalinityMeqL: number, waterC: number, dice: Dice): number {
  const underAir = carbonUnderAirMmolPerL(startPh, waterC);
  const ofWater =
    alkalinityMeqL * (startPh > 6.5 ? dice.between(0.7, 1.2) : dice.between(0.1, 0.9));
  return Math.max(underAir * dice.between(1, 4), ofWater);
}

function pen(dice: Dice): (ph: number) => number {
  const offset = PEN_OFFSET_SD * dice.normal();
  const decimals = dice.uniform() < 0.5 ? 1 : 2;
  return (ph) => Number((ph + offset + PEN_SD * dice.normal()).toFixed(decimals));
}
