import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import { pid } from 'node:process';

/** A process, told from a later one under the same number where the system tells when it began. */
export interface ProcessMark {
  readonly pid: number;
  /** Linux: the boot and the clock ticks since it; null elsewhere. */
  readonly began: string | null;
}

export function ownProcessMark(): ProcessMark {
  return { pid, began: beganOf(pid) };
}

/** The machine, and where the system tells, the container: two may count their processes alike. */
export function processPlace(): string {
  try {
    return `${hostname()} ${readlinkSync('/proc/self/ns/pid')}`;
  } catch {
    return hostname();
  }
}

/** Whether a process of this place, and not this one, still runs. */
export function isProcessAlive(mark: ProcessMark): boolean {
  // Our own number on a mark that is not ours was left by an earlier process.
  if (mark.pid === pid) return false;
  return isPidAlive(mark.pid) && beganOf(mark.pid) === mark.began;
}

function isPidAlive(other: number): boolean {
  try {
    // Signal 0 only asks.
    process.kill(other, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function beganOf(other: number): string | null {
  try {
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    const stat = readFileSync(`/proc/${other}/stat`, 'utf8');
    // Field 22 of proc(5), counted from behind the name, which may hold anything but a last `)`.
    const ticks = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
    return `${boot}/${ticks ?? ''}`;
  } catch {
    return null;
  }
}
