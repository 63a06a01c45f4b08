import type { RequestParameters } from '../http/request-parameters.ts';

/** The `allowed_updates` of a call; undefined keeps the choice made before. */
export const readAllowedUpdates = (
  parameters: RequestParameters,
): readonly string[] | undefined => {
  const kinds = parameters.json('allowed_updates');
  return Array.isArray(kinds) ? kinds.filter((kind) => typeof kind === 'string') : undefined;
};
