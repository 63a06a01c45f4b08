import { closeSync, fsyncSync, openSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { PGlite } from '@electric-sql/pglite';
import { NodeFS } from '@electric-sql/pglite/nodefs';

type RuntimeOptions = Parameters<NodeFS['init']>[1];

/** What we use of the WebAssembly runtime's view of a folder on disk. */
interface FolderInRuntime {
  readonly NODEFS: {
    readonly stream_ops: { fsync?: (stream: OpenFile) => number };
    realPath(node: unknown): string;
  };
}

interface OpenFile {
  /** The file's descriptor in Node; a directory has none. */
  readonly nfd?: number;
  readonly node: unknown;
}

/**
 * A folder that PGlite keeps its database in, and whose files reach the disk when PostgreSQL asks
 * for it. PGlite's own folder leaves that request out, and starts PostgreSQL with it switched off:
 * after a power cut, what had been acknowledged could be gone or the database ruined. With it, and
 * with `fsync` on, the embedded database keeps PostgreSQL's own promise: what is committed stays.
 */
export class DurableFolder extends NodeFS {
  readonly #onSync: ((path: string) => void) | undefined;

  /** @param onSync called after each file or directory that was brought to the disk. */
  constructor(folder: string, onSync?: (path: string) => void) {
    super(folder);
    this.#onSync = onSync;
  }

  override async init(pg: PGlite, options: RuntimeOptions) {
    const { emscriptenOpts } = await super.init(pg, options);
    const preRun = [...(emscriptenOpts.preRun ?? [])];
    preRun.push((runtime) => {
      this.#bringToDisk(runtime);
    });
    return { emscriptenOpts: { ...emscriptenOpts, preRun } };
  }

  #bringToDisk({ NODEFS }: FolderInRuntime): void {
    NODEFS.stream_ops.fsync = ({ nfd, node }) => {
      const path = NODEFS.realPath(node);
      if (nfd === undefined) syncDirectory(path);
      else fsyncSync(nfd);
      this.#onSync?.(path);
      return 0;
    };
  }
}

/** Makes new, renamed and removed names of a directory outlast a power cut. */
export function syncDirectory(path: string): void {
  // Windows opens no directories; its file systems keep their names in order by themselves.
  if (process.platform === 'win32') return;
  const descriptor = openSync(path, 'r');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}

/** Brings a whole folder to the disk, which nothing writes to meanwhile. */
export function syncTree(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) syncTree(path);
    else syncFile(path);
  }
  syncDirectory(folder);
}

function syncFile(path: string): void {
  const descriptor = openSync(path, 'r+');
  try {
    fsyncSync(descriptor);
  } finally {
    closeSync(descriptor);
  }
}
