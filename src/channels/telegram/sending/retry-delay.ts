const firstMs = 1000;
const longestMs = 5 * 60_000;

/** How long to wait after so many attempts: one second, doubled each time, five minutes at most. */
export function retryDelayMs(attempts: number): number {
  return Math.min(firstMs * 2 ** Math.min(attempts, 20), longestMs);
}

/** A message older than this is of no use to anyone any more. */
export const staleAfterMs = 24 * 3_600_000;
