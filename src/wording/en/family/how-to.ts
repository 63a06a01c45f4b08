import type { Dont, HowStep, HowTo } from '../../../planning/family/how-to.ts';
import { depth } from '../../spoken/depth.ts';
import { exampleTopUpL, middleOf } from '../../spoken/examples.ts';
import { fillingTo } from '../../spoken/filling-to.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { cautionText } from '../advice/caution-text.ts';
import { stepText } from '../advice/step-text.ts';
import { dutyName } from '../duty-text.ts';
import { dutyNames, quantityNames } from '../names.ts';
import { valueText } from '../value-text.ts';
import { waterText } from './away-plan.ts';

const donts: Readonly<Record<Dont, string>> = {
  'no-guessing-products': 'add any product that I did not name, or more of it than I said',
  'no-over-brim': 'fill over the brim; stop if you are unsure and tell me the level',
  'no-drowned-air-roots': 'fill back to the first mark: the roots in the air need that air',
  'no-pumps-off': 'leave a pump switched off',
  'no-acids-untaught': 'touch pH up or pH down: that is for somebody who was shown how',
  'no-one-probe-for-all': 'go from one system to the next without rinsing the probe in clean water',
};

/** A duty in numbered steps, for somebody who has never done it. */
export function howToText(how: HowTo, s: Speaker): string {
  const { duty, steps, tips } = how;
  const title = s.capital(dutyName(duty, s));
  return [
    `${title}:`,
    ...tips.filter(({ text }) => text !== '').map(({ text }) => `Note: ${text}`),
    ...steps
      .flatMap((step) => oneByOne(step))
      .map((step) => stepLine(step, how, s))
      .filter((line) => line !== '')
      .map((line, place) => `${place + 1}. ${line}`),
    how.donts.map((each) => `Do not ${donts[each]}.`).join(' '),
    ...(how.cautions ? [cautionText(how.cautions)] : []),
  ].join('\n');
}

/** Each piece of work is a step of its own: long ones are lost on a phone. */
function oneByOne(step: HowStep): readonly HowStep[] {
  if (step.kind !== 'work' && step.kind !== 'mix') return [step];
  return step.work.map((work) => ({ ...step, work: [work] }));
}

function stepLine(step: HowStep, how: HowTo, s: Speaker): string {
  const { system, duty, line } = how;
  const place = system?.name ?? s.greenhouse.name;
  switch (step.kind) {
    case 'fetch-water':
      return `Fetch water from the ${s.greenhouse.water.name}${step.litres ? `: about ${waterText(step.litres, s)}` : ''}. Carry half-full cans rather than one full one.`;
    case 'mix':
    case 'work':
      return `${s.capital(step.work.map((work) => stepText(work, s)).join(', then '))}.`;
    case 'pour': {
      if (!system) return '';
      const filling = fillingTo(system, step.toL ?? system.brimL);
      const to =
        filling.kind === 'level'
          ? `${s.amount(depth(filling.belowBrimCm, s.units.volume))} below the brim`
          : 'just under the brim';
      return `Pour it in slowly, up to ${to}. Stop there even if water is left.`;
    }
    case 'read-level':
      return 'See where the water stands now: with a ruler from the brim down in cm, or as a share of full, like “half”.';
    case 'dip-probe': {
      const names = step.quantities.map((quantity) => quantityNames[quantity]);
      const probes = step.probes.length > 0 ? ` with the ${s.and(step.probes)}` : '';
      return `Measure ${s.and(names)}${probes}: dip it into ${place}, stir gently, wait until the figure stands still for some ten seconds.`;
    }
    case 'rinse-probe':
      return 'Rinse the probe in clean water and put its cap back on; a pH probe must never dry out.';
    case 'buffers':
      if (!step.isPh) {
        return `Dip the ${step.probe} into fresh EC standard, the one whose value is nearest to your solution, wait until the figure stands still, and tell me both values before you adjust anything. Throw the used standard away.`;
      }
      return `Dip the ${step.probe} into fresh pH 7 buffer, read it, rinse, then into pH 4, and tell me both readings before you adjust anything. Throw the used buffer away.`;
    case 'set-air':
      return step.minutesPerHour === null
        ? `Look that the air of ${place} bubbles.`
        : `Set the timer of ${place} to ${s.amount(measureOf('aeration', step.minutesPerHour, s.units))} and look that it bubbles.`;
    case 'wait-for-figures':
      return line
        ? `Wait for my figure for ${place}.`
        : `There is no ${dutyNames[duty.kind]} to give now. Measure first and tell me; I then say how much, or that the grower does it.`;
    case 'answer':
      return `Then answer for example: “${answerExample(step, how, s)}”.`;
  }
}

function answerExample(
  { duty, litres }: Extract<HowStep, { kind: 'answer' }>,
  how: HowTo,
  s: Speaker,
): string {
  const { system } = how;
  const place = system?.name ?? s.greenhouse.name;
  switch (duty) {
    case 'top-up': {
      const amount = litres && litres > 0 ? litres : exampleTopUpL[s.units.volume];
      return `topped up ${place} ${s.amount(measureOf('top-up', amount, s.units))}`;
    }
    case 'check':
      if (!system) return place;
      return `${place} ${valueText('ph', middleOf(system.ph, 1), s)} ${valueText('ec', middleOf(system.ecMsPerCm, 1), s)}`;
    case 'reservoir-change':
      return `changed ${place}, ${s.amount(measureOf('reservoir-change', system?.brimL ?? 0, s.units))}`;
    case 'calibration':
      return isPhWork(how) ? '7.00 read 7.05 and 4.01 read 4.10' : '1.41 read 1.38';
    default:
      return `did ${how.duty.chore ?? place}`;
  }
}

function isPhWork({ steps }: HowTo): boolean {
  return steps.some((step) => step.kind === 'buffers' && step.isPh);
}
