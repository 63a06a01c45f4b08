import type { Supply } from '../../greenhouse/entry.ts';
import { daysBetween, type LocalDate, plusDays } from '../../greenhouse/local-time.ts';
import type { WantedQuantity } from '../../greenhouse/set-up/set-up-change.ts';
import type { SystemId } from '../../greenhouse/system.ts';
import type { Days } from '../arranging/arranging.ts';
import type { Ask } from '../statement.ts';
import type { PlainWishKind } from './wish.ts';

/** The first of the era that computers count from. */
const aMonday = '1970-01-05' as LocalDate;

/** Nothing grows below it, and no solution is meant to be as strong. */
const leastPh = 4;

type Found = ReadonlyMap<string, unknown>;

/** The question that a whole message is, by the pattern that it fits. */
export function plainAskOf(kind: PlainWishKind, found: Found, today: LocalDate): Ask {
  const quantity = found.get('quantity') as WantedQuantity;
  switch (kind) {
    case 'ask-container':
      return { kind: 'containers', name: found.get('holder') as string };
    case 'ask-containers':
      return { kind: 'containers', name: null };
    case 'ask-grown':
      return { kind: 'grown' };
    case 'ask-water-source':
      return { kind: 'water-source' };
    case 'ask-urgent':
      return { kind: 'urgent', by: (found.get('future') as Days | undefined)?.until ?? null };
    case 'ask-first':
      return { kind: 'first' };
    case 'ask-trip':
      return { kind: 'what-is-due', system: null };
    case 'ask-ahead':
      return { by: (found.get('future') as Days).until, kind: 'what-is-due', system: null };
    case 'ask-next':
      return { kind: 'coming' };
    case 'ask-fullness':
      return { kind: 'last-reading', system: null, quantity: 'level' };
    case 'ask-water-when':
      return { kind: 'when-next', system: null, duty: 'top-up' };
    case 'ask-lowest':
      return { kind: 'fullest', side: 'low' };
    case 'ask-fullest':
      return { kind: 'fullest', side: 'high' };
    case 'ask-why-thirsty':
      return { kind: 'why-use', side: 'high' };
    case 'ask-why-sober':
      return { kind: 'why-use', side: 'low' };
    case 'ask-week-told': {
      const monday = plusDays(today, -(daysBetween(aMonday, today) % 7));
      return { kind: 'days-told', from: plusDays(monday, -7), to: plusDays(monday, -1) };
    }
    case 'ask-days-told':
      return { kind: 'days-told', from: plusDays(today, -6), to: today };
    case 'ask-compared':
      return { kind: 'compared' };
    case 'ask-safety':
      return { kind: 'safety' };
    case 'ask-trend':
      return { kind: 'show', system: null, quantity: found.get('quantity') ? quantity : null };
    case 'ask-room':
      return { kind: 'room' };
    case 'ask-air':
      return { kind: 'last-reading', system: null, quantity: 'air-temperature' };
    case 'ask-too-high':
      return { kind: 'out-of-range', quantity, side: 'high' };
    case 'ask-too-low':
      return { kind: 'out-of-range', quantity, side: 'low' };
    case 'ask-too-warm':
      return { kind: 'out-of-range', quantity: 'water-temperature', side: 'high' };
    case 'ask-too-cold':
      return { kind: 'out-of-range', quantity: 'water-temperature', side: 'low' };
    case 'ask-why-high':
      return { kind: 'why-reading', quantity, side: 'high' };
    case 'ask-why-low':
      return { kind: 'why-reading', quantity, side: 'low' };
    case 'ask-safe-dose':
      return { kind: 'safety' };
    case 'ask-without':
      return { kind: 'without-supply', system: null, of: found.get('supply') as Supply };
    case 'ask-week-use':
      return { kind: 'use', system: null, from: plusDays(today, -6), to: today };
    case 'ask-water-warm':
      return { kind: 'is-it-right', system: null, quantity: 'water-temperature', value: null };
    case 'ask-ranked':
    case 'ask-most':
      return { isRanked: true, kind: 'use', system: null, from: plusDays(today, -6), to: today };
    case 'ask-target': {
      const value = found.get('low') as number;
      const target = { quantity: value < leastPh ? 'ec' : 'ph', value } as const;
      return { target, kind: 'how-much', system: null, product: null };
    }
    case 'ask-may-dose':
      return {
        wantedMl: found.get('amount') as number,
        kind: 'how-much',
        system: null,
        product: found.get('product') as string,
      };
  }
}

/** The systems that it names; none: it names none. */
export function systemsFound(found: Found): readonly SystemId[] {
  const systems = found.get('systems') as readonly SystemId[] | undefined;
  if (systems) return systems;
  return ['plants', 'system', 'othersystem'].flatMap(
    (slot) => (found.get(slot) as SystemId | undefined) ?? [],
  );
}
