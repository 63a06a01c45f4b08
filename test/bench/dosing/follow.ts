import type { DosingCase } from './dosing-case.ts';
import { Talk } from './talk.ts';

/** How one case went. */
export interface Course {
  readonly phs: readonly number[];
  readonly doses: readonly { readonly product: 'up' | 'down'; readonly mL: number }[];
  readonly isInRange: boolean;
  readonly isOvershot: boolean;
  /** The bot's last words. */
  readonly last: string;
}

const START_MS = Date.parse('2027-05-04T08:20:00+01:00');
const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const WAIT_MIN = 25;
const MOST_ROUNDS = 4;
/** A pen that is some hundredths off cannot tell more closely where the range ends. */
const TOLERANCE_PH = 0.08;

/** Does what the bot says, round by round, until it asks for no more. */
export function followed(dosing: DosingCase): Course {
  const { greenhouse, reservoir } = dosing;
  const system = greenhouse.systems[dosing.systemIndex]!;
  const talk = new Talk(greenhouse, START_MS - DAY_MS);
  const startPh = reservoir.ph;
  const phs = [startPh];
  const doses: { product: 'up' | 'down'; mL: number }[] = [];
  let nowMs = START_MS;
  const litres = Math.min(system.brimL, dosing.toldLitres).toFixed(1);
  talk.say(`${system.name} level ${litres} l, water ${dosing.waterC.toFixed(1)}C`, nowMs);
  talk.say(`${system.name} ec ${dosing.ecMsPerCm.toFixed(2)} mS`, nowMs);
  let words = talk.say(`${system.name} ph ${dosing.shown(reservoir.ph)}`, nowMs);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const told = /Add ([\d.]+) mL pH (up|down) to /.exec(words);
    if (!told) break;
    const product = told[2] === 'up' ? 'up' : 'down';
    const mL = Number(told[1]);
    doses.push({ product, mL });
    reservoir.pour(mL * (product === 'up' ? 1 : -1) * dosing.trueMeqPerMl[product]);
    nowMs += 2 * MINUTE_MS;
    talk.say(`added ${mL} ml ph ${product} to ${system.name}`, nowMs);
    reservoir.wait(WAIT_MIN);
    nowMs += WAIT_MIN * MINUTE_MS;
    phs.push(reservoir.ph);
    words = talk.say(`${system.name} ph ${dosing.shown(reservoir.ph)}`, nowMs);
  }
  const [lowest, highest] = system.ph;
  const end = phs.at(-1)!;
  return {
    phs,
    doses,
    isInRange: end >= lowest - TOLERANCE_PH && end <= highest + TOLERANCE_PH,
    isOvershot: phs.some((ph) => (startPh < lowest ? ph > highest : ph < lowest)),
    last: words,
  };
}
