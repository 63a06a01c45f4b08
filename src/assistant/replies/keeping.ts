import type { Entry } from '../../greenhouse/entry.ts';
import type { LocalDate } from '../../greenhouse/local-time.ts';
import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { RainLine } from '../../planning/rain-left.ts';
import type { Season } from '../../planning/season.ts';
import type { StockLine } from '../../planning/stock-outlook.ts';
import type { About, SeasonAsked } from '../../understanding/wishes/wish.ts';

/** How often a chore is done, when it was last and when it is next. */
export interface ChoreTold {
  readonly name: string;
  readonly system: SystemId | null;
  readonly everyDays: number;
  readonly lastDoneOn: LocalDate | null;
  readonly dueOn: LocalDate;
}

/** What the bot says about the set-up, the stock and the season, as data. */
export type KeepingAnswer =
  | {
      readonly kind: 'set-up';
      readonly change: SetUpChange;
      readonly state: 'made' | 'undone' | 'changed-since';
    }
  | { readonly kind: 'set-up-left' }
  /** Something was planted: where, is to be said. */
  | { readonly kind: 'planted-where' }
  | {
      readonly kind: 'stock';
      /** null: everything, and what is to be bought. */
      readonly product: string | null;
      readonly lines: readonly StockLine[];
      readonly buy: readonly StockLine[];
      /** null: no butt of a known size. */
      readonly rain: RainLine | null;
    }
  /** A bottle was opened; null: nothing is known of the product. */
  | {
      readonly kind: 'stock-opened';
      readonly product: string;
      readonly line: StockLine | null;
    }
  /** Chores of the household; empty: there are none. */
  | { readonly kind: 'chores'; readonly chores: readonly ChoreTold[] }
  | { readonly kind: 'rain'; readonly rain: RainLine | null }
  /** Notes kept with systems and kinds of work. */
  | { readonly kind: 'notes'; readonly about: About; readonly notes: readonly Entry[] }
  | { readonly kind: 'season'; readonly season: Season; readonly asks: SeasonAsked };
