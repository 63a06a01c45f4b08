import { randomUUID } from 'node:crypto';
import {
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { DatabaseRefused } from '../refusal.ts';
import { isProcessAlive, ownProcessMark, type ProcessMark, processPlace } from './process-mark.ts';

/**
 * One process a folder: two would ruin the embedded database without a word.
 *
 * Each process that wants the folder first writes a file of its own, then looks at the others'.
 * Of two that come at once the later to look sees the other's, so that never both go on; it may be
 * that neither does. A file is only ever removed by its owner, or when its process is dead. There
 * is no moment in which a lock is taken over, and so none in which two can take it.
 */
interface Claim {
  readonly process: ProcessMark;
  /** The machine or container, within which process numbers mean something. */
  readonly place: string;
}

export interface FolderLock {
  release(): void;
}

const claimName = /^lock-[0-9a-f-]+$/;
/** Another machine's or container's processes cannot be asked: a claim from there lives by its heartbeat. */
const heartbeatMs = 5_000;
const deadAfterMs = 30_000;

/** The claims that this process holds: another open database of its own is no dead process. */
const ownClaims = new Set<string>();

/** @throws DatabaseRefused where another process has the folder. */
export function lockFolder(folder: string): FolderLock {
  const name = `lock-${randomUUID()}`;
  const file = join(folder, name);
  const claim: Claim = { process: ownProcessMark(), place: processPlace() };
  // Renamed into place, so that nobody reads half a claim.
  writeFileSync(join(folder, `new-${name}`), JSON.stringify(claim));
  ownClaims.add(name);
  renameSync(join(folder, `new-${name}`), file);
  const holder = otherHolder(folder, name);
  if (holder) {
    ownClaims.delete(name);
    rmSync(file, { force: true });
    throw new DatabaseRefused({ kind: 'folder-in-use', folder, pid: holder.process.pid });
  }
  const heartbeat = setInterval(beat, heartbeatMs, file).unref();
  return {
    release: () => {
      clearInterval(heartbeat);
      ownClaims.delete(name);
      rmSync(file, { force: true });
    },
  };
}

function otherHolder(folder: string, ownName: string): Claim | null {
  for (const name of readdirSync(folder)) {
    if (!claimName.test(name) || name === ownName) continue;
    const file = join(folder, name);
    const claim = readClaim(file);
    if (claim && isHeld(name, file, claim)) return claim;
    rmSync(file, { force: true });
  }
  return null;
}

function isHeld(name: string, file: string, claim: Claim): boolean {
  if (ownClaims.has(name)) return true;
  if (claim.place !== processPlace()) return Date.now() - lastBeatMs(file) < deadAfterMs;
  return isProcessAlive(claim.process);
}

function readClaim(file: string): Claim | null {
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as Claim;
  } catch {
    // Released meanwhile, or cut short by a power cut.
    return null;
  }
}

function lastBeatMs(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}

function beat(file: string): void {
  const now = new Date();
  try {
    utimesSync(file, now, now);
  } catch {
    // Somebody cleared the folder away; the database will say so.
  }
}
