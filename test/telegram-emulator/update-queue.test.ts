import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Clock } from './state/clock.ts';
import { UpdateQueue } from './state/update-queue.ts';

test('whoever confirms what they were given sees every update once and in order', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.constant('push' as const), fc.integer({ min: 1, max: 5 }))),
      (steps) => {
        const queue = new UpdateQueue(new Clock());
        const seen: unknown[] = [];
        let pushed = 0;
        const take = (limit: number): void => {
          const batch = queue.pending().slice(0, limit);
          seen.push(...batch.map((update) => update.wire.message));
          const last = batch.at(-1);
          if (last !== undefined) queue.confirm(last.wire.update_id + 1);
        };
        for (const step of steps) {
          if (step === 'push') queue.push('message', 1, pushed++);
          else take(step);
        }
        take(Number.MAX_SAFE_INTEGER);
        expect(seen).toEqual([...Array(pushed).keys()]);
      },
    ),
  );
});
