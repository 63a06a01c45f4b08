import type { DutyKind } from '../../../greenhouse/duty.ts';
import type { WaterKind } from '../../../greenhouse/entry.ts';
import type { SpokenUnits } from '../../../greenhouse/greenhouse.ts';
import type { Language } from '../../../greenhouse/member.ts';
import type { WantedQuantity } from '../../../greenhouse/set-up/set-up-change.ts';
import type { Method } from '../../../greenhouse/system.ts';
import type { ScenarioWay } from '../../wishes/read-scenario.ts';
import type { ExplainedTerm, WishKind } from '../../wishes/wish.ts';

/** How a language asks for changes of the set-up; patterns as `understanding/wishes/pattern.ts` reads them. */
export interface WishWords {
  /** In the order in which they are tried; a message must fit one whole. */
  readonly patterns: Readonly<Record<WishKind, readonly string[]>>;
  /** Said before or after a wish without changing it. */
  readonly courtesies: readonly string[];
  /** Each with the days that one of its {count} is; without a count that many days. */
  readonly intervals: readonly { readonly pattern: string; readonly days: number }[];
  /** Said of how careful to be, what for: a system or all, and it holds for all. */
  readonly wide: readonly string[];
  /** What opens a question of what would be. */
  readonly whatIf: readonly string[];
  /** What would be, in the order in which they are tried. */
  readonly scenarios: Readonly<Record<ScenarioWay, readonly string[]>>;
  readonly days: readonly { readonly words: readonly string[]; readonly ago: number }[];
  readonly articles: readonly string[];
  /** What begins no work: people and questions. */
  readonly noTask: readonly string[];
  /** What ends no work: words that lean on the day after them. */
  readonly noTaskEnd: readonly string[];
  readonly languages: Readonly<Record<Language, readonly string[]>>;
  /** Units as somebody asks for them; a ppm meter may name its scale. */
  readonly unitNames: readonly {
    readonly words: readonly string[];
    readonly units: Partial<SpokenUnits>;
  }[];
  /** What joins several of a kind: `and`. */
  readonly joiners: readonly string[];
  readonly quantities: Readonly<Record<WantedQuantity, readonly string[]>>;
  /** How the ways of growing are called, for the guided set-up. */
  readonly methods: Readonly<Record<Method, readonly string[]>>;
  /** One-word answers of the guided set-up. */
  readonly steering: Readonly<
    Record<'back' | 'anew' | 'skip' | 'stop' | 'finish' | 'yes' | 'no' | 'none', readonly string[]>
  >;
  /** Put before an answer of the guided set-up that is to stand instead of the last, and before what was wrong. */
  readonly mending: { readonly leads: readonly string[]; readonly instead: readonly string[] };
  /** Said before a clock time without changing it. */
  readonly beforeClock: readonly string[];
  /** How a system is called that nobody gave a name, and a meter. */
  readonly methodNames: Readonly<Record<Method, string>>;
  readonly meterNames: Readonly<Record<'ph' | 'ec', string>>;
  readonly meters: Readonly<Record<'ph' | 'ec' | 'both', readonly string[]>>;
  /** How kinds of work are called where something is to be known about them. */
  readonly work: Readonly<Partial<Record<DutyKind, readonly string[]>>>;
  /** How a deed may end where it is spoken of, and what it ends in where it is told to do. */
  readonly deedForms: readonly (readonly [string, string])[];
  /** The whole greenhouse, all of the work. */
  readonly everything: readonly string[];
  /** What rain water is kept in. */
  readonly butts: readonly string[];
  /** How full it is, as a share. */
  readonly shares: readonly { readonly words: readonly string[]; readonly share: number }[];
  /** What a top-up was made with, where that is said in passing. */
  readonly waters: Readonly<Record<WaterKind, readonly string[]>>;
  /** Words of the trade that a newcomer may ask about. */
  readonly terms: Readonly<Record<ExplainedTerm, readonly string[]>>;
  /** How it is told how much of a product there is, once that was asked for. */
  readonly stockAnswers: readonly string[];
  /** Fruit, whatever grows. */
  readonly fruit: readonly string[];
  /** `half past`-less clock words that may follow an hour: o'clock, am, pm with the hours they add. */
  readonly clockWords: ReadonlyMap<string, number>;
  /** Of which there are twelve inches in one. */
  readonly feet: readonly string[];
}
