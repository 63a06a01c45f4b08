import { setImmediate } from 'node:timers/promises';

/**
 * Resolves when the operating system has what the driver was asked to send before: the driver gathers
 * it until the next turn of the event loop. It reaches the server even if this process is killed then.
 * Only a statement's first use on a connection takes longer, since its parameters' types are asked for.
 */
export async function handedOn(): Promise<void> {
  // The first turn may have begun before the driver was reached, the second has not.
  await setImmediate();
  await setImmediate();
}
