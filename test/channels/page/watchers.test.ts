import { describe, expect, it } from 'vitest';
import { Watchers } from '../../../src/channels/page/watchers.ts';

const never = 3_600_000;

describe('an open page that waits for news', () => {
  it('is woken while it waits', async () => {
    const watchers = new Watchers();
    const waiting = watchers.add().next(never);
    watchers.wakeAll();
    await expect(waiting).resolves.toBeUndefined();
  });

  it('misses no waking that came while it was busy', async () => {
    const watchers = new Watchers();
    const watcher = watchers.add();
    watchers.wakeAll();
    watchers.wakeAll();
    await expect(watcher.next(never)).resolves.toBeUndefined();
  });

  it('looks by itself after a while', async () => {
    await expect(new Watchers().add().next(1)).resolves.toBeUndefined();
  });

  it('is let go when the page closes', async () => {
    const watchers = new Watchers();
    const watcher = watchers.add();
    const waiting = watcher.next(never);
    watchers.remove(watcher);
    await waiting;
    expect(watcher.isStopped).toBe(true);
    expect(watchers.count).toBe(0);
  });
});
