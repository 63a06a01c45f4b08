import type { AdviceAlert } from '../../../assistant/replies/advice.ts';
import type { Supply } from '../../../greenhouse/entry.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { atTime } from '../day-text.ts';
import { dutyText } from '../duty-text.ts';
import { whyText } from '../why.ts';
import { cautionText } from './caution-text.ts';
import { byHandText, hoursText, prospectText, sinceText, whenText } from './hours-text.ts';
import { howText } from './how-text.ts';
import { surpriseText } from './surprise-text.ts';

/** What a supply that has failed leaves things without. */
export const WITHOUT: Readonly<Record<Supply, string>> = {
  power: 'ohne Strom',
  pump: 'ohne Pumpe',
  'air-pump': 'ohne Luftpumpe',
};

export function adviceAlert(alert: AdviceAlert, s: Speaker): string {
  switch (alert.kind) {
    case 'outage':
      return outageText(alert, s);
    case 'outage-reminder': {
      const { prospect, stage, of } = alert;
      const { name } = s.system(prospect.system);
      const byHand = `Von Hand: ${byHandText(prospect.byHand, s)}.`;
      return stage === 'soon'
        ? `${name}: immer noch ${WITHOUT[of]}? Es hält frühestens bis ${whenText(prospect.lowAtMs, s).replace(/^um /, '')}. ${byHand} Sag mir, wenn es vorbei ist.`
        : `${name}: jetzt etwa ${hoursText(prospect.likelyHours)} ${WITHOUT[of]}, ab hier ist Schaden wahrscheinlich. ${byHand} Sag mir, wenn es vorbei ist.`;
    }
    case 'all-clear':
      return allClear(alert, s);
    case 'surprise':
      return surpriseText(alert.surprise, s);
    case 'dose-wanted': {
      const lines = alert.lines.map(
        (line) => `${dutyText([line], s)}. ${whyText(line, s)}${howText(line, s)}`,
      );
      return [
        `Das ist deine Sache, ${s.member(alert.askedBy)} soll das nicht anfassen:`,
        ...lines,
      ].join('\n');
    }
  }
}

function outageText(alert: Extract<AdviceAlert, { kind: 'outage' }>, s: Speaker): string {
  const { of, sinceMs, systems, unaffected, cautions } = alert;
  const fine = unaffected.map((id) => s.system(id).name);
  const lines = systems.map((each, place) => `${place + 1}. ${prospectText(each, s)}`);
  const order = systems.length > 1 ? ' In dieser Reihenfolge:' : '';
  return [
    `${s.capital(WITHOUT[of])} ${sinceText(sinceMs, s)}.${order}`,
    ...lines,
    ...(fine.length > 0 ? [`${s.and(fine)}: da kann es warten.`] : []),
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
    ...(likely.length > 0 ? [`Gelitten haben kann: ${s.and(likely)}.`] : []),
    ...(perhaps.length > 0 ? [`Knapp war es für: ${s.and(perhaps)}.`] : []),
  ];
  const verdict = harmed.length > 0 ? harmed.join(' ') : 'Gelitten haben dürfte nichts.';
  if (alert.untilMs - alert.sinceMs < shortestKnownMs)
    return `Vorbei ${atTime(alert.untilMs, s)}. Wie lange es so war, weiß ich nicht. Bitte nachsehen, ob alles läuft, und heute einmal messen.`;
  return `Vorbei ${atTime(alert.untilMs, s)}, nach ${hoursText(hours).replace('Tage', 'Tagen')}. ${verdict} Bitte nachsehen, ob alles läuft, und heute einmal messen.`;
}
