export interface OriginHeaders {
  readonly host: string | undefined;
  readonly origin: string | undefined;
  readonly fetchSite: string | undefined;
}

/**
 * Whether a form was sent from a page of ours. Browsers name the sending site with every form, in
 * `Sec-Fetch-Site` (on https and localhost only) or `Origin`; the scheme is left out of account,
 * since https may end before it reaches us.
 */
export function isSameOrigin({ host, origin, fetchSite }: OriginHeaders): boolean {
  if (fetchSite !== undefined) return fetchSite === 'same-origin';
  if (host === undefined || origin === undefined) return false;
  try {
    return new URL(origin).host === new URL(`http://${host}`).host;
  } catch {
    // `null`, from a page without an origin.
    return false;
  }
}
