import type { Scenario } from '../../greenhouse/scenario.ts';
import type { SetUpChange } from '../../greenhouse/set-up/set-up-change.ts';

/** What a member wants changed or told about the household's set-up, stock and season. */
export type Wish =
  | { readonly kind: 'change'; readonly change: SetUpChange }
  | { readonly kind: 'guide'; readonly of: 'greenhouse' | 'system' }
  /** product null: everything. */
  | { readonly kind: 'stock'; readonly product: string | null }
  | { readonly kind: 'season' }
  | { readonly kind: 'what-if'; readonly scenario: Scenario };

export type WishKind =
  | 'add-chore'
  | 'move-chore'
  | 'drop-chore'
  | 'add-system'
  | 'rename-system'
  | 'drop-system'
  | 'set-brim'
  | 'set-low'
  | 'set-depth'
  | 'set-plants'
  | 'set-range'
  | 'add-alias'
  | 'drop-alias'
  | 'plant'
  | 'clear'
  | 'own-language'
  | 'set-language'
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
  | 'ask-stock'
  | 'ask-one-stock'
  | 'ask-season'
  | 'what-if'
  | 'may-wait'
  | 'set-up';
