import type { WorkStep } from '../../../planning/work-step.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { partNames, productName, quantityNames } from '../names.ts';
import { rangeText } from '../value-text.ts';

/** `Add 12 mL pH down, stir, wait 15 to 30 minutes, …`: the steps in one sentence. */
export function stepsText(steps: readonly WorkStep[], s: Speaker): string {
  return `${s.capital(steps.map((step) => stepText(step, s)).join(', then '))}.`;
}

export function stepText(step: WorkStep, s: Speaker): string {
  switch (step.kind) {
    case 'measure-first':
      return `measure the ${quantityNames[step.quantity]} again and tell me if it has moved`;
    case 'thin-first':
      return `stir 1 mL ${productName(step.product)} into ${step.waterMl} mL of water and add ${dose(step.addMl, s)} of that`;
    case 'add':
      return `add ${dose(step.mL, s)} ${productName(step.product)}`;
    case 'add-one-by-one':
      return step.amounts
        .map(({ product, mL }) => `${dose(mL, s)} ${productName(product)}`)
        .join(', stir, and only then ');
    case 'stir':
      return 'stir';
    case 'flood-once':
      return 'flood once to mix it';
    case 'wait':
      return `wait ${step.fromMin} to ${step.toMin} minutes`;
    case 'measure-again':
      return `measure ${s.and(step.quantities.map((quantity) => quantityNames[quantity]))} again`;
    case 'then-the-rest':
      return 'tell me, and I say what is still missing';
    case 'unplug':
      return 'unplug pumps and heaters';
    case 'empty':
      return 'empty it';
    case 'old-solution':
      return 'put the old solution on beds or lawn where local rules allow it';
    case 'rinse':
      return 'rinse it out';
    case 'fill-with-water':
      return `fill in about ${s.amount(roughVolume(step.litres, s.units.volume))} of water`;
    case 'set-ph':
      return `set the pH to ${rangeText('ph', step.lowest, step.highest, s)} with what I tell you`;
    case 'clean-part':
      return step.part === 'pump-filter'
        ? 'rinse the filter and the pump inlet until water runs free'
        : `clean or change ${partNames[step.part]}`;
  }
}

function dose(mL: number, s: Speaker): string {
  return s.amount(measureOf('dose', mL, s.units));
}
