import type { Method } from '../../../greenhouse/system.ts';
import type {
  MoveSurprise,
  StillSurprise,
  Surprise,
  UseSurprise,
} from '../../../planning/surprises/surprise.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { roughVolume } from '../../spoken/volume.ts';
import { onDay, sinceDay } from '../day-text.ts';
import { quantityNames } from '../names.ts';
import { rangeText, valueText } from '../value-text.ts';
import { hoursText } from './hours-text.ts';

/** What does not fit, what is known, and what to look at. */
export function surpriseText(surprise: Surprise, s: Speaker): string {
  switch (surprise.kind) {
    case 'use':
      return useText(surprise, s);
    case 'move':
      return moveText(surprise, s);
    case 'still':
      return stillText(surprise, s);
  }
}

/** Further off, no estimate is good to the hour. */
const COUNTED_HOURS = 12;
/** Less than this is no figure: readings are no finer. */
const HARDLY_ANY_L = 0.5;

function useText(surprise: UseSurprise, s: Speaker): string {
  const { name, method } = s.system(surprise.system);
  const [used, expected] = [surprise.usedL, surprise.expectedL].map((litres) =>
    s.amount(roughVolume(litres, s.units.volume)),
  );
  const since = sinceDay(s.dateOf(surprise.fromMs), s);
  if (surprise.way === 'below') {
    return `${name}: ${since} ${surprise.usedL < HARDLY_ANY_L ? 'kaum Wasser' : `nur etwa ${used!}`} verbraucht, zu erwarten waren etwa ${expected!}. ${dryUp[method]} Oder hat jemand nachgefüllt und nichts gesagt?`;
  }
  const low = lowText(surprise.lowAtMs, s);
  return `${name}: ${since} fehlen etwa ${used!}, bei diesem Wetter zu erwarten waren etwa ${expected!}.${low} Bitte nach einem Leck sehen: ${leaks[method]}. War eine Zahl ein Versehen, sag mir einfach die richtige.`;
}

function lowText(lowAtMs: number | null, s: Speaker): string {
  if (lowAtMs === null) return '';
  if (lowAtMs <= s.nowMs) return ' Es ist wohl schon an der unteren Marke.';
  const hours = (lowAtMs - s.nowMs) / 3_600_000;
  const when =
    hours < COUNTED_HOURS
      ? `in etwa ${hoursText(hours)}`
      : `irgendwann ${onDay(s.dateOf(lowAtMs), s)}`;
  return ` Geht es so weiter, ist es ${when} zu leer.`;
}

export const leaks: Readonly<Record<Method, string>> = {
  'flood-and-drain': 'Schläuche, Ablauf, ein Tisch, der überläuft, nasser Boden',
  'deep-water-culture': 'Wannen und Anschlüsse, ein Luftschlauch, der Wasser zieht, nasser Boden',
  'nutrient-film': 'Enden und Stöße der Rinnen, Rücklauf, nasser Boden',
  'non-circulating': 'ein Glas mit Sprung, nasses Brett',
  drip: 'ein abgegangener Tropfer oder Schlauch, Rücklauf, nasser Boden',
  aeroponic: 'abgegangene Düsen, Deckel, Rücklauf, nasser Boden',
};

export const dryUp: Readonly<Record<Method, string>> = {
  'flood-and-drain':
    'Bitte nachsehen, ob noch geflutet wird, ob der Filter frei ist, und nach den Wurzeln: braune, schleimige trinken nicht mehr.',
  'deep-water-culture':
    'Bitte nachsehen, ob die Luft läuft, und nach den Wurzeln: braune, schleimige trinken nicht mehr.',
  'nutrient-film':
    'Bitte nachsehen, ob in jeder Rinne Wasser läuft, ob der Filter frei ist, und nach den Wurzeln: braune, schleimige trinken nicht mehr.',
  'non-circulating':
    'Bitte nach den Wurzeln sehen: ein Teil muss in der Luft hängen, und braune, schleimige trinken nicht mehr.',
  drip: 'Bitte nachsehen, ob jeder Tropfer läuft, ob der Filter frei ist, und nach den Wurzeln: braune, schleimige trinken nicht mehr.',
  aeroponic:
    'Bitte nachsehen, ob jede Düse sprüht, ob der Filter frei ist, und nach den Wurzeln: braune, schleimige trinken nicht mehr.',
};

function moveText(surprise: MoveSurprise, s: Speaker): string {
  const { quantity, from, to, usualPerDay } = surprise;
  const { name, ph, ecMsPerCm } = s.system(surprise.system);
  const [lowest, highest] = quantity === 'ph' ? ph : ecMsPerCm;
  const way = to > from ? 'gestiegen' : 'gefallen';
  const bounds = rangeText(quantity, lowest, highest, s);
  const pace = s.amount(measureOf(quantity, usualPerDay, s.units));
  const span = `${s.number(measureOf(quantity, from, s.units))} auf ${s.amount(measureOf(quantity, to, s.units))}`;
  const look = looks[quantity][to > from ? 'up' : 'down'];
  return `${name}: ${quantityNames[quantity]} ist ${sinceDay(s.dateOf(surprise.fromMs), s)} von ${span} ${way} (gewünscht ${bounds}), sonst ändert er sich meist um höchstens etwa ${pace} am Tag. ${look} Vor dem Dosieren noch einmal messen.`;
}

const looks = {
  ph: {
    down: 'Bitte nach den Wurzeln und nach toten Blättern im Wasser sehen: was fault, macht es sauer.',
    up: 'Bitte nach Algen, nach Licht auf dem Wasser und nach neuem Blähton oder Wolle sehen: all das treibt ihn hoch.',
  },
  ec: {
    down: 'Die Pflanzen nehmen mehr Nährstoff als Wasser, oder irgendwo kommt reines Wasser dazu.',
    up: 'Die Pflanzen nehmen mehr Wasser als Nährstoff, etwa bei Hitze, oder eine Mischung war zu stark: beim nächsten Mal am besten reines Wasser.',
  },
} as const;

function stillText(surprise: StillSurprise, s: Speaker): string {
  const { quantity, value, by, times, system } = surprise;
  const where =
    system === null
      ? 'Gewächshaus'
      : s.and([system, ...surprise.elsewhere].map((id) => s.system(id).name));
  const since = sinceDay(s.dateOf(surprise.fromMs), s);
  const name = quantityNames[quantity];
  const shown = valueText(quantity, value, s);
  return by === 'sensor'
    ? `${where}: der Sensor (${name}) zeigt ${since} ${shown} und bewegt sich nicht. Vielleicht hängt er, liegt trocken oder ist ohne Verbindung. Bitte einmal von Hand messen und nachsehen.`
    : `${where}: ${since} wurde ${times}-mal hintereinander ${shown} gemessen; echtes Wasser ändert sich ein wenig. Bitte prüfen, ob das Messgerät noch anspricht, in Leitungswasser oder einer Referenz.`;
}
