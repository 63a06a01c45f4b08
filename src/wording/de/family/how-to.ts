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
  'no-guessing-products': 'nichts zugeben, was ich nicht genannt habe, und nicht mehr davon',
  'no-over-brim': 'nicht über den Rand füllen; im Zweifel aufhören und mir den Stand sagen',
  'no-drowned-air-roots':
    'nicht bis zur ersten Marke auffüllen: die Wurzeln in der Luft brauchen sie',
  'no-pumps-off': 'keine Pumpe ausgeschaltet lassen',
  'no-acids-untaught': 'pH-Plus und pH-Minus nicht anrühren: das macht, wem es gezeigt wurde',
  'no-one-probe-for-all': 'das Messgerät zwischen zwei Systemen nicht ungespült lassen',
};

/** A duty in numbered steps, for somebody who has never done it. */
export function howToText(how: HowTo, s: Speaker): string {
  const { duty, steps, tips } = how;
  const title = s.capital(dutyName(duty, s));
  return [
    `${title}:`,
    ...tips.filter(({ text }) => text !== '').map(({ text }) => `Hinweis: ${text}`),
    ...steps
      .flatMap((step) => oneByOne(step))
      .map((step) => stepLine(step, how, s))
      .filter((line) => line !== '')
      .map((line, place) => `${place + 1}. ${line}`),
    `Bitte ${how.donts.map((each) => donts[each]).join('; ')}.`,
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
      return `Wasser holen (${s.greenhouse.water.name})${step.litres ? `: etwa ${waterText(step.litres, s)}` : ''}. Lieber zwei halb volle Kannen tragen als eine volle.`;
    case 'mix':
    case 'work':
      return `${s.capital(step.work.map((work) => stepText(work, s)).join(', dann '))}.`;
    case 'pour': {
      if (!system) return '';
      const filling = fillingTo(system, step.toL ?? system.brimL);
      const to =
        filling.kind === 'level'
          ? `${s.amount(depth(filling.belowBrimCm, s.units.volume))} unter dem Rand`
          : 'knapp unter den Rand';
      return `Langsam eingießen, bis ${to}. Dort aufhören, auch wenn Wasser übrig ist.`;
    }
    case 'read-level':
      return 'Nachsehen, wie hoch das Wasser jetzt steht: mit dem Lineal vom Rand abwärts in cm, oder als Anteil, etwa „halb voll“.';
    case 'dip-probe': {
      const names = step.quantities.map((quantity) => quantityNames[quantity]);
      const probes = step.probes.length > 0 ? ` mit ${s.and(step.probes)}` : '';
      return `${s.and(names)} messen${probes}: in ${place} tauchen, sanft rühren, warten, bis die Zahl etwa zehn Sekunden stillsteht.`;
    }
    case 'rinse-probe':
      return 'Das Messgerät in klarem Wasser spülen und die Kappe wieder aufsetzen; eine pH-Sonde darf nie austrocknen.';
    case 'buffers':
      if (!step.isPh) {
        return `${step.probe} in frische EC-Eichlösung tauchen, deren Wert deiner Lösung am nächsten liegt, warten, bis die Zahl stillsteht, und mir beide Werte sagen, bevor du etwas verstellst. Die gebrauchte Lösung wegschütten.`;
      }
      return `${step.probe} in frischen Puffer pH 7 tauchen, ablesen, spülen, dann in pH 4, und mir beide Werte sagen, bevor du etwas verstellst. Den gebrauchten Puffer wegschütten.`;
    case 'set-air':
      return step.minutesPerHour === null
        ? `Nachsehen, ob die Luft in ${place} sprudelt.`
        : `Zeitschaltuhr von ${place} auf ${s.amount(measureOf('aeration', step.minutesPerHour, s.units))} stellen und nachsehen, ob es sprudelt.`;
    case 'wait-for-figures':
      return line
        ? `Auf meine Zahl für ${place} warten.`
        : `${dutyNames[duty.kind]}: jetzt nichts. Erst messen und mir sagen; dann sage ich, wie viel, oder dass es jemand anderes macht.`;
    case 'answer':
      return `Dann zum Beispiel antworten: „${answerExample(step, how, s)}“.`;
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
      return `${place} ${s.amount(measureOf('top-up', amount, s.units))} nachgefüllt`;
    }
    case 'check':
      if (!system) return place;
      return `${place} ${valueText('ph', middleOf(system.ph, 1), s)} ${valueText('ec', middleOf(system.ecMsPerCm, 1), s)}`;
    case 'reservoir-change':
      return `${place} Lösung gewechselt, ${s.amount(measureOf('reservoir-change', system?.brimL ?? 0, s.units))}`;
    case 'calibration':
      return isPhWork(how) ? '7,00 zeigte 7,05 und 4,01 zeigte 4,10' : '1,41 zeigte 1,38';
    default:
      return `${how.duty.chore ?? place} erledigt`;
  }
}

function isPhWork({ steps }: HowTo): boolean {
  return steps.some((step) => step.kind === 'buffers' && step.isPh);
}
