import {
  alkalinityOfCarbonEqPerL,
  alkalinityUnderAirEqPerL,
} from '../../../src/science/ph/carbonate-alkalinity.ts';
import {
  type CarbonateConstants,
  carbonateConstants,
} from '../../../src/science/ph/carbonate-constants.ts';
import { protonYieldEqPerMol } from '../../../src/science/ph/proton-yield.ts';
import { PHOSPHORIC_ACID } from '../../../src/science/ph/reagents.ts';
import { celsius } from '../../../src/science/units/temperature.ts';

/** What a reservoir is made of; nobody but the bench sees it. */
export interface ReservoirMake {
  readonly litres: number;
  readonly waterC: number;
  readonly startPh: number;
  /** Carbonate in it, mmol/L. */
  readonly carbonMmolPerL: number;
  readonly phosphateMmolPerL: number;
  /** How fast carbon dioxide comes and goes, 1/h. */
  readonly exchangePerHour: number;
  /** Minutes in which two thirds of a dose have spread. */
  readonly mixingMin: number;
}

const AIR_CARBON_DIOXIDE_ATM = 420e-6;
const STEP_MIN = 1;

/** A tank of nutrient solution: carbonate open to the air, phosphate, and doses that spread by and by. */
export class Reservoir {
  readonly #make: ReservoirMake;
  readonly #constants: CarbonateConstants;
  #carbonMolPerL: number;
  /** Acid-binding capacity of carbonate, phosphate and water together, eq/L. */
  #balanceEqPerL: number;
  #unmixedEqPerL = 0;

  constructor(make: ReservoirMake) {
    this.#make = make;
    const constants = carbonateConstants(celsius(make.waterC));
    if (!constants.ok) throw new RangeError(`no carbonate constants at ${make.waterC} °C`);
    this.#constants = constants.value;
    this.#carbonMolPerL = make.carbonMmolPerL / 1000;
    this.#balanceEqPerL = this.#balanceAt(make.startPh);
  }

  /** pH of what has mixed. */
  get ph(): number {
    let [low, high] = [2.5, 11];
    for (let halving = 0; halving < 50; halving += 1) {
      const middle = (low + high) / 2;
      if (this.#balanceAt(middle) < this.#balanceEqPerL) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  }

  /** Alkali in meq; acid is negative. */
  pour(meq: number): void {
    this.#unmixedEqPerL += meq / 1000 / this.#make.litres;
  }

  /** Time goes by: what was poured spreads, carbon dioxide nears what the air holds. */
  wait(minutes: number): void {
    for (let passed = 0; passed < minutes; passed += STEP_MIN) {
      const spread = this.#unmixedEqPerL * (1 - Math.exp(-STEP_MIN / this.#make.mixingMin));
      this.#unmixedEqPerL -= spread;
      this.#balanceEqPerL += spread;
      this.#breathe(STEP_MIN / 60);
    }
  }

  #breathe(hours: number): void {
    const hydrogen = 10 ** -this.ph;
    const { firstMolPerL, secondMolPerL, gasMolPerLAtm } = this.#constants;
    const share =
      hydrogen ** 2 / (hydrogen ** 2 + firstMolPerL * hydrogen + firstMolPerL * secondMolPerL);
    const lack = gasMolPerLAtm * AIR_CARBON_DIOXIDE_ATM - share * this.#carbonMolPerL;
    this.#carbonMolPerL += this.#make.exchangePerHour * hours * lack;
  }

  #balanceAt(ph: number): number {
    const held = Math.min(10, Math.max(3.5, ph));
    const phosphate = protonYieldEqPerMol(PHOSPHORIC_ACID, held);
    return (
      alkalinityOfCarbonEqPerL(this.#carbonMolPerL, ph, this.#constants) +
      (phosphate.ok ? (this.#make.phosphateMmolPerL * phosphate.value) / 1000 : 0)
    );
  }
}

/** Carbonate of water that has stood under air until it is at this pH, mmol/L. */
export function carbonUnderAirMmolPerL(ph: number, waterC: number): number {
  const constants = carbonateConstants(celsius(waterC));
  if (!constants.ok) throw new RangeError(`no carbonate constants at ${waterC} °C`);
  const alkalinity = alkalinityUnderAirEqPerL(AIR_CARBON_DIOXIDE_ATM, ph, constants.value);
  const gas = constants.value.gasMolPerLAtm * AIR_CARBON_DIOXIDE_ATM;
  return 1000 * (Math.max(0, alkalinity) + gas);
}
