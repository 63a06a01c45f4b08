import type { AdviceAlert } from '../../../assistant/replies/advice.ts';
import type { Supply } from '../../../greenhouse/entry.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { atTime } from '../day-text.ts';
import { dutyText } from '../duty-text.ts';
import { whyText } from '../why.ts';
import { cautionText } from './caution-text.ts';
import { byHandText, hoursText, prospectText, untilText } from './hours-text.ts';
import { howText } from './how-text.ts';
import { surpriseText } from './surprise-text.ts';

/** What a supply that has failed leaves things without. */
export const WITHOUT: Readonly<Record<Supply, string>> = {
  power: 'no power',
  pump: 'no pump',
  'air-pump': 'no air pump',
};

export function adviceAlert(alert: AdviceAlert, s: Speaker): string {
  switch (alert.kind) {
    case 'outage':
      return outageText(alert, s);
    case 'outage-reminder': {
      const { prospect, stage, of } = alert;
      const { name } = s.system(prospect.system);
      const byHand = `By hand: ${byHandText(prospect.byHand, s)}.`;
      return stage === 'soon'
        ? `${name}: still ${WITHOUT[of]}? It holds out until ${untilText(prospect.lowAtMs, s)} at least. ${byHand} Tell me when it is back.`
        : `${name}: ${WITHOUT[of]} for about ${hoursText(prospect.likelyHours)} now, and harm is likely from here on. ${byHand} Tell me when it is back.`;
    }
    case 'all-clear':
      return allClear(alert, s);
    case 'surprise':
      return surpriseText(alert.surprise, s);
    case 'dose-wanted': {
      const lines = alert.lines.map(
        (line) => `${dutyText([line], s)}. ${whyText(line, s)}${howText(line, s)}`,
      );
      return [`For you, since ${s.member(alert.askedBy)} is not to handle it:`, ...lines].join(
        '\n',
      );
    }
  }
}

function outageText(alert: Extract<AdviceAlert, { kind: 'outage' }>, s: Speaker): string {
  const { of, sinceMs, systems, unaffected, cautions } = alert;
  const fine = unaffected.map((id) => s.system(id).name);
  const lines = systems.map((each, place) => `${place + 1}. ${prospectText(each, s)}`);
  return [
    `${s.capital(WITHOUT[of])} since ${untilText(sinceMs, s)}. ${systems.length > 1 ? 'In this order:' : ''}`.trimEnd(),
    ...lines,
    ...(fine.length > 0 ? [`${s.and(fine)}: nothing is lost by waiting.`] : []),
    cautionText(cautions),
  ].join('\n');
}

/** Told with its end and without its beginning. */
const shortestKnownMs = 60_000;

function allClear(alert: Extract<AdviceAlert, { kind: 'all-clear' }>, s: Speaker): string {
  const hours = (alert.untilMs - alert.sinceMs) / 3_600_000;
  const named = (harm: 'perhaps' | 'likely') =>
    alert.systems.filter((each) => each.harm === harm).map((each) => s.system(each.system).name);
  const [perhaps, likely] = [named('perhaps'), named('likely')];
  const harmed = [
    ...(likely.length > 0 ? [`${s.and(likely)} may well have suffered.`] : []),
    ...(perhaps.length > 0 ? [`${s.and(perhaps)} came near the limit.`] : []),
  ];
  const verdict = harmed.length > 0 ? harmed.join(' ') : 'Nothing should have suffered.';
  if (alert.untilMs - alert.sinceMs < shortestKnownMs)
    return `Over ${atTime(alert.untilMs, s)}. How long it was so I do not know. Please look whether everything runs, and measure once today.`;
  return `Over ${atTime(alert.untilMs, s)}, after ${hoursText(hours)}. ${verdict} Please look whether everything runs, and measure once today.`;
}
