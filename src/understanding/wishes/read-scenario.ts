import { type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { Scenario } from '../../greenhouse/scenario.ts';
import type { Days } from '../arranging/arranging.ts';
import { daysAt } from '../arranging/days-said.ts';
import { piecesOf } from '../arranging/piece.ts';
import { onceFor } from '../reading/once-for.ts';
import type { Token } from '../reading/token.ts';
import type { WishWords } from '../vocabulary/wishes/wish-words.ts';
import type { ReadSlot } from './match-pattern.ts';
import { type Pattern, patternOf } from './pattern.ts';
import { PatternIndex } from './pattern-index.ts';
import type { WishWorld } from './wish-world.ts';

/** The ways in which a language says what might be; what they hold besides is in their slots. */
export type ScenarioWay =
  | 'nobody-until'
  | 'nobody-during'
  | 'not-today'
  | 'go-on'
  | 'degrees'
  | 'hot'
  | 'cold'
  | 'fewer-floods'
  | 'more-floods'
  | 'fill-all';

/** What a clause after "what if" describes; undefined: nothing that can be reckoned. */
export function readScenario(
  words: readonly Token[],
  world: WishWorld,
  readSlot: ReadSlot,
): Scenario | undefined {
  const fit = scenarioPatterns(world.words).firstFit(words, readSlot);
  return fit ? scenarioOf(fit.item.way, fit.slots, world.today) : undefined;
}

interface ScenarioPattern {
  readonly way: ScenarioWay;
  readonly pattern: Pattern;
}

const scenarioPatterns = onceFor((words: WishWords) => {
  const ways = Object.keys(words.scenarios) as ScenarioWay[];
  return new PatternIndex(
    ways.flatMap((way) =>
      words.scenarios[way].map((text): ScenarioPattern => ({ way, pattern: patternOf(text) })),
    ),
  );
});

function scenarioOf(
  way: ScenarioWay,
  slots: ReadonlyMap<string, unknown>,
  today: LocalDate,
): Scenario {
  const days = slots.get('future') as Days;
  switch (way) {
    case 'nobody-until':
      return { kind: 'go-on', on: days.until };
    case 'nobody-during':
      return { kind: 'go-on', on: plusDays(days.until, 1) };
    case 'not-today':
      return { kind: 'go-on', on: plusDays(today, 1) };
    case 'go-on':
      return { kind: 'go-on', on: days.from };
    case 'degrees': {
      const tMaxC = slots.get('degrees') as number;
      return { kind: 'weather', way: tMaxC < COLD_BELOW_C ? 'cold' : 'hot', tMaxC };
    }
    case 'hot':
    case 'cold':
      return { kind: 'weather', way, tMaxC: null };
    case 'fewer-floods':
      return { kind: 'floods', times: 0.5 };
    case 'more-floods':
      return { kind: 'floods', times: 2 };
    case 'fill-all':
      return { kind: 'fill-all' };
  }
}

/** Degrees asked about below this are meant as a cold spell. */
const COLD_BELOW_C = 18;

/** Days from today on, to the last word. */
export function readFuture(words: readonly Token[], world: WishWorld): Days | undefined {
  const [first, last] = [words[0]!, words.at(-1)!];
  const pieces = piecesOf(world.folded.text.slice(first.from, last.to), world.lexicon);
  const said = daysAt(pieces, 0, world.today);
  return said && said.end >= pieces.length && said.days.from >= world.today ? said.days : undefined;
}
