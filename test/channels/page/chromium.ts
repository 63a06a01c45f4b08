import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const executablePath = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';

/** Set where the browser test must not be passed over. */
const isRequired = process.env['BRIMKEEPER_REQUIRE_BROWSER'] === '1';

export const isChromiumHere = existsSync(executablePath);

if (!isChromiumHere && isRequired) {
  throw new Error(`no Chromium at ${executablePath}, expected one; CHROMIUM_PATH says where it is`);
}
if (!isChromiumHere) {
  console.warn(`The browser test is passed over: there is no Chromium at ${executablePath}.`);
}

/** A browser that talks to nobody but the page under test. */
export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath,
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
