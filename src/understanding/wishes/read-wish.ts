import type { Supply } from '../../greenhouse/entry.ts';
import {
  type Greenhouse,
  type RiskSetting,
  riskSettings,
  type SpokenUnits,
} from '../../greenhouse/greenhouse.ts';
import { type LocalDate, type LocalTime, plusDays } from '../../greenhouse/local-time.ts';
import type { Language, Member } from '../../greenhouse/member.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import type {
  Planting,
  SetUpChange,
  WantedQuantity,
} from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Days } from '../arranging/arranging.ts';
import { probesMeant } from '../probes-meant.ts';
import { isRainUsual } from './is-butt.ts';
import type { ReadSlot } from './match-pattern.ts';
import { plainAskOf, systemsFound } from './plain-wish.ts';
import { systemOfTask } from './read-names.ts';
import { readSlot } from './read-slot.ts';
import type { About, ChangeKind, ExplainedTerm, TopicAsked, Wish, WishKind } from './wish.ts';
import { wishPatterns } from './wish-patterns.ts';
import { type WishWorld, wishWorlds } from './wish-world.ts';

/** Longer messages are no wish. */
export const longestWish = 600;

/**
 * The wish that a whole message is, about the household's set-up, stock or season; null: it is none.
 * Only a message that fits a pattern from its first word to its last is one.
 */
export function readWish(
  text: string,
  greenhouse: Greenhouse,
  member: Member,
  atMs: number,
): Wish | null {
  if (text.length > longestWish) return null;
  for (const world of wishWorlds(text, greenhouse, member, atMs)) {
    if (world.tokens.length === 0) continue;
    const read: ReadSlot = (slot, words) => readSlot(slot, words, world);
    const fit = wishPatterns(world.words).firstFit(world.tokens, read);
    if (fit && mayBeReading(fit.item.kind, new Slots(fit.slots), greenhouse)) continue;
    if (fit) return wishOf(fit.item.kind, new Slots(fit.slots), world, fit.slots);
  }
  return null;
}

/** `the bench holds 520 l now`, `the bench is 52 cm deep`: as far as it could till now it may as well be what is in it. */
function mayBeReading(kind: WishKind, slots: Slots, { systems }: Greenhouse): boolean {
  if (kind !== 'brim-now' && kind !== 'depth-now') return false;
  const system = systems.find(({ id }) => id === slots.system);
  if (kind === 'brim-now') return system === undefined || slots.number('litres') <= system.brimL;
  return system !== undefined && slots.number('cm') <= system.depthCm;
}

/** What the slots of a pattern that fitted hold; the readers of the slots give these types. */
class Slots {
  readonly #found: ReadonlyMap<string, unknown>;

  constructor(found: ReadonlyMap<string, unknown>) {
    this.#found = found;
  }

  get container(): string {
    return ['vessel', 'measure', 'container']
      .map((slot) => this.#found.get(slot))
      .find(Boolean) as string;
  }

  /** Once, where it is not said. */
  get times(): number {
    return (this.#found.get('count') ?? 1) as number;
  }

  /** All of it, where it is not said. */
  get share(): number {
    return (this.#found.get('share') ?? 1) as number;
  }

  number(slot: 'interval' | 'count' | 'litres' | 'amount' | 'cm' | 'low' | 'high'): number {
    return this.#found.get(slot) as number;
  }

  /** Of anything, where it is not said. */
  get about(): About {
    return (this.#found.get('about') ?? { system: null, duty: null }) as About;
  }

  text(
    slot:
      | 'words'
      | 'task'
      | 'name'
      | 'chore'
      | 'crop'
      | 'container'
      | 'member'
      | 'product'
      | 'other',
  ): string {
    const other = slot === 'chore' ? 'somechore' : slot === 'crop' ? 'fruit' : slot;
    return (this.#found.get(slot) ?? this.#found.get(other)) as string;
  }

  get system(): SystemId {
    return ['system', 'plants', 'grown']
      .map((slot) => this.#found.get(slot))
      .find(Boolean) as SystemId;
  }

  get day(): LocalDate | undefined {
    return this.#found.get('day') as LocalDate | undefined;
  }

  /** null where it is not said how many. */
  plantingBy(today: LocalDate): Planting | null {
    const plants = this.#found.get('count') as number | undefined;
    if (plants === undefined) return null;
    return { crop: this.text('crop'), plants, on: this.day ?? today };
  }

  get time(): LocalTime {
    return this.#found.get('time') as LocalTime;
  }

  get language(): Language {
    return this.#found.get('language') as Language;
  }

  get units(): Partial<SpokenUnits> {
    return this.#found.get('units') as Partial<SpokenUnits>;
  }

  get future(): Days {
    return this.#found.get('future') as Days;
  }

  get scenario(): Scenario {
    return this.#found.get('scenario') as Scenario;
  }

  get term(): ExplainedTerm {
    return ['term', 'bareterm', 'thing']
      .map((slot) => this.#found.get(slot))
      .find(Boolean) as ExplainedTerm;
  }

  get systems(): readonly SystemId[] {
    return this.#found.get('systems') as readonly SystemId[];
  }

  /** null: none is named. */
  get someSystems(): readonly SystemId[] | null {
    const { system } = this;
    return (
      (this.#found.get('systems') as readonly SystemId[] | undefined) ?? (system ? [system] : null)
    );
  }

  get supply(): Supply {
    return this.#found.get('supply') as Supply;
  }

  get quantity(): WantedQuantity {
    return this.#found.get('quantity') as WantedQuantity;
  }
}

function wishOf(
  kind: WishKind,
  slots: Slots,
  world: WishWorld,
  found: ReadonlyMap<string, unknown>,
): Wish {
  switch (kind) {
    case 'ask-container':
    case 'ask-containers':
    case 'ask-grown':
    case 'ask-water-source':
    case 'ask-urgent':
    case 'ask-first':
    case 'ask-ahead':
    case 'ask-next':
    case 'ask-trip':
    case 'ask-water-when':
    case 'ask-lowest':
    case 'ask-fullest':
    case 'ask-fullness':
    case 'ask-why-thirsty':
    case 'ask-why-sober':
    case 'ask-week-told':
    case 'ask-days-told':
    case 'ask-compared':
    case 'ask-ranked':
    case 'ask-safety':
    case 'ask-trend':
    case 'ask-room':
    case 'ask-air':
    case 'ask-too-high':
    case 'ask-too-low':
    case 'ask-too-warm':
    case 'ask-too-cold':
    case 'ask-why-high':
    case 'ask-why-low':
    case 'ask-may-dose':
    case 'ask-target':
    case 'ask-safe-dose':
    case 'ask-without':
    case 'ask-week-use':
    case 'ask-most':
    case 'ask-water-warm':
      return {
        kind: 'ask',
        ask: plainAskOf(kind, found, world.today),
        systems: systemsFound(found),
      };
    case 'topic-brim':
    case 'topic-ec':
    case 'topic-tap-water':
    case 'topic-drinking':
    case 'topic-children':
    case 'topic-photos':
    case 'topic-languages':
    case 'topic-privacy':
    case 'topic-sureness':
    case 'topic-putting-right':
    case 'topic-overdosing':
    case 'topic-running-dry':
    case 'topic-joining':
      return { kind: 'explain', term: kind.slice('topic-'.length) as TopicAsked };
    case 'ask-help':
      return { kind: 'ask', ask: { kind: 'help' }, systems: [] };
    case 'ask-first-aid':
      return { kind: 'ask', ask: { kind: 'first-aid', of: 'spill' }, systems: [] };
    case 'ask-last-did':
      return {
        kind: 'logged',
        handle: slots.text('member'),
        on: slots.day ?? null,
        ...(slots.someSystems ? { systems: slots.someSystems } : {}),
      };
    case 'may-skip':
      return { kind: 'what-if', scenario: { kind: 'go-on', on: plusDays(world.today, 2) } };
    case 'ask-trust':
      return {
        kind: 'how-to',
        about: { system: null, duty: 'calibration' },
        probes: [found.get('probe') as string],
      };
    case 'ask-watering':
      return { kind: 'how-to', about: { system: slots.system, duty: 'top-up' }, probes: [] };
    case 'ask-measuring':
      return { kind: 'how-to', about: { system: null, duty: 'check' }, probes: [] };
    case 'ask-logged-of':
      return {
        kind: 'logged',
        handle: null,
        on: slots.day ?? null,
        systems: systemsFound(found),
      };
    case 'set-up':
      return { kind: 'guide', of: 'greenhouse' };
    case 'move-last-chore':
      return { kind: 'chore-spoken-of', everyDays: slots.number('interval') };
    case 'drop-last-chore':
      return { kind: 'chore-spoken-of', everyDays: null };
    case 'ask-chores':
      return { kind: 'chores', name: null };
    case 'ask-one-chore':
      return { kind: 'chores', name: slots.text('chore') };
    case 'add-system':
      return { kind: 'guide', of: 'system' };
    case 'ask-stock':
      return { kind: 'stock', product: null };
    case 'ask-one-stock':
      return { kind: 'stock', product: slots.text('product') };
    case 'buy-unsaid':
      return { kind: 'stock-unsaid', product: slots.text('product'), is: 'bought' };
    case 'count-unsaid':
      return { kind: 'stock-unsaid', product: slots.text('product'), is: 'left' };
    case 'open-bottle':
      return { kind: 'stock-opened', product: slots.text('product') };
    case 'ask-rain':
      return { kind: 'rain' };
    case 'ask-season':
      return { kind: 'season', asks: 'going' };
    case 'plant-bare':
      return { kind: 'planted-somewhere', planting: slots.plantingBy(world.today) };
    case 'ask-who':
      return { kind: 'introduction' };
    case 'ask-term':
      return { kind: 'explain', term: slots.term };
    case 'ask-bare-term':
      return { kind: 'explain', term: slots.term, isBare: true };
    case 'ask-wanted':
      return { kind: 'wanted', quantity: slots.quantity, systems: slots.someSystems };
    case 'ask-level':
      return { kind: 'how-full', systems: slots.systems };
    case 'ask-weather':
      return { kind: 'how-long' };
    case 'ask-away':
      return { kind: 'who-is-away' };
    case 'ask-own-away':
      return { kind: 'who-is-away', ofOneself: true };
    case 'ask-logged-by':
      return { kind: 'logged', handle: slots.text('member'), on: slots.day ?? null };
    case 'ask-logged-own':
      return { kind: 'logged', handle: world.member.handle, on: slots.day ?? null };
    case 'ask-logged-all':
      return { kind: 'logged', handle: null, on: slots.day ?? null };
    case 'ask-supply':
      return { kind: 'supply', of: slots.supply };
    case 'ask-where':
      return { kind: 'where', what: slots.text('words') };
    case 'ask-mixing':
      return { kind: 'mixing', products: [slots.text('product'), slots.text('other')] };
    case 'ask-my-turns':
      return { kind: 'my-turns' };
    case 'remind-once':
      return { kind: 'remind-once' };
    case 'ask-last':
      return { kind: 'last', quantity: slots.quantity, systems: slots.systems };
    case 'ask-harvest':
      return { kind: 'season', asks: 'harvest' };
    case 'ask-best':
      return { kind: 'season', asks: 'best' };
    case 'attach-note':
    case 'change-note': {
      const isInstead = kind === 'change-note';
      return { kind: 'attach-note', about: slots.about, note: slots.text('words'), isInstead };
    }
    case 'drop-notes':
      return { kind: 'drop-notes', about: slots.about };
    case 'how-to':
      return {
        kind: 'how-to',
        about: slots.about,
        probes: probesMeant(
          world.tokens.map(({ text }) => text),
          world.greenhouse,
        ),
      };
    case 'ask-notes':
      return { kind: 'notes', about: slots.about };
    case 'first-fruit':
      return { kind: 'first-fruit', system: slots.system, on: slots.day ?? world.today };
    case 'what-if':
      return { kind: 'what-if', scenario: slots.scenario };
    case 'may-wait':
      return { kind: 'what-if', scenario: { kind: 'go-on', on: slots.future.until } };
    default:
      return { kind: 'change', change: changeOf(kind, slots, world) };
  }
}

/** Days; shown with the question whether to add it, where nobody said how often. */
const usualInterval = 7;

function changeOf(kind: ChangeKind, slots: Slots, world: WishWorld): SetUpChange {
  switch (kind) {
    case 'add-chore':
    case 'add-chore-at':
    case 'add-chore-unsaid': {
      const name = slots.text('task');
      const system = kind === 'add-chore-at' ? slots.system : systemOfTask(name, world);
      const everyDays = kind === 'add-chore-unsaid' ? usualInterval : slots.number('interval');
      return { kind: 'chore-added', chore: { name, system, everyDays, lastDoneOn: null } };
    }
    case 'move-chore':
      return {
        kind: 'chore-moved',
        name: slots.text('chore'),
        everyDays: slots.number('interval'),
      };
    case 'drop-chore':
      return { kind: 'chore-dropped', name: slots.text('chore') };
    case 'rename-system':
      return { kind: 'system-renamed', system: slots.system, name: slots.text('name') };
    case 'drop-system':
      return { kind: 'system-dropped', system: slots.system };
    case 'set-brim':
    case 'brim-now':
      return figure('brimL', slots.system, slots.number('litres'));
    case 'set-low':
      return figure('lowL', slots.system, slots.number('litres'));
    case 'set-depth':
    case 'depth-now':
      return figure('depthCm', slots.system, slots.number('cm'));
    case 'set-plants':
      return figure('plants', slots.system, slots.number('count'));
    case 'set-range': {
      const { system, quantity } = slots;
      const range = [slots.number('low'), slots.number('high')] as const;
      return { kind: 'range-set', system, quantity, range };
    }
    case 'add-alias':
      return { kind: 'alias-added', system: slots.system, alias: slots.text('name') };
    case 'drop-alias':
      return { kind: 'alias-dropped', system: slots.system, alias: slots.text('name') };
    case 'plant':
      return {
        kind: 'planted',
        system: slots.system,
        crop: slots.text('crop'),
        plants: slots.number('count'),
        on: slots.day ?? world.today,
      };
    case 'clear':
      return { kind: 'cleared', system: slots.system, on: slots.day ?? world.today };
    case 'own-language':
      return {
        kind: 'language-set',
        handle: world.member.handle,
        language: slots.language,
      };
    case 'set-language':
      return {
        kind: 'language-set',
        handle: slots.text('member'),
        language: slots.language,
      };
    case 'own-units':
      return { kind: 'units-set', handle: world.member.handle, units: slots.units };
    case 'own-units-off':
      return { kind: 'units-set', handle: world.member.handle, units: null };
    case 'set-units':
      return { kind: 'units-set', handle: slots.text('member'), units: slots.units };
    case 'set-units-off':
      return { kind: 'units-set', handle: slots.text('member'), units: null };
    case 'set-container':
      return {
        kind: 'container-set',
        name: slots.container,
        litres: slots.number('litres'),
      };
    case 'drop-container':
      return { kind: 'container-dropped', name: slots.text('container') };
    case 'set-morning':
      return { kind: 'morning-set', morning: slots.time };
    case 'be-careful':
      return { kind: 'risk-set', risk: 'careful' };
    case 'be-normal':
      return { kind: 'risk-set', risk: 'normal' };
    case 'be-relaxed':
      return { kind: 'risk-set', risk: 'relaxed' };
    case 'risk-less':
      return { kind: 'risk-set', risk: riskNextTo(world.greenhouse.risk, -1) };
    case 'risk-more':
      return { kind: 'risk-set', risk: riskNextTo(world.greenhouse.risk, 1) };
    case 'buy':
      return {
        kind: 'stock-added',
        product: slots.text('product'),
        mL: slots.number('amount') * slots.times,
      };
    case 'set-butt':
      return { kind: 'butt-set', litres: slots.number('litres'), isUsual: isRainUsual(world) };
    case 'count-butt':
      return { kind: 'butt-counted', held: { share: slots.share }, atMs: world.atMs };
    case 'measure-butt':
      return { kind: 'butt-counted', held: { litres: slots.number('litres') }, atMs: world.atMs };
    case 'show-acids':
      return { kind: 'acids-shown', handle: slots.text('member'), isShown: true };
    case 'keep-from-acids':
      return { kind: 'acids-shown', handle: slots.text('member'), isShown: false };
    case 'used-up':
      return { kind: 'stock-counted', product: slots.text('product'), mL: 0 };
    case 'count':
      return {
        kind: 'stock-counted',
        product: slots.text('product'),
        mL: slots.number('amount'),
      };
  }
}

/** One step towards less or more risk, as far as there is one. */
function riskNextTo(risk: RiskSetting, step: -1 | 1): RiskSetting {
  return riskSettings[riskSettings.indexOf(risk) + step] ?? risk;
}

function figure(
  name: 'brimL' | 'lowL' | 'depthCm' | 'plants',
  system: SystemId,
  value: number,
): SetUpChange {
  return { kind: 'figure-set', system, figure: name, value };
}
