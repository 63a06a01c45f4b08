/** One open page, waiting for something to show. */
export class Watcher {
  isStopped = false;
  #isWoken = false;
  #resume: (() => void) | null = null;

  wake(): void {
    this.#isWoken = true;
    this.#resume?.();
  }

  stop(): void {
    this.isStopped = true;
    this.wake();
  }

  /** Waits until woken, at once where that happened since the last wait, or for the given time. */
  async next(atMostMs: number): Promise<void> {
    if (!this.#isWoken) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, atMostMs);
        this.#resume = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    this.#resume = null;
    this.#isWoken = false;
  }
}

/** The open pages. They are only woken; each reads for itself what is new to it. */
export class Watchers {
  readonly #watchers = new Set<Watcher>();
  #isClosed = false;

  get count(): number {
    return this.#watchers.size;
  }

  add(): Watcher {
    const watcher = new Watcher();
    if (this.#isClosed) watcher.stop();
    this.#watchers.add(watcher);
    return watcher;
  }

  remove(watcher: Watcher): void {
    watcher.stop();
    this.#watchers.delete(watcher);
  }

  wakeAll(): void {
    for (const watcher of this.#watchers) watcher.wake();
  }

  /** A browser that comes back over a connection it kept is stopped as well. */
  stopAll(): void {
    this.#isClosed = true;
    for (const watcher of this.#watchers) watcher.stop();
  }
}
