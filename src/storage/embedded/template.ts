import { createHash, randomUUID } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { drizzle } from 'drizzle-orm/pglite';
import { migrate } from 'drizzle-orm/pglite/migrator';
import { knownMigrations, migrationsPlace } from '../migrations.ts';
import { makingParameters, unsyncedOptions } from './pglite-options.ts';

/**
 * An empty, migrated database as a compressed archive. Making one takes seconds, loading it half a
 * second, so that it is kept in a folder that may be cleared at any time.
 */
export interface TemplateOptions {
  readonly migrationsFolder: string;
  /** Absent: nothing is kept. */
  readonly cacheFolder?: string;
  readonly onMaking: () => void;
}

/** A database in memory, loaded from the template or else made, and the template kept. */
export async function openInMemory(options: TemplateOptions): Promise<PGlite> {
  const kept = readKept(options);
  if (kept) {
    const loaded = await load(kept);
    if (loaded) return loaded;
  }
  const made = await make(options);
  if (options.cacheFolder !== undefined) keep(options, await archiveOf(made));
  return made;
}

/** The template itself, to be loaded into a folder. */
export async function templateArchive(options: TemplateOptions): Promise<Buffer> {
  const kept = readKept(options);
  if (kept) return kept;
  const made = await make(options);
  const archive = await archiveOf(made);
  await made.close();
  keep(options, archive);
  return archive;
}

async function make({ migrationsFolder, onMaking }: TemplateOptions): Promise<PGlite> {
  onMaking();
  const made = await PGlite.create(unsyncedOptions);
  await migrate(drizzle(made), { migrationsFolder, ...migrationsPlace });
  await made.exec('checkpoint');
  return made;
}

async function load(archive: Buffer): Promise<PGlite | null> {
  try {
    return await PGlite.create({ ...unsyncedOptions, loadDataDir: blobOf(archive) });
  } catch {
    // Whole by its checksum, yet not to be loaded: it is made anew.
    return null;
  }
}

export function blobOf(archive: Buffer): Blob {
  return new Blob([new Uint8Array(archive)]);
}

async function archiveOf(database: PGlite): Promise<Buffer> {
  return Buffer.from(await (await database.dumpDataDir('gzip')).arrayBuffer());
}

const checksumBytes = 32;

function checksumOf(archive: Buffer): Buffer {
  return createHash('sha256').update(archive).digest();
}

/** The kept archive, where there is a whole one for this PGlite and these migrations. */
function readKept(options: TemplateOptions): Buffer | null {
  if (options.cacheFolder === undefined) return null;
  let file: Buffer;
  try {
    file = readFileSync(join(options.cacheFolder, keptName(options)));
  } catch {
    return null;
  }
  const archive = file.subarray(checksumBytes);
  return checksumOf(archive).equals(file.subarray(0, checksumBytes)) ? archive : null;
}

function keep(options: TemplateOptions, archive: Buffer): void {
  if (options.cacheFolder === undefined) return;
  const file = join(options.cacheFolder, keptName(options));
  const unfinished = `${file}.${randomUUID()}`;
  try {
    mkdirSync(options.cacheFolder, { recursive: true });
    try {
      writeFileSync(unfinished, Buffer.concat([checksumOf(archive), archive]));
      renameSync(unfinished, file);
    } finally {
      rmSync(unfinished, { force: true });
    }
  } catch {
    // A folder that cannot be written costs time at the next start, nothing else.
  }
}

function keptName({ migrationsFolder }: TemplateOptions): string {
  const hash = createHash('sha256');
  for (const part of [pgliteVersion(), makingParameters]) hash.update(`${part}\n`);
  for (const migration of knownMigrations(migrationsFolder)) hash.update(`${migration.hash}\n`);
  return `empty-database-${hash.digest('hex').slice(0, 20)}`;
}

/** PGlite does not export its package.json; its folder holds it above the module. */
function pgliteVersion(): string {
  const module = createRequire(import.meta.url).resolve('@electric-sql/pglite');
  const text = readFileSync(join(dirname(module), '..', 'package.json'), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}
