/**
 * The emulator's clock: real time plus what a test has put on top. It dates messages, ages callback
 * queries and lets unfetched updates expire; it does not wake timers.
 */
export class Clock {
  #offsetMs = 0;

  nowMs(): number {
    return Date.now() + this.#offsetMs;
  }

  /** Unix seconds, as the Bot API dates things. */
  nowS(): number {
    return Math.floor(this.nowMs() / 1000);
  }

  advance(ms: number): void {
    this.#offsetMs += ms;
  }

  /** From now on the clock runs on from this instant. */
  set(instant: Date): void {
    this.#offsetMs = instant.getTime() - Date.now();
  }
}
