import type { DutyKind } from '../../greenhouse/duty.ts';
import type { Supply } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import type {
  Planting,
  SetUpChange,
  WantedQuantity,
} from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Ask, StockSaid } from '../statement.ts';

/** What a member wants changed or told about the household's set-up, stock and season. */
export type Wish =
  | { readonly kind: 'change'; readonly change: SetUpChange }
  /** How often the chore spoken of last is to be done; null: no more. */
  | { readonly kind: 'chore-spoken-of'; readonly everyDays: number | null }
  /** The household's chores, or one of them by its name. */
  | { readonly kind: 'chores'; readonly name: string | null }
  | { readonly kind: 'guide'; readonly of: 'greenhouse' | 'system' }
  /** product null: everything. */
  | { readonly kind: 'stock'; readonly product: string | null }
  /** Something of a product was bought, or is left, and nobody said how much. */
  | { readonly kind: 'stock-unsaid'; readonly product: string; readonly is: StockSaid }
  /** A bottle was opened, which changes nothing of what there is. */
  | { readonly kind: 'stock-opened'; readonly product: string }
  /** How much rain water there is. */
  | { readonly kind: 'rain' }
  | { readonly kind: 'season'; readonly asks: SeasonAsked }
  /** Something to know about a system or a kind of work; what was kept before is left, or goes. */
  | {
      readonly kind: 'attach-note';
      readonly about: About;
      readonly note: string;
      readonly isInstead: boolean;
    }
  /** How that is done; of all that is due, where nothing is named. `probes`: which of them it speaks of, by name. */
  | { readonly kind: 'how-to'; readonly about: About; readonly probes: readonly string[] }
  | { readonly kind: 'drop-notes'; readonly about: About }
  | { readonly kind: 'notes'; readonly about: About }
  /** Something was planted, and nobody said where; null: nor how many. */
  | { readonly kind: 'planted-somewhere'; readonly planting: Planting | null }
  /** A question, and the systems that it names. */
  | { readonly kind: 'ask'; readonly ask: Ask; readonly systems: readonly SystemId[] }
  /** Who the bot is, and what to say to it. */
  | { readonly kind: 'introduction' }
  /** `isBare`: with no article, its latest readings may be meant as well. */
  | { readonly kind: 'explain'; readonly term: ExplainedTerm; readonly isBare?: true }
  /** Between what a quantity should be in these systems. */
  | {
      readonly kind: 'wanted';
      readonly quantity: WantedQuantity;
      readonly systems: readonly SystemId[] | null;
    }
  | { readonly kind: 'how-full'; readonly systems: readonly SystemId[] }
  /** What the water and the weather make of each system. */
  | { readonly kind: 'how-long' }
  /** ofOneself: when the member is away. */
  | { readonly kind: 'who-is-away'; readonly ofOneself?: true }
  /** What was logged by a member, or by all (null), on a day, or of late (null); absent systems: of all. */
  | {
      readonly kind: 'logged';
      readonly handle: string | null;
      readonly on: LocalDate | null;
      readonly systems?: readonly SystemId[];
    }
  | { readonly kind: 'supply'; readonly of: Supply }
  /** Where something is kept, as it was called. */
  | { readonly kind: 'where'; readonly what: string }
  /** Whether these products may be mixed. */
  | { readonly kind: 'mixing'; readonly products: readonly [string, string] }
  /** When the member has to go. */
  | { readonly kind: 'my-turns' }
  /** The last reading of each of these systems. */
  | {
      readonly kind: 'last';
      readonly quantity: WantedQuantity;
      readonly systems: readonly SystemId[];
    }
  /** To be reminded of something on one day. */
  | { readonly kind: 'remind-once' }
  | { readonly kind: 'first-fruit'; readonly system: SystemId; readonly on: LocalDate }
  | { readonly kind: 'what-if'; readonly scenario: Scenario };

/** What may be asked about: a word of the trade, or a topic. */
export type ExplainedTerm =
  | TopicAsked
  | 'ph'
  | 'reservoir'
  | 'top-up'
  | 'kratky'
  | 'low-mark'
  | 'calibration'
  | 'round'
  | 'reservoir-change'
  | 'ph-down'
  | 'ph-up'
  | 'nft'
  | 'dwc'
  | 'flood-and-drain';

/** What is asked about in a whole sentence as well, and not by a word of the trade alone. */
export type TopicAsked =
  | 'brim'
  | 'ec'
  | 'tap-water'
  | 'drinking'
  | 'children'
  | 'photos'
  | 'languages'
  | 'privacy'
  | 'sureness'
  | 'putting-right'
  | 'overdosing'
  | 'running-dry'
  | 'joining';

/** Which did best, what was picked, or how all of it goes. */
export type SeasonAsked = 'best' | 'harvest' | 'going';

/** What a note is about; null: any. */
export interface About {
  readonly system: SystemId | null;
  readonly duty: DutyKind | null;
}

/** Questions of somebody who does not know. */
export type PlainWishKind =
  | 'ask-container'
  | 'ask-containers'
  | 'ask-grown'
  | 'ask-water-source'
  | 'ask-urgent'
  | 'ask-first'
  | 'ask-ahead'
  | 'ask-next'
  | 'ask-trip'
  | 'ask-water-when'
  | 'ask-lowest'
  | 'ask-fullest'
  | 'ask-fullness'
  | 'ask-why-thirsty'
  | 'ask-why-sober'
  | 'ask-week-told'
  | 'ask-days-told'
  | 'ask-compared'
  | 'ask-ranked'
  | 'ask-safety'
  | 'ask-trend'
  | 'ask-room'
  | 'ask-air'
  | 'ask-too-high'
  | 'ask-too-low'
  | 'ask-too-warm'
  | 'ask-too-cold'
  | 'ask-why-high'
  | 'ask-why-low'
  | 'ask-may-dose'
  | 'ask-target'
  | 'ask-safe-dose'
  | 'ask-without'
  | 'ask-week-use'
  | 'ask-most'
  | 'ask-water-warm';

export type WishKind =
  | ChangeKind
  | PlainWishKind
  | `topic-${TopicAsked}`
  | 'ask-first-aid'
  | 'ask-last-did'
  | 'may-skip'
  | 'ask-help'
  | 'ask-logged-of'
  | 'ask-measuring'
  | 'ask-trust'
  | 'ask-watering'
  | 'move-last-chore'
  | 'drop-last-chore'
  | 'ask-chores'
  | 'ask-one-chore'
  | 'add-system'
  | 'plant-bare'
  | 'buy-unsaid'
  | 'count-unsaid'
  | 'open-bottle'
  | 'ask-stock'
  | 'ask-one-stock'
  | 'ask-rain'
  | 'ask-season'
  | 'ask-harvest'
  | 'ask-who'
  | 'ask-term'
  | 'ask-bare-term'
  | 'ask-wanted'
  | 'ask-level'
  | 'ask-weather'
  | 'ask-away'
  | 'ask-own-away'
  | 'ask-logged-by'
  | 'ask-logged-own'
  | 'ask-logged-all'
  | 'ask-supply'
  | 'ask-where'
  | 'ask-mixing'
  | 'ask-my-turns'
  | 'ask-last'
  | 'what-if'
  | 'may-wait'
  | 'ask-best'
  | 'change-note'
  | 'attach-note'
  | 'drop-notes'
  | 'ask-notes'
  | 'first-fruit'
  | 'how-to'
  | 'remind-once'
  | 'set-up';

/** Of them, what changes the set-up. */
export type ChangeKind =
  | 'add-chore'
  | 'add-chore-at'
  | 'add-chore-unsaid'
  | 'move-chore'
  | 'drop-chore'
  | 'rename-system'
  | 'drop-system'
  | 'set-brim'
  | 'brim-now'
  | 'set-low'
  | 'set-depth'
  | 'depth-now'
  | 'set-plants'
  | 'set-range'
  | 'add-alias'
  | 'drop-alias'
  | 'plant'
  | 'clear'
  | 'own-language'
  | 'set-language'
  | 'own-units'
  | 'set-units'
  | 'own-units-off'
  | 'set-units-off'
  | 'set-container'
  | 'drop-container'
  | 'set-morning'
  | 'be-careful'
  | 'be-normal'
  | 'be-relaxed'
  | 'risk-less'
  | 'risk-more'
  | 'buy'
  | 'count'
  | 'used-up'
  | 'set-butt'
  | 'count-butt'
  | 'measure-butt'
  | 'show-acids'
  | 'keep-from-acids';
