import { isIP } from 'node:net';

/** Endings of names that no public name server answers for. */
const homeEndings = ['.local', '.localhost', '.lan', '.home', '.internal', '.home.arpa'];

/**
 * Whether the page may be visited under this `Host`. A stranger's site can point a public name of
 * its own at this machine and then read the page as if it were its own; so addresses, names without
 * a dot and names of home networks are let in, public names only where they were set.
 */
export function isAllowedHost(host: string | undefined, hostNames: readonly string[]): boolean {
  const name = hostNameOf(host);
  if (name === null) return false;
  if (isIP(name) !== 0 || !name.includes('.')) return true;
  return (
    homeEndings.some((ending) => name.endsWith(ending)) ||
    hostNames.some((known) => known.toLowerCase() === name)
  );
}

/** `[::1]:8080` is `::1`; null where it is no host at all. */
function hostNameOf(host: string | undefined): string | null {
  const found = /^(?:\[([\da-f:.]+)\]|([\w.-]+))(?::\d{1,5})?$/i.exec(host ?? '');
  return found ? (found[1] ?? found[2] ?? '').toLowerCase().replace(/\.$/, '') : null;
}
