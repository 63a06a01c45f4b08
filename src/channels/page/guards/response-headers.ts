import type { MiddlewareHandler } from 'hono';

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Nothing from elsewhere runs in the page, and nobody puts it in a frame. */
export const responseHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  c.header('Content-Security-Policy', policy);
  c.header('X-Content-Type-Options', 'nosniff');
  // With `no-referrer` browsers hide the origin of forms, which the same-origin check reads.
  c.header('Referrer-Policy', 'same-origin');
  c.header('Cross-Origin-Opener-Policy', 'same-origin');
  c.header('Cross-Origin-Resource-Policy', 'same-origin');
  if (!c.res.headers.has('Cache-Control')) c.header('Cache-Control', 'no-store');
};
