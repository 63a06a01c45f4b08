/**
 * Looks now and after every change until something is found.
 * Rejects after `timeoutMs`, saying what `found` instead.
 */
export const eventually = <T>(
  look: () => T | undefined,
  changes: Set<() => void>,
  timeoutMs: number,
  instead: () => string,
): Promise<T> => {
  const present = look();
  if (present !== undefined) return Promise.resolve(present);
  return new Promise<T>((resolve, reject) => {
    const finish = (settle: () => void): void => {
      clearTimeout(timer);
      changes.delete(listener);
      settle();
    };
    const listener = (): void => {
      const found = look();
      if (found !== undefined) {
        finish(() => {
          resolve(found);
        });
      }
    };
    const timer = setTimeout(() => {
      finish(() => {
        reject(new Error(`Waited ${timeoutMs} ms in vain: ${instead()}`));
      });
    }, timeoutMs);
    changes.add(listener);
  });
};
