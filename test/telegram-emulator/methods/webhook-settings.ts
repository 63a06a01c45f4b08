import { badRequest } from '../wire/refusal.ts';
import { readAllowedUpdates } from './allowed-updates.ts';
import type { Method } from './method.ts';

/** Documented: 40 if left out, 1-100. */
const DEFAULT_CONNECTIONS = 40;

/** Unlike the real server this one takes plain `http` addresses, since a test has no certificate. */
export const setWebhook: Method = ({ platform, parameters }) => {
  const url = parameters.text('url') ?? '';
  const secret = parameters.text('secret_token');
  if (secret !== undefined && secret.length > 256) return badRequest('secret token is too long');
  if (secret !== undefined && !/^[\w-]*$/.test(secret)) {
    return badRequest('secret token contains unallowed characters');
  }
  if (url !== '' && !/^https?:\/\/[^/]+/u.test(url)) {
    return badRequest('bad webhook: An HTTPS URL must be provided for webhook');
  }
  if (parameters.flag('drop_pending_updates')) platform.updates.clear();
  platform.updates.allow(readAllowedUpdates(parameters) ?? platform.updates.allowed);
  const maxConnections = parameters.integer('max_connections') ?? DEFAULT_CONNECTIONS;
  platform.webhook.set(
    url === '' ? undefined : { url, secret: secret === '' ? undefined : secret, maxConnections },
  );
  if (url !== '') platform.longPoll.interrupt('terminated by setWebhook request');
  return { result: true };
};

export const deleteWebhook: Method = ({ platform, parameters }) => {
  if (parameters.flag('drop_pending_updates')) platform.updates.clear();
  platform.webhook.set(undefined);
  return { result: true };
};

export const getWebhookInfo: Method = ({ platform }) => {
  const { settings, lastError } = platform.webhook;
  const { allowed } = platform.updates;
  return {
    result: {
      url: settings?.url ?? '',
      has_custom_certificate: false,
      pending_update_count: platform.updates.pending().length,
      ...(settings === undefined ? {} : { max_connections: settings.maxConnections }),
      ...(lastError === undefined
        ? {}
        : { last_error_date: lastError.atS, last_error_message: lastError.message }),
      ...(allowed.length === 0 ? {} : { allowed_updates: allowed }),
    },
  };
};
