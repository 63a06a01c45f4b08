import type { WorkStep } from '../../../planning/work-step.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { partNames, productName, quantityNames } from '../names.ts';
import { rangeText } from '../value-text.ts';

/** `12 ml pH-Minus zugeben, dann umrühren, …`: the steps in one sentence. */
export function stepsText(steps: readonly WorkStep[], s: Speaker): string {
  return `${s.capital(steps.map((step) => stepText(step, s)).join(', dann '))}.`;
}

export function stepText(step: WorkStep, s: Speaker): string {
  switch (step.kind) {
    case 'measure-first':
      return `noch einmal ${quantityNames[step.quantity]} messen und mir sagen, wenn es anders ist`;
    case 'thin-first':
      return `1 ml ${productName(step.product)} in ${step.waterMl} ml Wasser rühren und davon ${dose(step.addMl, s)} zugeben`;
    case 'add':
      return `${dose(step.mL, s)} ${productName(step.product)} zugeben`;
    case 'add-one-by-one':
      return `${step.amounts
        .map(({ product, mL }) => `${dose(mL, s)} ${productName(product)}`)
        .join(', umrühren, und erst danach ')} zugeben`;
    case 'stir':
      return 'umrühren';
    case 'flood-once':
      return 'einmal fluten, damit es sich mischt';
    case 'wait':
      return `${step.fromMin} bis ${step.toMin} Minuten warten`;
    case 'measure-again':
      return `${s.and(step.quantities.map((quantity) => quantityNames[quantity]))} neu messen`;
    case 'then-the-rest':
      return 'mir sagen, und ich nenne, was noch fehlt';
    case 'unplug':
      return 'Pumpen und Heizer ausstecken';
    case 'empty':
      return 'leeren';
    case 'old-solution':
      return 'die alte Lösung auf Beet oder Rasen geben, wo das erlaubt ist';
    case 'rinse':
      return 'ausspülen';
    case 'fill-with-water':
      return `etwa ${s.amount(roughVolume(step.litres, s.units.volume))} Wasser einfüllen`;
    case 'set-ph':
      return `den pH auf ${rangeText('ph', step.lowest, step.highest, s)} bringen, mit dem, was ich dann nenne`;
    case 'clean-part':
      return step.part === 'pump-filter'
        ? 'Filter und Pumpeneinlauf spülen, bis das Wasser frei läuft'
        : `${partNames[step.part]} reinigen oder ersetzen`;
  }
}

function dose(mL: number, s: Speaker): string {
  return s.amount(measureOf('dose', mL, s.units));
}
