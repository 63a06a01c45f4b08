import type { EntryDraft } from '../../greenhouse/entry.ts';
import type { System } from '../../greenhouse/system.ts';
import type { Doubt } from '../doubt.ts';
import { isBelievable } from '../numbers/quantity-of-measure.ts';
import type { Frame } from '../reading/frame.ts';
import type { Choice, Statement } from '../statement.ts';
import { fillSystem } from './fill-system.ts';
import type { Answered } from './fill-value.ts';
import type { Said } from './what-is-said.ts';
import { again } from './without-system.ts';

/**
 * `ph down` after `added 5 ml`, of which neither the product nor the system was told: what is told is kept, and what
 * is missing still is asked for. Null: neither is told, or it was asked of a system that was.
 */
export function productTold(
  frame: Frame,
  doubt: Doubt,
  said: Said,
  answered: Answered,
): readonly Statement[] | null {
  const { reason, waiting } = doubt;
  if (reason.kind !== 'which-product' || waiting?.for !== 'system' || said.measure) return null;
  const [draft] = waiting.drafts;
  const { systems } = frame.context.greenhouse;
  const told = systems.filter(({ id }) => said.systems.includes(id));
  if (!draft || told.length > 1) return null;
  const system = told[0] ?? systems.find(({ id }) => id === draft.system) ?? null;
  const { product } = said;
  if (product === null) return system ? [whichProduct(frame, doubt, draft, system)] : null;
  const dose = { ...draft, product };
  if (system) return fillSystem(frame, doubt, [dose], system, answered);
  const choices = systems.flatMap(({ id }): Choice[] => {
    const own = { ...dose, system: id };
    return fits(frame, own) ? [{ label: { kind: 'system', system: id }, drafts: [own] }] : [];
  });
  return [
    again(frame, {
      reason: { kind: 'which-system', quantity: 'dose' },
      choices,
      waiting: { for: 'system', drafts: [dose] },
    }),
  ];
}

function whichProduct(frame: Frame, doubt: Doubt, draft: EntryDraft, { id }: System): Statement {
  const own = { ...draft, system: id };
  const stock = fits(frame, own) ? frame.context.greenhouse.stock : [];
  return again(frame, {
    ...doubt,
    choices: stock.map(
      ({ product }): Choice => ({
        label: { kind: 'product', product },
        drafts: [{ ...own, product }],
      }),
    ),
    waiting: { for: 'system', drafts: [own] },
  });
}

function fits({ context }: Frame, { quantity, value, system }: EntryDraft): boolean {
  const of = context.greenhouse.systems.find(({ id }) => id === system);
  return isBelievable(quantity, value, of ?? null);
}
