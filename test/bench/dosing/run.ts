/**
 * Brings a simulated reservoir from pH 5.2 and from 7.4 into range by telling the bot what the pen
 * shows and doing what its words say, and prints how often that takes at most four rounds without
 * going out at the other end. Status 1 where it is fewer than wanted.
 */
import { readFileSync } from 'node:fs';
import { parseGreenhouseText } from '../../../src/greenhouse/file/parse-greenhouse-text.ts';
import { dosingCase } from './dosing-case.ts';
import { followed } from './follow.ts';

const CASES = 100;
const WANTED = 95;

const read = parseGreenhouseText(
  readFileSync(new URL('../../../greenhouses/quarry-lane.json', import.meta.url), 'utf8'),
);
if (!read.ok) throw new Error('the demo greenhouse does not read');

let good = 0;
let rounds = 0;
const groups = new Map<string, { good: number; all: number }>();
for (let index = 0; index < CASES; index += 1) {
  const dosing = dosingCase(read.greenhouse, index);
  const course = followed(dosing);
  const isGood = course.isInRange && !course.isOvershot;
  if (isGood) {
    good += 1;
    rounds += course.doses.length;
  } else {
    const told = course.doses.map(({ product, mL }) => `${mL} ${product}`).join(', ');
    const phs = course.phs.map((ph) => ph.toFixed(2)).join(' ');
    console.log(`case ${index} (${dosing.name}): pH ${phs}; ${told}`);
    if (course.doses.length === 0) console.log(course.last);
  }
  const group = dosing.name.split(' ').slice(0, 2).join(' ');
  const sums = groups.get(group) ?? { good: 0, all: 0 };
  groups.set(group, { good: sums.good + (isGood ? 1 : 0), all: sums.all + 1 });
}
for (const [group, sums] of groups) console.log(`from ${group} water: ${sums.good} of ${sums.all}`);
console.log(
  `dosing: ${good} of ${CASES} brought into range in at most four rounds without overshoot ` +
    `(wanted ${WANTED}), ${(rounds / Math.max(1, good)).toFixed(1)} rounds on average`,
);
process.exitCode = good >= WANTED ? 0 : 1;
