import type { Progress } from '../storage/progress.ts';

const sentences: Readonly<Record<Progress['kind'], string>> = {
  'making-database': 'Making the database; the first time takes some ten seconds …',
  'opening-database': 'Opening the database …',
  'migrating-database': 'Bringing the database up to date …',
  ready: 'The database is ready.',
};

/** Tells people who wait what opening the database is at; on standard error, out of replies' way. */
export function tellProgress({ kind }: Progress): void {
  console.error(sentences[kind]);
}
