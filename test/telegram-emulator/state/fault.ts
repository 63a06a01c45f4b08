import { Refusal, tooManyRequests } from '../wire/refusal.ts';

/** What can go wrong with a call. */
export type Fault =
  | { readonly kind: 'refuse'; readonly refusal: Refusal }
  /** An answer that is no JSON, as a proxy in between gives it. */
  | { readonly kind: 'garble'; readonly status: number; readonly body: string }
  /** The connection goes before the call is carried out. */
  | { readonly kind: 'drop-before' }
  /** The call is carried out, the answer is lost. */
  | { readonly kind: 'drop-after' }
  | { readonly kind: 'slow'; readonly delayMs: number }
  /** The call is neither carried out nor answered. */
  | { readonly kind: 'hang' };

export const flooded = (retryAfterS: number): Fault => ({
  kind: 'refuse',
  refusal: tooManyRequests(retryAfterS),
});

export const serverError = (code = 500, description = 'Internal Server Error'): Fault => ({
  kind: 'refuse',
  refusal: new Refusal(code, description),
});

export const badGateway = (): Fault => ({
  kind: 'garble',
  status: 502,
  body: '<html><head><title>502 Bad Gateway</title></head></html>',
});

export const refused = (code: number, description: string): Fault => ({
  kind: 'refuse',
  refusal: new Refusal(code, description),
});

export const dropBefore = (): Fault => ({ kind: 'drop-before' });
export const dropAfter = (): Fault => ({ kind: 'drop-after' });
export const slow = (delayMs: number): Fault => ({ kind: 'slow', delayMs });
export const hang = (): Fault => ({ kind: 'hang' });
