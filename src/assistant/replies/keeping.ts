import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';
import type { Season } from '../../planning/season.ts';
import type { StockLine } from '../../planning/stock-outlook.ts';

/** What the bot says about the set-up, the stock and the season, as data. */
export type KeepingAnswer =
  | {
      readonly kind: 'set-up';
      readonly change: SetUpChange;
      readonly state: 'made' | 'undone' | 'changed-since';
    }
  | { readonly kind: 'set-up-left' }
  | {
      readonly kind: 'stock';
      /** null: everything, and what is to be bought. */
      readonly product: string | null;
      readonly lines: readonly StockLine[];
      readonly buy: readonly StockLine[];
    }
  | { readonly kind: 'season'; readonly season: Season };
