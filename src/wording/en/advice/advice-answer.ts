import type { AdviceAnswer } from '../../../assistant/replies/advice.ts';
import type { ConductivityUnit } from '../../../greenhouse/greenhouse.ts';
import { partsPerMillion } from '../../spoken/conductivity.ts';
import { type MeasureUnit, measure } from '../../spoken/measure.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume, volume } from '../../spoken/volume.ts';
import { dutyText } from '../duty-text.ts';
import { failureNames, productName, quantityNames } from '../names.ts';
import { rangeText, valueText } from '../value-text.ts';
import { workText } from './advice-remark.ts';
import { basisText } from './basis.ts';
import { cautionText } from './caution-text.ts';
import { prospectText } from './hours-text.ts';
import { refusedDoseText } from './refused-dose.ts';

export function adviceAnswer(answer: AdviceAnswer, s: Speaker): string {
  switch (answer.kind) {
    case 'how-much':
      return howMuch(answer, s);
    case 'mix':
      return mixText(answer, s);
    case 'converted':
      return convertedText(answer, s);
    case 'fill-with-pump':
      return answer.systems
        .map(({ system, litres, leastMin, mostMin, usualMin }) => {
          const minutes = `${s.number(measure(leastMin, 'min', 0, 0))} to ${s.amount(measure(mostMin, 'min', 0, 0))}`;
          const now =
            usualMin === null
              ? ''
              : ` It is set down as ${s.amount(measure(usualMin, 'min', 0, 1))} now.`;
          return `${s.system(system).name}: about ${s.amount(roughVolume(litres, s.units.volume))} at ${answer.ratedLPerH} L an hour is ${minutes}, by how high and how far it has to push.${now}`;
        })
        .join('\n');
    case 'without-supply': {
      const fine = answer.unaffected.map((id) => s.system(id).name);
      return [
        ...answer.systems.map((each) => prospectText(each, s)),
        ...(fine.length > 0
          ? [`${s.and(fine)}: nothing is lost by waiting with “${failureNames[answer.of]}”.`]
          : []),
      ].join('\n');
    }
  }
}

function howMuch(answer: Extract<AdviceAnswer, { kind: 'how-much' }>, s: Speaker): string {
  const { wanted, target, lines, leftToGrower, refused, inRange } = answer;
  const told = [
    ...(wanted ? [wantedText(wanted, s)] : []),
    ...(target ? targetText(target, s) : []),
    ...(lines.length > 0 ? [workText(lines, s)] : []),
    ...(leftToGrower.length > 0
      ? [
          `${s.and(leftToGrower.map((line) => dutyText([line], s)))}: that is for the grower. Please wait, and add nothing yourself.`,
        ]
      : []),
    ...refused.map(
      ({ system, because }) => `${s.system(system).name}: ${refusedDoseText(because, s)}`,
    ),
    ...inRange.map(
      ({ system, quantity, value }) =>
        `${s.system(system).name}: ${valueText(quantity, value, s)} is in range, nothing to add.`,
    ),
  ];
  // What forbids both pH and EC is said once.
  return told.length > 0 ? [...new Set(told)].join('\n') : 'There is nothing to add.';
}

/** What somebody would give by a figure of their own. */
function wantedText(
  { product, mL, beyondMl }: NonNullable<Extract<AdviceAnswer, { kind: 'how-much' }>['wanted']>,
  s: Speaker,
): string {
  const amount = `${s.amount(measureOf('dose', mL, s.units))} ${productName(product)}`;
  return beyondMl === null
    ? `Please not by a figure of your own (${amount}), only by mine:`
    : `No: ${amount} is far too much, at most ${s.amount(measureOf('dose', beyondMl, s.units))} may ever go in within a day. Only by my figure:`;
}

function mixText(answer: Extract<AdviceAnswer, { kind: 'mix' }>, s: Speaker): string {
  const { litres, ecMsPerCm, waterEcMsPerCm, concentrates, basis, cautions } = answer;
  const water = s.amount(volume(litres, s.units.volume));
  const target = valueText('ec', ecMsPerCm, s);
  if (concentrates === null) {
    return `I cannot reckon ${target} for ${water}: no concentrates are in stock, or the water is stronger than that already.`;
  }
  const amounts = concentrates.map(
    ({ product, mL }) => `${s.amount(measureOf('dose', mL, s.units))} ${productName(product)}`,
  );
  return `For ${water} at ${target}: ${s.and(amounts)}, from water of ${valueText('ec', waterEcMsPerCm, s)}, ${basisText(basis)}. Start with half, stir, measure, then add the rest. ${cautionText(cautions)}`;
}

const UNITS: Readonly<Record<ConductivityUnit, MeasureUnit>> = {
  'mS/cm': 'mS/cm',
  'uS/cm': 'µS/cm',
  ppm: 'ppm',
  CF: 'CF',
};

function convertedText(answer: Extract<AdviceAnswer, { kind: 'converted' }>, s: Speaker): string {
  const { said, ecMsPerCm, tdsFactor, others } = answer;
  const from = s.amount(measure(said.value, UNITS[said.unit], 0, 2));
  const ec = s.amount(measure(ecMsPerCm, 'mS/cm', 1, 2));
  const micro = s.amount(measure(ecMsPerCm * 1000, 'µS/cm', 0, 0));
  const cf = s.amount(measure(ecMsPerCm * 10, 'CF', 0, 1));
  if (said.unit === 'ppm') {
    const by = others.map(
      ({ factor, ecMsPerCm: ms }) => `${s.amount(measure(ms, 'mS/cm', 1, 2))} on a ${factor} meter`,
    );
    return `${from} is ${quantityNames.ec} ${ec} on your ${tdsFactor} scale (${micro}, ${cf}); ${s.and(by)}.`;
  }
  const ppm = s.amount(partsPerMillion(ecMsPerCm, tdsFactor));
  const by = others.map(
    ({ factor, ppm: shown }) => `${s.amount(measure(shown, 'ppm', 0, 0))} on a ${factor} meter`,
  );
  return `${from} is ${quantityNames.ec} ${ec} (${micro}, ${cf}), and ${ppm} on your ${tdsFactor} scale; ${s.and(by)}.`;
}

/** What was reckoned with, or why no further. */
function targetText(
  target: NonNullable<Extract<AdviceAnswer, { kind: 'how-much' }>['target']>,
  s: Speaker,
): readonly string[] {
  const told = valueText(target.quantity, target.value, s);
  const aimed =
    target.aimed.length > 0
      ? [
          `${s.and(target.aimed.map((id) => s.system(id).name))}: reckoned to ${told}, the first part now.`,
        ]
      : [];
  const outside = target.outside.map((id) => {
    const { name, ph, ecMsPerCm } = s.system(id);
    const [lowest, highest] = target.quantity === 'ph' ? ph : ecMsPerCm;
    return `${name}: ${told} is outside the ${rangeText(target.quantity, lowest, highest, s)} that is wanted, so I reckon no further than its bound.`;
  });
  return [...aimed, ...outside];
}
