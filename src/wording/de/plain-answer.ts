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
import { onDay, untilDay } from './day-text.ts';
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
      return `Das Wasser kommt von hier: ${water.name} (${valueText('ec', water.ecMsPerCm, s)}).`;
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
      return `Welchen Wert meinst du? Frag zum Beispiel „ist ${valueText('ph', 5.4, s)} zu niedrig für ${s.greenhouse.systems[0]?.name ?? ''}“.`;
  }
}

type Of<Kind extends PlainAnswer['kind']> = Extract<PlainAnswer, { kind: Kind }>;

function containersText({ containers }: Of<'containers'>, s: Speaker): string {
  if (containers.length === 0)
    return 'Hier sind keine Gefäße angegeben. Sag mir eines, zum Beispiel „eine Kanne fasst 10 l“.';
  return containers
    .map(({ name, litres }) => `${s.capital(name)}: ${s.amount(volume(litres, s.units.volume))}.`)
    .join('\n');
}

function grownText(id: Of<'grown'>['systems'][number], s: Speaker): string {
  const system = s.system(id);
  const unit = s.units.volume;
  const [brim, low] = [system.brimL, system.lowL].map((litres) => s.amount(volume(litres, unit)));
  const deep = s.amount(depth(system.depthCm, unit));
  return `${system.name}: ${cropText(system)}; bis zum Rand ${brim ?? ''} (${deep} tief), untere Marke ${low ?? ''}.`;
}

function urgentText(answer: Of<'urgent'>, s: Speaker): string {
  const { systems, by, out, now, waits, next } = answer;
  const where = systems === null ? '' : `${s.and(systems.map((id) => s.system(id).name))}: `;
  const first = outText(out, s);
  const verdict =
    by === null
      ? now.length > 0
        ? [s.capital(`${where}das sollte heute noch sein:`)]
        : out.length > 0
          ? []
          : [s.capital(`${where}dringend ist nichts.`)]
      : now.length > 0
        ? [s.capital(`${where}lieber nicht ${untilDay(by, s)} warten:`)]
        : [s.capital(`${where}ja, ${untilDay(by, s)} geht nichts verloren.`)];
  const then =
    waits.length === 0 && now.length === 0 && next
      ? [`Als Nächstes ${onDay(next.duty.dueOn, s)}: ${dutyName(next.duty, s)}.`]
      : [];
  return [
    ...first,
    ...verdict,
    ...toldDuties(now).map(({ line, lines }) => `- ${dutyText(lines, s)}. ${whyText(line, s)}`),
    ...waits.map(
      ({ line, until }) => `${s.capital(dutyName(line.duty, s))}: hat Zeit ${untilDay(until, s)}.`,
    ),
    ...then,
  ].join('\n');
}

function outOfRangeText(answer: Of<'out-of-range'>, s: Speaker): string {
  const { quantity, side, remedy, doses, cautions } = answer;
  const name = quantityNames[quantity];
  const again = `${s.capital(name)} zu ${side === 'high' ? 'hoch' : 'niedrig'}: erst noch einmal messen, mit gespültem und kalibriertem Messgerät.`;
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
        ? `Stimmt es, hilft ${product}: frag „wie viel ${product} für ${place}“, nicht mehr zugeben als meine Zahl, umrühren, 15 bis 30 Minuten warten, neu messen und mir sagen. Nie nach Gefühl.`
        : `Sag mir dann den Wert. Stimmt es, braucht es ${product}, und das ist Sache der Gärtnerin oder des Gärtners: bitte selbst nichts zugeben.`;
    }
    case 'nutrients':
      return `Stimmt es, ist die Lösung zu schwach: frag „wie viel Dünger für ${place}“, erst den einen Dünger zugeben, umrühren, dann den anderen, 15 bis 30 Minuten warten, neu messen und mir sagen.`;
    case 'plain-water':
      return 'Stimmt es, ist die Lösung zu stark, und kein Mittel hilft: mit klarem Wasser auffüllen, so weit Platz ist, umrühren und neu messen. Sonst die Lösung wechseln.';
  }
}

/** Between what it should be, beside what was read last. */
function againstText(
  { quantity, against }: Pick<Of<'why-reading'>, 'quantity' | 'against'>,
  s: Speaker,
): readonly string[] {
  return against.map(({ system, value, lowest, highest }: Against) => {
    const wanted = `gewünscht: ${rangeText(quantity, lowest, highest, s)}`;
    const last =
      value === null ? 'noch nicht gemessen' : `zuletzt ${valueText(quantity, value, s)}`;
    return `${s.system(system).name}: ${last}, ${wanted}.`;
  });
}

function roomText(
  { system, litres, roomL, isBounded }: Of<'room'>['systems'][number],
  s: Speaker,
): string {
  const { name, brimL } = s.system(system);
  if (litres === null)
    return `${name}: Wie voll es ist, hat noch niemand gesagt. Sag mir erst den Stand.`;
  const unit = s.units.volume;
  const [left, room, full] = [litres, roomL, brimL].map((each) => roughVolume(each, unit));
  const bound = isBounded ? '; auf einmal nicht mehr, die Wurzeln in der Luft brauchen sie' : '';
  const fits =
    measureOf('top-up', roomL, s.units).value < 0.1 ? 'passt nichts' : `passen ${s.amount(room!)}`;
  return `${name}: inzwischen etwa ${s.amount(left!)} von ${s.amount(full!)}, also ${fits} hinein${bound}.`;
}
