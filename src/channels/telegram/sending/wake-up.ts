/** A sleep that can be ended early; a call that comes while nobody sleeps ends the next sleep at once. */
export class WakeUp {
  #isCalled = false;
  #resume: (() => void) | null = null;

  call(): void {
    this.#isCalled = true;
    this.#resume?.();
  }

  async sleep(atMostMs: number): Promise<void> {
    if (!this.#isCalled) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, Math.max(0, atMostMs));
        this.#resume = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    this.#resume = null;
    this.#isCalled = false;
  }
}
