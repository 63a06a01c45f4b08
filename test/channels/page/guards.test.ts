import { describe, expect, it } from 'vitest';
import { isAllowedHost } from '../../../src/channels/page/guards/allowed-host.ts';
import { isSameOrigin } from '../../../src/channels/page/guards/same-origin.ts';

describe('the host a page is visited under', () => {
  it.each([
    'localhost',
    'localhost:4180',
    '127.0.0.1:4180',
    '192.168.1.20',
    '[::1]:4180',
    '[fe80::1]',
    'greenhouse',
    'greenhouse.local:4180',
    'GREENHOUSE.LOCAL',
    'box.lan',
    'box.home.arpa',
  ])('may be %s, which no stranger can point here', (host) => {
    expect(isAllowedHost(host, [])).toBe(true);
  });

  it.each([
    'example.org',
    'a.example.org:4180',
    'local.example.org',
    '127.0.0.1.example.org',
    '',
    'a b',
    '[::1',
  ])('may not be "%s" unless it was set', (host) => {
    expect(isAllowedHost(host, [])).toBe(false);
    expect(isAllowedHost(undefined, [])).toBe(false);
  });

  it('may be a public name that was set, in any case and with any port', () => {
    expect(isAllowedHost('Duties.Example.org:8443', ['duties.example.org'])).toBe(true);
    expect(isAllowedHost('other.example.org', ['duties.example.org'])).toBe(false);
  });
});

describe('where a form was sent from', () => {
  const host = 'localhost:4180';

  it('is trusted where the browser names our own site', () => {
    expect(isSameOrigin({ host, origin: 'http://localhost:4180', fetchSite: undefined })).toBe(
      true,
    );
    expect(isSameOrigin({ host, origin: undefined, fetchSite: 'same-origin' })).toBe(true);
  });

  it('is trusted where https ended on the way to us', () => {
    const origin = 'https://greenhouse.example';
    expect(isSameOrigin({ host: 'greenhouse.example', origin, fetchSite: undefined })).toBe(true);
  });

  it.each([
    ['another site', 'http://elsewhere.example', undefined],
    ['another port of this machine', 'http://localhost:8080', undefined],
    ['a page without an origin', 'null', undefined],
    ['nobody', undefined, undefined],
    ['a sister site, whatever origin it claims', 'http://localhost:4180', 'same-site'],
    ['another site by its own word', 'http://localhost:4180', 'cross-site'],
  ])('is not trusted where it is %s', (_who, origin, fetchSite) => {
    expect(isSameOrigin({ host, origin, fetchSite })).toBe(false);
  });
});
