/** Why a database is not opened. Nothing in it was changed. */
export type Refusal =
  | { readonly kind: 'newer-database'; readonly unknownMigrations: number }
  | { readonly kind: 'folder-in-use'; readonly folder: string; readonly pid: number }
  | { readonly kind: 'unreachable'; readonly because: string };

export class DatabaseRefused extends Error {
  readonly refusal: Refusal;

  constructor(refusal: Refusal, options?: ErrorOptions) {
    super(refusalSentence(refusal), options);
    this.name = 'DatabaseRefused';
    this.refusal = refusal;
  }
}

function refusalSentence(refusal: Refusal): string {
  switch (refusal.kind) {
    case 'newer-database':
      return `The database was written by a newer version of Brimkeeper: ${refusal.unknownMigrations} of its migrations are not known here. Start the newer version.`;
    case 'folder-in-use':
      return `The folder ${refusal.folder} is in use by another process (${refusal.pid}). Stop that one first, or choose another folder: two processes would ruin the database.`;
    case 'unreachable':
      return `The database cannot be reached: ${refusal.because}`;
  }
}
