import { z } from 'zod';

/**
 * What can be made out of a greenhouse file whatever else is wrong with it, so that what one part
 * says of another is checked also where a third is faulty. Reading it never fails.
 */
const text = z.string().trim().optional().catch(undefined);
const number = z.number().optional().catch(undefined);

function list<T extends z.ZodType>(item: T, nothing: z.output<T>) {
  return z.array(item.catch(nothing as never)).catch([]);
}

const words = list(text, undefined);

export const glimpseSchema = z
  .object({
    greenhouse: z
      .object({ containers: z.record(z.string(), z.unknown()).catch({}) })
      .catch({ containers: {} }),
    members: list(z.object({ handle: text, role: text }), {}),
    systems: list(
      z.object({
        name: text,
        aliases: words,
        brimL: number,
        lowL: number,
        floods: z.object({ everyMin: number, fillMin: number }).nullable().catch(null),
      }),
      { aliases: [], floods: null },
    ),
    probes: list(z.object({ name: text, measures: words }), { measures: [] }),
    stock: list(z.object({ product: text }), {}),
    chores: list(z.object({ name: text, system: text }), {}),
  })
  .catch({
    greenhouse: { containers: {} },
    members: [],
    systems: [],
    probes: [],
    stock: [],
    chores: [],
  });

export type Glimpse = z.output<typeof glimpseSchema>;
