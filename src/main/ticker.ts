const tickMs = 2000;

/** Does something every two seconds, one at a time, until stopped. */
export function startTicking(act: () => Promise<void>): { readonly stop: () => Promise<void> } {
  let running: Promise<void> = Promise.resolve();
  let isBusy = false;
  const timer = setInterval(() => {
    if (isBusy) return;
    isBusy = true;
    running = act().finally(() => {
      isBusy = false;
    });
  }, tickMs);
  return {
    stop: async () => {
      clearInterval(timer);
      await running;
    },
  };
}
