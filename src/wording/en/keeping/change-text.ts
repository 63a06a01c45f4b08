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
  const asked = isReport(change) ? 'Is that right?' : 'Shall I do that?';
  const what = s.capital(changeText(change, was, s));
  if (change.kind !== 'acids-shown' || !change.isShown) return `${what}. ${asked}`;
  return `${what}. Please show it first. ${cautionText({ about: STRONG_REAGENTS, inFull: true })} ${asked}`;
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
      return `Done: ${what}. “undo” takes it back.`;
    case 'undone':
      return `Taken back: ${what}.`;
    case 'changed-since':
      return `I cannot take that back: it has been changed again since (${what}). Please say how it should be.`;
  }
}

function writtenTo(handle: string, s: Speaker): string {
  return s.isReader(handle) ? 'you are written to' : `${s.member(handle)} is written to`;
}

function setUpText({ name, systems }: Greenhouse, s: Speaker): string {
  const [first] = systems;
  if (!first) throw new Error(`${name} is set up without a system, expected at least one`);
  const example = `${first.name} ${s.amount(measureOf('level', first.brimL, s.units))}`;
  return `Done: ${name} is set up. Tell me what is in each system now, like “${example}”. “undo” takes it all back.`;
}

function changeText(change: SetUpChange, was: SetUpChange | null, s: Speaker): string {
  const then = was ? valueOf(was, s) : null;
  const now = valueOf(change, s);
  const to = then === null ? now : `${then} → ${now}`;
  switch (change.kind) {
    case 'chore-added': {
      const { name, system, everyDays: days } = change.chore;
      const where = system === null ? '' : `, for ${s.system(system).name}`;
      return `“${name}” ${everyDays(days)}${where}`;
    }
    case 'chore-moved':
      return `“${change.name}” ${then === null ? now : `${now} instead of ${then}`}`;
    case 'chore-dropped':
      return `no more “${change.name}”`;
    case 'system-added':
      return `new system ${systemText(change.system, s)}`;
    case 'system-renamed':
      return then === null ? `the new name is ${now}` : `${then} is called ${now} from now on`;
    case 'system-dropped':
      return `${s.system(change.system).name} is dropped, what was logged of it stays in the logbook`;
    case 'figure-set':
      return `${figureNames[change.figure]} of ${s.system(change.system).name}: ${to}`;
    case 'range-set':
      return `${rangeNames[change.quantity]} wanted in ${s.system(change.system).name}: ${to}`;
    case 'alias-added':
      return `${s.system(change.system).name} is also called ${change.alias}`;
    case 'alias-dropped':
      return `${s.system(change.system).name} is no longer called ${change.alias}`;
    case 'planted': {
      const place = s.system(change.system).name;
      const instead = then === null ? '' : `, in place of ${then}`;
      return `${now} planted in ${place} ${onDay(change.on, s)}${instead}`;
    }
    case 'cleared': {
      const what = then ?? 'the plants';
      return `${what} taken out of ${s.system(change.system).name} ${onDay(change.on, s)}`;
    }
    case 'language-set':
      return `${writtenTo(change.handle, s)} in ${now}`;
    case 'units-set': {
      const written = writtenTo(change.handle, s);
      if (!change.units) return `${written} in the household's units again`;
      const writes = s.isReader(change.handle) ? 'you write' : `${s.member(change.handle)} writes`;
      return `${written} in ${unitsText(change.units, s)}, and numbers that ${writes} without a unit count in them`;
    }
    case 'container-set':
      return `1 ${change.name} holds ${now}${then === null ? '' : `, not ${then}`}`;
    case 'container-dropped':
      return `no more container “${change.name}”`;
    case 'morning-set':
      return `round in the morning at ${to}`;
    case 'risk-set':
      return `the whole greenhouse, from now on: ${to}, ${riskMeanings[change.risk]}`;
    case 'stock-added':
      return then === null
        ? `${now} of ${productName(change.product)} bought`
        : `${now} of ${productName(change.product)} bought, with the ${then} that are left`;
    case 'stock-counted':
      return `${now} of ${productName(change.product)} left${then === null ? '' : `, where I reckoned ${then}`}`;
    case 'butt-set':
      return `the rain butt holds ${to}, and top-ups with rain water are counted down from it`;
    case 'butt-counted':
      return `${now} in the rain butt now${then === null ? '' : `, where I reckoned ${then}`}`;
    case 'acids-shown':
      return change.isShown
        ? `${s.member(change.handle)} may handle acid and alkali and gets those duties with the amounts`
        : `${s.member(change.handle)} leaves acid and alkali alone: those duties wait for somebody who was shown`;
    case 'set-up-anew':
      return `${change.greenhouse.name} is set up`;
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
      return change.risk;
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
  brimL: 'brim',
  lowL: 'low mark',
  depthCm: 'depth at the brim',
  plants: 'plants',
};

const rangeNames: Readonly<Record<WantedQuantity, string>> = {
  ph: 'pH',
  ec: 'EC',
  'water-temperature': 'water temperature',
};

const languageNames: Readonly<Record<Language, string>> = { en: 'English', de: 'German' };

const riskMeanings: Readonly<Record<RiskSetting, string>> = {
  careful: 'so rather a trip too many than a system low',
  normal: 'so few trips, and hardly ever a system low',
  relaxed: 'so fewer trips, and now and then a system may run low',
};

/** Why a change cannot be made. */
export function unfitText(change: SetUpChange, because: UnfitChange, s: Speaker): string {
  switch (because.kind) {
    case 'no-such-chore':
      return 'There is no such chore any more.';
    case 'chore-there':
      return 'That chore is there already. Say “every 5 days” after its name to change how often.';
    case 'name-taken':
      return `That name belongs to ${because.by}. Please choose another.`;
    case 'only-system':
      return 'It is the only system, so it stays. Add another one first.';
    case 'low-above-brim':
      return 'The low mark must lie below the brim, so I changed nothing.';
    case 'no-such-container':
      return 'I know no container of that name.';
    case 'has-chores': {
      const chores = because.chores.map((chore) => `“${chore}”`);
      return `It still has chores: ${s.and(chores)}. Drop them first, like “no more ${because.chores[0] ?? ''}”.`;
    }
    case 'no-butt':
      return `I do not know how much the rain butt holds. Tell me for example “rain butt ${s.amount(measureOf('level', exampleButtL[s.units.volume], s.units))}”.`;
    case 'more-than-butt':
      return `The rain butt holds ${s.amount(measureOf('level', because.litres, s.units))}. More than that cannot be in it.`;
    case 'same-already':
      return `That is so already: ${changeText(change, null, s)}.`;
    case 'out-of-bounds':
      return 'That is outside what is possible, so I changed nothing.';
  }
}
