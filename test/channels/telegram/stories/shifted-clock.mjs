// Loaded before the program by the tests: the built program itself knows nothing of it. Its clock
// runs ahead of the real one, as far as the test says; long timers may be made shorter.
const { TEST_CLOCK_AHEAD_MS = '0', TEST_LONG_TIMERS_SHORTENED_BY = '1' } = process.env;
const longTimerMs = 10_000;
const shortenedBy = Number(TEST_LONG_TIMERS_SHORTENED_BY);
let aheadMs = Number(TEST_CLOCK_AHEAD_MS);

const RealDate = Date;
globalThis.Date = class extends RealDate {
  constructor(...args) {
    if (args.length === 0) super(RealDate.now() + aheadMs);
    else super(...args);
  }

  static now() {
    return RealDate.now() + aheadMs;
  }
};

const setRealTimeout = setTimeout;
globalThis.setTimeout = Object.assign(
  (act, ms = 0, ...args) => setRealTimeout(act, ms >= longTimerMs ? ms / shortenedBy : ms, ...args),
  setRealTimeout,
);

// What is done every few seconds is due at once when the clock is put forward.
const everySoOften = new Map();
const setRealInterval = setInterval;
const clearRealInterval = clearInterval;
globalThis.setInterval = (act, ms, ...args) => {
  const timer = setRealInterval(act, ms, ...args);
  everySoOften.set(timer, () => act(...args));
  return timer;
};
globalThis.clearInterval = (timer) => {
  everySoOften.delete(timer);
  clearRealInterval(timer);
};

process.on('message', (message) => {
  aheadMs = message.aheadMs;
  process.send?.({ aheadMs });
  for (const act of everySoOften.values()) act();
});
process.channel?.unref();
