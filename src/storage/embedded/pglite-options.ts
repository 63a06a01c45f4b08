import { PGlite, type PGliteOptions, types } from '@electric-sql/pglite';
import { jsonTypeOid } from '../schema/column-types.ts';

/** Instead of 128 MB: a household's log is small, and so are the machines it runs on. */
const sharedBuffers = ['-c', 'shared_buffers=16MB'];

/** Segments of the write-ahead log of 1 MB, not 16: a new database is smaller by half. */
const initDbStartParams = ['--wal-segsize=1'];

const asText = (text: string): string => text;

const sharedOptions: PGliteOptions = {
  initDbStartParams,
  // Left as text: the schema's documents and dates are read and written by the schema.
  parsers: { [jsonTypeOid]: asText, [types.DATE]: asText },
};

/** As PGlite has it: nothing is brought to the disk, which in memory there is none of. */
export const unsyncedOptions: PGliteOptions = {
  ...sharedOptions,
  startParams: [...PGlite.defaultStartParams, ...sharedBuffers],
};

/** `-F` switches fsync off. The default method, fdatasync, is one that PGlite's runtime leaves out. */
export const durableOptions: PGliteOptions = {
  ...sharedOptions,
  startParams: [
    ...PGlite.defaultStartParams.filter((param) => param !== '-F'),
    ...sharedBuffers,
    '-c',
    'fsync=on',
    '-c',
    'wal_sync_method=fsync',
  ],
};

/** What a database made with these options depends on, besides PGlite's version. */
export const makingParameters = initDbStartParams.join(' ');
