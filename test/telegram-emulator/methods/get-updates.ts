import { conflict, Refusal } from '../wire/refusal.ts';
import { readAllowedUpdates } from './allowed-updates.ts';
import type { Method } from './method.ts';

/** Documented: 1-100, 100 if left out. */
const MOST_UPDATES = 100;
/** The public server waits no longer than this. */
const LONGEST_WAIT_S = 50;

export const getUpdates: Method = async ({ platform, parameters, gone }) => {
  if (platform.webhook.settings !== undefined) {
    return conflict(
      "can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
    );
  }
  const limit = parameters.integer('limit') ?? MOST_UPDATES;
  const waitS = Math.min(Math.max(parameters.integer('timeout') ?? 0, 0), LONGEST_WAIT_S);
  platform.updates.allow(readAllowedUpdates(parameters) ?? platform.updates.allowed);
  platform.updates.confirm(parameters.integer('offset') ?? 0);
  const taken = await platform.longPoll.take(
    limit < 1 || limit > MOST_UPDATES ? MOST_UPDATES : limit,
    waitS * 1000 * platform.pace.longPollFactor,
    gone,
  );
  return taken instanceof Refusal ? taken : { result: taken };
};
