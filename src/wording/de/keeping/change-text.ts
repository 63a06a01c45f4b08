import type { Greenhouse, RiskSetting } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type {
  SetUpChange,
  SystemFigure,
  UnfitChange,
  WantedQuantity,
} from '../../../greenhouse/set-up/set-up-change.ts';
import { STRONG_REAGENTS } from '../../../planning/cautions-for.ts';
import { depth } from '../../spoken/depth.ts';
import { exampleButtL } from '../../spoken/examples.ts';
import { measureOf } from '../../spoken/measure-of-quantity.ts';
import type { Speaker } from '../../spoken/speaker.ts';
import { cautionText } from '../advice/caution-text.ts';
import { everyDays, onDay } from '../day-text.ts';
import { productName } from '../names.ts';
import { rangeText } from '../value-text.ts';
import { cropText } from './crop-text.ts';
import { stockAmount } from './stock-text.ts';
import { systemText } from './system-text.ts';
import { unitsText } from './units-text.ts';

/** A change as it would be, with what holds now where that is known. */
export function changeQuestion(change: SetUpChange, was: SetUpChange | null, s: Speaker): string {
  const asked = isReport(change) ? 'Stimmt das?' : 'Soll ich das so machen?';
  const what = s.capital(changeText(change, was, s));
  if (change.kind !== 'acids-shown' || !change.isShown) return `${what}. ${asked}`;
  return `${what}. Bitte vorher zeigen. ${cautionText({ about: STRONG_REAGENTS, inFull: true })} ${asked}`;
}

/** What the household did or counted, and not what it wants. */
function isReport({ kind }: SetUpChange): boolean {
  return (
    kind === 'planted' ||
    kind === 'cleared' ||
    kind === 'stock-added' ||
    kind === 'stock-counted' ||
    kind === 'butt-counted'
  );
}

export function changedText(
  change: SetUpChange,
  state: 'made' | 'undone' | 'changed-since',
  s: Speaker,
): string {
  const what = changeText(change, null, s);
  switch (state) {
    case 'made':
      if (change.kind === 'set-up-anew') return setUpText(change.greenhouse, s);
      return `Erledigt: ${what}. „Rückgängig“ nimmt es zurück.`;
    case 'undone':
      return `Zurückgenommen: ${what}.`;
    case 'changed-since':
      return `Das kann ich nicht zurücknehmen: Es wurde seither wieder geändert (${what}). Sag bitte, wie es sein soll.`;
  }
}

function gets(handle: string, s: Speaker): string {
  return s.isReader(handle) ? 'du bekommst' : `${s.member(handle)} bekommt`;
}

function setUpText({ name, systems }: Greenhouse, s: Speaker): string {
  const [first] = systems;
  if (!first) throw new Error(`${name} is set up without a system, expected at least one`);
  const example = `${first.name} ${s.amount(measureOf('level', first.brimL, s.units))}`;
  return `Erledigt: ${name} ist eingerichtet. Sag mir, was jetzt in den Systemen ist, etwa „${example}“. „Rückgängig“ nimmt alles zurück.`;
}

function changeText(change: SetUpChange, was: SetUpChange | null, s: Speaker): string {
  const then = was ? valueOf(was, s) : null;
  const now = valueOf(change, s);
  const to = then === null ? now : `${then} → ${now}`;
  switch (change.kind) {
    case 'chore-added': {
      const { name, system, everyDays: days } = change.chore;
      const where = system === null ? '' : `, bei ${s.system(system).name}`;
      return `„${name}“ ${everyDays(days)}${where}`;
    }
    case 'chore-moved':
      return `„${change.name}“ ${then === null ? now : `${now} statt ${then}`}`;
    case 'chore-dropped':
      return `kein „${change.name}“ mehr`;
    case 'system-added':
      return `neues System ${systemText(change.system, s)}`;
    case 'system-renamed':
      return then === null ? `der neue Name ist ${now}` : `${then} heißt ab jetzt ${now}`;
    case 'system-dropped':
      return `${s.system(change.system).name} wird gestrichen, die Einträge dazu bleiben im Logbuch`;
    case 'figure-set':
      return `${figureNames[change.figure]} von ${s.system(change.system).name}: ${to}`;
    case 'range-set':
      return `${rangeNames[change.quantity]} in ${s.system(change.system).name} soll: ${to}`;
    case 'alias-added':
      return `${s.system(change.system).name} heißt auch ${change.alias}`;
    case 'alias-dropped':
      return `${s.system(change.system).name} heißt nicht mehr ${change.alias}`;
    case 'planted': {
      const place = s.system(change.system).name;
      const instead = then === null ? '' : `, an Stelle von ${then}`;
      return `${now} ${onDay(change.on, s)} in ${place} gepflanzt${instead}`;
    }
    case 'cleared': {
      const what = then ?? 'die Pflanzen';
      return `${what} ${onDay(change.on, s)} aus ${s.system(change.system).name} genommen`;
    }
    case 'language-set':
      return `${gets(change.handle, s)} alles auf ${now}`;
    case 'units-set': {
      const reads = gets(change.handle, s);
      if (!change.units) return `${reads} alles wieder in den Einheiten des Haushalts`;
      const by = s.isReader(change.handle) ? 'dir' : s.member(change.handle);
      return `${reads} alles in ${unitsText(change.units, s)}, und Zahlen ohne Einheit von ${by} zählen so`;
    }
    case 'container-set':
      return `1 ${change.name} fasst ${now}${then === null ? '' : `, nicht ${then}`}`;
    case 'container-dropped':
      return `kein Gefäß „${change.name}“ mehr`;
    case 'morning-set':
      return `die Runde am Morgen um ${to}`;
    case 'risk-set':
      return `im ganzen Gewächshaus ab jetzt: ${to}, ${riskMeanings[change.risk]}`;
    case 'stock-added':
      return then === null
        ? `${now} ${productName(change.product)} gekauft`
        : `${now} ${productName(change.product)} gekauft, dazu die ${then}, die noch da sind`;
    case 'stock-counted':
      return `noch ${now} ${productName(change.product)}${then === null ? '' : `, gerechnet hatte ich mit ${then}`}`;
    case 'butt-set':
      return `die Regentonne fasst ${to}, Nachfüllen mit Regenwasser wird davon abgezogen`;
    case 'butt-counted':
      return `jetzt ${now} in der Regentonne${then === null ? '' : `, gerechnet hatte ich mit ${then}`}`;
    case 'acids-shown':
      return change.isShown
        ? `${s.member(change.handle)} darf mit Säure und Lauge umgehen und bekommt diese Aufgaben mit Mengen`
        : `${s.member(change.handle)} lässt Säure und Lauge stehen: Diese Aufgaben warten auf jemanden, der eingewiesen ist`;
    case 'set-up-anew':
      return `${change.greenhouse.name} ist eingerichtet`;
  }
}

/** The part of a change that has a before and an after. */
function valueOf(change: SetUpChange, s: Speaker): string | null {
  switch (change.kind) {
    case 'chore-moved':
      return everyDays(change.everyDays);
    case 'system-renamed':
      return change.name;
    case 'figure-set':
      return figureText(change.figure, change.value, s);
    case 'range-set': {
      const [lowest, highest] = change.range;
      return rangeText(change.quantity, lowest, highest, s);
    }
    case 'planted':
      return cropText(change);
    case 'language-set':
      return languageNames[change.language];
    case 'container-set':
      return s.amount(measureOf('level', change.litres, s.units));
    case 'morning-set':
      return change.morning;
    case 'risk-set':
      return riskNames[change.risk];
    case 'stock-added':
    case 'stock-counted':
      return stockAmount(change.mL, s);
    case 'butt-set':
      return s.amount(measureOf('level', change.litres, s.units));
    case 'butt-counted':
      return s.amount(measureOf('level', heldL(change.held, s), s.units));
    default:
      return null;
  }
}

/** Litres in the butt. */
function heldL(held: Extract<SetUpChange, { kind: 'butt-counted' }>['held'], s: Speaker): number {
  return 'litres' in held ? held.litres : held.share * (s.greenhouse.rainButt?.litres ?? 0);
}

function figureText(figure: SystemFigure, value: number, s: Speaker): string {
  switch (figure) {
    case 'brimL':
    case 'lowL':
      return s.amount(measureOf('level', value, s.units));
    case 'depthCm':
      return s.amount(depth(value, s.units.volume));
    case 'plants':
      return String(value);
  }
}

const figureNames: Readonly<Record<SystemFigure, string>> = {
  brimL: 'Rand',
  lowL: 'untere Marke',
  depthCm: 'Tiefe bis zum Rand',
  plants: 'Pflanzen',
};

const rangeNames: Readonly<Record<WantedQuantity, string>> = {
  ph: 'pH',
  ec: 'EC',
  'water-temperature': 'Wassertemperatur',
};

const languageNames: Readonly<Record<Language, string>> = { en: 'Englisch', de: 'Deutsch' };

const riskNames: Readonly<Record<RiskSetting, string>> = {
  careful: 'vorsichtig',
  normal: 'normal',
  relaxed: 'gelassen',
};

const riskMeanings: Readonly<Record<RiskSetting, string>> = {
  careful: 'also lieber ein Gang zu viel als ein System zu leer',
  normal: 'also wenige Gänge, und fast nie ein System zu leer',
  relaxed: 'also weniger Gänge, und ab und zu kann ein System zu leer werden',
};

/** Why a change cannot be made. */
export function unfitText(change: SetUpChange, because: UnfitChange, s: Speaker): string {
  switch (because.kind) {
    case 'no-such-chore':
      return 'Diese Aufgabe gibt es nicht mehr.';
    case 'chore-there':
      return 'Diese Aufgabe gibt es schon. Sag „alle 5 Tage“ nach ihrem Namen, um zu ändern, wie oft.';
    case 'name-taken':
      return `Der Name gehört schon zu ${because.by}. Bitte nimm einen anderen.`;
    case 'only-system':
      return 'Es ist das einzige System, darum bleibt es. Leg erst ein weiteres an.';
    case 'low-above-brim':
      return 'Die untere Marke muss unter dem Rand liegen, geändert habe ich nichts.';
    case 'no-such-container':
      return 'Ein Gefäß mit diesem Namen kenne ich nicht.';
    case 'has-chores': {
      const chores = because.chores.map((chore) => `„${chore}“`);
      return `Dazu gibt es noch Aufgaben: ${s.and(chores)}. Streich sie zuerst, etwa mit „streich ${because.chores[0] ?? ''}“.`;
    }
    case 'no-butt':
      return `Ich weiß nicht, wie viel die Regentonne fasst. Sag mir zum Beispiel „Regentonne ${s.amount(measureOf('level', exampleButtL[s.units.volume], s.units))}“.`;
    case 'more-than-butt':
      return `Die Regentonne fasst ${s.amount(measureOf('level', because.litres, s.units))}. Mehr kann nicht darin sein.`;
    case 'same-already':
      return `Das ist schon so: ${changeText(change, null, s)}.`;
    case 'out-of-bounds':
      return 'Das liegt außerhalb dessen, was möglich ist; geändert habe ich nichts.';
  }
}
