/** How fast the emulated server is; a test may change any of it at any time. */
export type Pace = {
  /** Every answer waits this long first. */
  answerLatencyMs: number;
  /** The seconds between two tries of a webhook are multiplied by this. */
  webhookRetryFactor: number;
  /** How long one webhook request may take before it counts as failed. */
  webhookTimeoutMs: number;
  /** The seconds a long poll may wait are multiplied by this. */
  longPollFactor: number;
  /** How old a pressed button may grow before an answer is refused. The platform does not document it; about this is common practice. */
  callbackLifetimeS: number;
};

/** The pace of a test: webhook retries a hundred times faster than real ones, all else as it is. */
export const testPace = (): Pace => ({
  answerLatencyMs: 0,
  webhookRetryFactor: 0.01,
  webhookTimeoutMs: 60_000,
  longPollFactor: 1,
  callbackLifetimeS: 15,
});
