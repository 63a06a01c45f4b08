import type { GuideOption } from '../../../assistant/guide/guide.ts';
import type { GuideProblem, GuideStep } from '../../../greenhouse/set-up/guide-step.ts';
import { type Method, methods } from '../../../greenhouse/system.ts';
import { depth } from '../../spoken/depth.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { volumeNames } from '../names.ts';
import { systemText } from './system-text.ts';

/** A step of the guided set-up: what was wrong with the answer, then the question. */
export function guideText(step: GuideStep, problem: GuideProblem | null, s: Speaker): string {
  const asked = stepText(step, s);
  return problem ? `${problemText(problem)}\n${asked}` : asked;
}

function stepText(step: GuideStep, s: Speaker): string {
  switch (step.kind) {
    case 'name':
      return 'Richten wir dein Gewächshaus ein, eine Frage nach der anderen. „zurück“ geht zurück, „weiter“ nimmt meinen Vorschlag, „stopp“ beendet es.\nWie heißt es?';
    case 'place':
      return 'Welche große Stadt ist am nächsten? Oder sag mir die Grade, etwa „48.1, 11.6“. Ich brauche sie für die Uhr und die Länge des Tages.';
    case 'morning':
      return `Wann soll ich am Morgen schreiben? Mein Vorschlag: ${step.suggested}.`;
    case 'meters':
      return 'Welche Messgeräte hast du: pH, EC, beide oder keine?';
    case 'method':
      return [
        step.position === 1
          ? 'Nun die Systeme, eines nach dem anderen. Wie wächst es im ersten?'
          : 'Wie wächst es darin?',
        ...methods.map((method, i) => `${i + 1} ${methodTexts[method]}`),
      ].join('\n');
    case 'system-name':
      return 'Wie nennt ihr es?';
    case 'brim':
      return `Wie viele ${volumeNames[s.units.volume]} fasst ${step.name}, voll bis zum Rand?`;
    case 'depth':
      return `Wie tief ist das Wasser in ${step.name} dann? Mein Vorschlag: ${s.amount(depth(step.suggestedCm, s.units.volume))}.`;
    case 'low':
      return `Wie viel muss in ${step.name} mindestens bleiben? Mein Vorschlag: ${s.amount(roughVolume(step.suggestedL, s.units.volume))}.`;
    case 'plants':
      return `Was wächst in ${step.name}, und wie viele? Etwa „12 Salate“, oder „nichts“.`;
    case 'another':
      return `${systemText(step.system, s)}.\nNoch ein System? Sag, wie es darin wächst, oder „fertig“.`;
    case 'summary':
      return summaryText(step, s);
  }
}

function summaryText(
  { greenhouse, town }: Extract<GuideStep, { kind: 'summary' }>,
  s: Speaker,
): string {
  const { name, morning, probes, systems, formerSystems = [] } = greenhouse;
  const place = town === null ? '' : `, bei ${town}`;
  const meters =
    probes.length > 0 ? `mit ${s.and(probes.map((probe) => probe.name))}` : 'keine Messgeräte';
  return [
    `${name}${place}, Runde um ${morning}, ${meters}.`,
    ...systems.map((system) => `${systemText(system, s)}.`),
    ...(formerSystems.length > 0
      ? ['Was vorher eingerichtet war, ist ausgeblendet; die Einträge bleiben im Logbuch.']
      : []),
    'Soll ich es so einrichten?',
  ].join('\n');
}

function problemText({ kind }: GuideProblem): string {
  switch (kind) {
    case 'not-understood':
      return 'Das habe ich nicht verstanden. „stopp“ beendet es.';
    case 'which-method':
      return 'Schau, woher die Wurzeln ihr Wasser haben: Es steigt und läuft von selbst ab (1), steht in Wannen oder unter einem Floß mit Luftblasen (2), läuft dünn durch Rinnen (3), steht still in Gläsern oder Kisten (4), tropft (5) oder wird gesprüht (6). „stopp“ beendet es.';
    case 'unknown-place':
      return 'Die Stadt kenne ich nicht. Eine größere in der Nähe genügt.';
    case 'name-taken':
      return 'Diesen Namen gibt es schon.';
    case 'low-above-brim':
      return 'So viel fasst es ja; die untere Marke muss darunter liegen.';
    case 'needed':
      return 'Ohne das geht es nicht.';
    case 'out-of-bounds':
      return 'Das liegt außerhalb dessen, was möglich ist.';
    case 'nothing-before':
      return 'Das ist die erste Frage.';
  }
}

const methodTexts: Readonly<Record<Method, string>> = {
  'flood-and-drain': 'Ebbe und Flut',
  'deep-water-culture': 'Tiefwasser (Wannen mit Luft)',
  'nutrient-film': 'Nährfilm (Rinnen)',
  'non-circulating': 'stehendes Wasser (Gläser)',
  drip: 'Tropfbewässerung',
  aeroponic: 'Nebel',
};

export function guideOptionText(option: GuideOption): string {
  switch (option.kind) {
    case 'method':
      return methodTexts[option.method];
    case 'back':
      return 'zurück';
    case 'skip':
      return 'weiter';
    case 'finish':
      return 'fertig';
    case 'yes':
      return 'so einrichten';
  }
}
