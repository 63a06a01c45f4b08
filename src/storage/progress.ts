/** What opening the database is at, for people who wait; the first making takes some seconds. */
export type Progress = {
  readonly kind: 'making-database' | 'opening-database' | 'migrating-database' | 'ready';
};
