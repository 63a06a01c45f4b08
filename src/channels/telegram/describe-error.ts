import { GrammyError, HttpError } from 'grammy';
import { failureOf } from './sending/failure.ts';

/**
 * An error in words for a log. The library's own message of a broken connection holds the address,
 * and the address holds the token: of those only the kind is told.
 */
export function describeError(error: unknown): string {
  if (error instanceof GrammyError) {
    return `${error.method}: ${error.error_code} ${error.description}`;
  }
  if (error instanceof HttpError) {
    const failure = failureOf(error);
    return failure && 'because' in failure ? `no answer (${failure.because})` : 'no answer';
  }
  return error instanceof Error ? `${error.name}: ${error.message}` : 'an unknown error';
}

/** Takes a token out of any text, and its secret half as well. */
export function withoutToken(text: string, token: string): string {
  const secret = token.slice(token.indexOf(':') + 1);
  return text.replaceAll(token, '[token]').replaceAll(secret, '[token]');
}
