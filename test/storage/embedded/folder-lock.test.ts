import { mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { lockFolder } from '../../../src/storage/embedded/folder-lock.ts';
import { ownProcessMark, processPlace } from '../../../src/storage/embedded/process-mark.ts';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'brimkeeper-'));
});

afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const minuteMs = 60_000;

function claim(content: string | object, ageMs = 0): void {
  const file = join(folder, 'lock-0a1b');
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  const beat = new Date(Date.now() - ageMs);
  utimesSync(file, beat, beat);
}

function isFree(): boolean {
  try {
    lockFolder(folder).release();
    return true;
  } catch {
    return false;
  }
}

describe('the lock of a folder', () => {
  it('is free where a later process has the number of the one that held it', () => {
    claim({ process: { pid: process.ppid, began: 'an earlier boot/1' }, place: processPlace() });
    expect(isFree()).toBe(true);
    claim({ process: { ...ownProcessMark(), began: null }, place: processPlace() });
    expect(isFree()).toBe(true);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('goes by the heartbeat where the process is of another machine or container', () => {
    const elsewhere = { process: { pid: 1, began: 'x/1' }, place: 'another machine' };
    claim(elsewhere);
    expect(isFree()).toBe(false);
    claim(elsewhere, minuteMs);
    expect(isFree()).toBe(true);
  });

  it('is free where a power cut left half a claim', () => {
    claim('{"process":');
    expect(isFree()).toBe(true);
    expect(readdirSync(folder)).toEqual([]);
  });
});
