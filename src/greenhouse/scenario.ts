import type { LocalDate } from './local-time.ts';

/** What somebody only asks about: how it would go if. */
export type Scenario =
  /** The next trip is on that day and not sooner. */
  | { readonly kind: 'go-on'; readonly on: LocalDate }
  /** A spell of other weather from today on; tMaxC null: as hot or as cold as it may well get. */
  | { readonly kind: 'weather'; readonly way: 'hot' | 'cold'; readonly tMaxC: number | null }
  /** Floods so many times as often as now. */
  | { readonly kind: 'floods'; readonly times: number }
  /** Everything is filled up today. */
  | { readonly kind: 'fill-all' };
