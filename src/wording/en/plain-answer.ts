import type { Against, PlainAnswer, Remedy } from '../../assistant/replies/plain.ts';
import { depth } from '../spoken/depth.ts';
import { measureOf } from '../spoken/measure-of-quantity.ts';
import type { Speaker } from '../spoken/speaker.ts';
import { toldDuties } from '../spoken/told-duties.ts';
import { roughVolume, volume } from '../spoken/volume.ts';
import { adviceAnswer } from './advice/advice-answer.ts';
import { CARE } from './advice/advice-remark.ts';
import { cautionText } from './advice/caution-text.ts';
import {
  comparedText,
  daysToldText,
  firstText,
  fullestText,
  outText,
  whyUseText,
} from './asked-plainly.ts';
import { dayText, onDay } from './day-text.ts';
import { dutyName, dutyText } from './duty-text.ts';
import { cropText } from './keeping/crop-text.ts';
import { productName, quantityNames } from './names.ts';
import { rangeText, valueText } from './value-text.ts';
import { whyText } from './why.ts';
import { causesOf } from './why-reading.ts';

/** What somebody is told who stands in the greenhouse and does not know. */
export function plainText(answer: PlainAnswer, s: Speaker): string {
  switch (answer.kind) {
    case 'containers':
      return containersText(answer, s);
    case 'grown':
      return answer.systems.map((id) => grownText(id, s)).join('\n');
    case 'water-source': {
      const { water } = s.greenhouse;
      return `From the ${water.name} (${valueText('ec', water.ecMsPerCm, s)}).`;
    }
    case 'urgent':
      return urgentText(answer, s);
    case 'out-of-range':
      return outOfRangeText(answer, s);
    case 'why-reading':
      return [...causesOf(answer.quantity, answer.side), ...againstText(answer, s)].join('\n');
    case 'room':
      return answer.systems.map((each) => roomText(each, s)).join('\n');
    case 'first':
      return firstText(answer, s);
    case 'fullest':
      return fullestText(answer, s);
    case 'why-use':
      return whyUseText(answer, s);
    case 'days-told':
      return daysToldText(answer, s);
    case 'compared':
      return comparedText(answer, s);
    case 'which-value':
      return `Which value do you mean? Ask for example “is ${valueText('ph', 5.4, s)} too low for ${s.greenhouse.systems[0]?.name ?? ''}”.`;
  }
}

type Of<Kind extends PlainAnswer['kind']> = Extract<PlainAnswer, { kind: Kind }>;

function containersText({ containers }: Of<'containers'>, s: Speaker): string {
  if (containers.length === 0)
    return 'No containers are set down here. Tell me one, for example “a can holds 10 L”.';
  return containers
    .map(({ name, litres }) => `${s.capital(name)}: ${s.amount(volume(litres, s.units.volume))}.`)
    .join('\n');
}

function grownText(id: Of<'grown'>['systems'][number], s: Speaker): string {
  const system = s.system(id);
  const unit = s.units.volume;
  const [brim, low] = [system.brimL, system.lowL].map((litres) => s.amount(volume(litres, unit)));
  const deep = s.amount(depth(system.depthCm, unit));
  return `${system.name}: ${cropText(system)}; ${brim ?? ''} at the brim (${deep} deep), low mark ${low ?? ''}.`;
}

function urgentText(answer: Of<'urgent'>, s: Speaker): string {
  const { systems, by, out, now, waits, next } = answer;
  const where = systems === null ? '' : ` for ${s.and(systems.map((id) => s.system(id).name))}`;
  const first = outText(out, s);
  const verdict =
    by === null
      ? now.length > 0
        ? [`For today${where}, not to be put off:`]
        : out.length > 0
          ? []
          : [`Nothing is urgent${where}.`]
      : now.length > 0
        ? [`Better not wait until ${dayText(by, s)}${where}:`]
        : [`Yes, until ${dayText(by, s)} nothing is lost${where}.`];
  const then =
    waits.length === 0 && now.length === 0 && next
      ? [`Next: ${dutyName(next.duty, s)} ${onDay(next.duty.dueOn, s)}.`]
      : [];
  return [
    ...first,
    ...verdict,
    ...toldDuties(now).map(({ line, lines }) => `- ${dutyText(lines, s)}. ${whyText(line, s)}`),
    ...waits.map(
      ({ line, until }) =>
        `${s.capital(dutyName(line.duty, s))}: in time until ${dayText(until, s)}.`,
    ),
    ...then,
  ].join('\n');
}

function outOfRangeText(answer: Of<'out-of-range'>, s: Speaker): string {
  const { quantity, side, remedy, doses, cautions } = answer;
  const name = quantityNames[quantity];
  const again = `${s.capital(name)} too ${side}: measure once more first, with a rinsed and calibrated meter.`;
  return [
    remedy.kind === 'care'
      ? CARE[remedy.advice]
      : `${again} ${remedyText(remedy, answer.against, s)}`,
    ...againstText(answer, s),
    ...(doses ? [adviceAnswer(doses, s)] : []),
    ...(cautions && !doses?.lines.some((line) => line.cautions) ? [cautionText(cautions)] : []),
  ].join('\n');
}

function remedyText(
  remedy: Exclude<Remedy, { readonly kind: 'care' }>,
  [first]: readonly Against[],
  s: Speaker,
): string {
  const place = first ? s.system(first.system).name : (s.greenhouse.systems[0]?.name ?? '');
  switch (remedy.kind) {
    case 'reagent': {
      const product = productName(remedy.product);
      return remedy.mayDose
        ? `If it is so, ${product} helps: ask “how much ${product} for ${place}”, add no more than my figure, stir, wait 15 to 30 minutes, measure again and tell me. Never by guess.`
        : `Then tell me the value. If it is so, it takes ${product}, and that is for the grower: please add nothing yourself.`;
    }
    case 'nutrients':
      return `If it is so, it is too weak: ask “how much nutrient for ${place}”, put in one nutrient, stir, then the other, wait 15 to 30 minutes, measure again and tell me.`;
    case 'plain-water':
      return 'If it is so, it is too strong, and no product helps: top up with plain water, as far as there is room, stir and measure again. Else change the solution.';
  }
}

/** Between what it should be, beside what was read last. */
function againstText(
  { quantity, against }: Pick<Of<'why-reading'>, 'quantity' | 'against'>,
  s: Speaker,
): readonly string[] {
  return against.map(({ system, value, lowest, highest }: Against) => {
    const wanted = `${rangeText(quantity, lowest, highest, s)} is wanted`;
    const last = value === null ? 'not measured yet' : `last ${valueText(quantity, value, s)}`;
    return `${s.system(system).name}: ${last}, ${wanted}.`;
  });
}

function roomText(
  { system, litres, roomL, isBounded }: Of<'room'>['systems'][number],
  s: Speaker,
): string {
  const { name, brimL } = s.system(system);
  if (litres === null)
    return `${name}: nobody has said yet how full it is. Tell me the level first.`;
  const unit = s.units.volume;
  const [left, room, full] = [litres, roomL, brimL].map((each) => roughVolume(each, unit));
  const bound = isBounded ? '; no more at once, since the roots in the air need that air' : '';
  const fits = measureOf('top-up', roomL, s.units).value < 0.1 ? 'nothing' : s.amount(room!);
  return `${name}: about ${s.amount(left!)} of ${s.amount(full!)} by now, so ${fits} fits in${bound}.`;
}
