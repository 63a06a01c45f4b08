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
      return 'Let us set up your greenhouse, one question at a time. “back” goes back, “skip” takes what I suggest, “stop” ends it.\nWhat is it called?';
    case 'place':
      return 'Which big town is nearest? Or tell me degrees, like “53.3, -7.3”. I need it for the clock and the length of the day.';
    case 'morning':
      return `When shall I write in the morning? I suggest ${step.suggested}.`;
    case 'meters':
      return 'Which meters do you have: pH, EC, both or none?';
    case 'method':
      return [
        step.position === 1
          ? 'Now the systems, one after the other. How does the first one grow?'
          : 'How does it grow?',
        ...methods.map((method, i) => `${i + 1} ${methodTexts[method]}`),
      ].join('\n');
    case 'system-name':
      return 'What do you call it?';
    case 'brim':
      return `How many ${volumeNames[s.units.volume]} does ${step.name} hold, full to the brim?`;
    case 'depth':
      return `How deep is the water in ${step.name} then? I suggest ${s.amount(depth(step.suggestedCm, s.units.volume))}.`;
    case 'low':
      return `How much must be left in ${step.name} at least? I suggest ${s.amount(roughVolume(step.suggestedL, s.units.volume))}.`;
    case 'plants':
      return `What grows in ${step.name}, and how many? Like “12 lettuces”, or “none”.`;
    case 'another':
      return `${systemText(step.system, s)}.\nAnother system? Say how it grows, or “done”.`;
    case 'summary':
      return summaryText(step, s);
  }
}

function summaryText(
  { greenhouse, town }: Extract<GuideStep, { kind: 'summary' }>,
  s: Speaker,
): string {
  const { name, morning, probes, systems, formerSystems = [] } = greenhouse;
  const place = town === null ? '' : `, near ${town}`;
  const meters =
    probes.length > 0 ? `with ${s.and(probes.map((probe) => probe.name))}` : 'no meters';
  return [
    `${name}${place}, round at ${morning}, ${meters}.`,
    ...systems.map((system) => `${systemText(system, s)}.`),
    ...(formerSystems.length > 0
      ? ['What was set up before is hidden; its entries stay in the logbook.']
      : []),
    'Shall I set it up like this?',
  ].join('\n');
}

function problemText({ kind }: GuideProblem): string {
  switch (kind) {
    case 'not-understood':
      return 'I did not understand that. “stop” ends this.';
    case 'which-method':
      return 'Look where the roots get their water: it rises and drains by itself (1), stands in tubs or under a raft with air bubbling through (2), runs thinly along gutters (3), stands still in jars or boxes (4), drips (5), or is sprayed (6). “stop” ends this.';
    case 'unknown-place':
      return 'I do not know that town. A bigger one nearby will do.';
    case 'name-taken':
      return 'There is one of that name already.';
    case 'low-above-brim':
      return 'That is as much as it holds; the low mark must lie below.';
    case 'needed':
      return 'I cannot do without that.';
    case 'out-of-bounds':
      return 'That is outside what is possible.';
    case 'nothing-before':
      return 'This is the first question.';
  }
}

const methodTexts: Readonly<Record<Method, string>> = {
  'flood-and-drain': 'flood and drain',
  'deep-water-culture': 'deep water (tubs with air)',
  'nutrient-film': 'nutrient film (gutters)',
  'non-circulating': 'still water (jars)',
  drip: 'drip',
  aeroponic: 'mist',
};

export function guideOptionText(option: GuideOption): string {
  switch (option.kind) {
    case 'method':
      return methodTexts[option.method];
    case 'back':
      return 'back';
    case 'skip':
      return 'skip';
    case 'finish':
      return 'done';
    case 'yes':
      return 'set it up';
  }
}
