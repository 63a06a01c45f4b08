import { asc, eq } from 'drizzle-orm';
import type { GreenhouseId, SetUp } from '../assistant/ports/store.ts';
import type { Greenhouse } from '../greenhouse/greenhouse.ts';
import { greenhouseColumns, greenhouseOf, systemColumns } from './greenhouse-rows.ts';
import type { Database } from './schema/database.ts';
import {
  chores,
  greenhouses,
  members,
  probes,
  stock,
  systems,
} from './schema/greenhouse-tables.ts';

/** @param database a transaction: a greenhouse is several rows. */
export async function insertGreenhouse(
  database: Database,
  greenhouse: Greenhouse,
  atMs: number,
): Promise<GreenhouseId> {
  const [row] = await database
    .insert(greenhouses)
    .values({ ...greenhouseColumns(greenhouse), createdAtMs: atMs, clockMs: atMs })
    .returning({ id: greenhouses.id });
  const id = row!.id as GreenhouseId;
  await insertParts(database, id, greenhouse);
  return id;
}

/** Writes the set-up anew, under the greenhouse's lock. */
export async function replaceSetUp(
  database: Database,
  id: GreenhouseId,
  greenhouse: Greenhouse,
  revision: number,
): Promise<void> {
  await database
    .update(greenhouses)
    .set({ ...greenhouseColumns(greenhouse), setUpRevision: revision })
    .where(eq(greenhouses.id, id));
  for (const table of [members, systems, probes, stock, chores]) {
    await database.delete(table).where(eq(table.greenhouse, id));
  }
  await insertParts(database, id, greenhouse);
}

/** @throws RangeError where there is no such greenhouse. */
export async function selectGreenhouse(database: Database, id: GreenhouseId): Promise<SetUp> {
  const [row] = await database.select().from(greenhouses).where(eq(greenhouses.id, id));
  if (!row) throw new RangeError(`there is no greenhouse ${id}`);
  const greenhouse = greenhouseOf({
    greenhouse: row,
    members: await database
      .select()
      .from(members)
      .where(eq(members.greenhouse, id))
      .orderBy(asc(members.position)),
    systems: await database
      .select()
      .from(systems)
      .where(eq(systems.greenhouse, id))
      .orderBy(asc(systems.position)),
    probes: await database
      .select()
      .from(probes)
      .where(eq(probes.greenhouse, id))
      .orderBy(asc(probes.position)),
    stock: await database
      .select()
      .from(stock)
      .where(eq(stock.greenhouse, id))
      .orderBy(asc(stock.position)),
    chores: await database
      .select()
      .from(chores)
      .where(eq(chores.greenhouse, id))
      .orderBy(asc(chores.position)),
  });
  return { greenhouse, createdAtMs: row.createdAtMs };
}

async function insertParts(database: Database, id: GreenhouseId, parts: Greenhouse): Promise<void> {
  const placed = <T extends object>(items: readonly T[]) =>
    items.map((item, position) => ({ ...item, greenhouse: id, position }));
  if (parts.members.length > 0) await database.insert(members).values(placed(parts.members));
  const kept = [
    ...parts.systems.map(systemColumns),
    ...(parts.formerSystems ?? []).map((system) => ({ ...systemColumns(system), isFormer: true })),
  ];
  if (kept.length > 0) await database.insert(systems).values(placed(kept));
  if (parts.probes.length > 0) await database.insert(probes).values(placed(parts.probes));
  if (parts.stock.length > 0) await database.insert(stock).values(placed(parts.stock));
  if (parts.chores.length > 0) await database.insert(chores).values(placed(parts.chores));
}
