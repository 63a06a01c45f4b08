import type { Browser, BrowserContextOptions, Page as Tab } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Store } from '../../../src/assistant/ports/store.ts';
import { openTestStore } from '../../storage/open-test-store.ts';
import { faintTexts, smallTargets } from './checks-in-page.ts';
import { isChromiumHere, openBrowser } from './chromium.ts';
import { type PageUnderTest, pageUnderTest, quarryLane } from './page-under-test.ts';

const phone: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  isMobile: true,
  hasTouch: true,
};
const desktop: BrowserContextOptions = { viewport: { width: 1280, height: 800 } };

describe.skipIf(!isChromiumHere)('the page in Chromium', () => {
  let store: Store;
  let browser: Browser;
  const open: PageUnderTest[] = [];
  /** What a browser complains about: a script that fails, a policy that is broken. */
  const complaints: string[] = [];

  beforeAll(async () => {
    store = await openTestStore();
    browser = await openBrowser();
  });
  afterEach(async () => {
    await Promise.all(browser.contexts().map((context) => context.close()));
    await Promise.all(open.splice(0).map(({ page }) => page.close()));
  });
  afterAll(async () => {
    await browser.close();
    await store.close();
  });

  async function served(): Promise<PageUnderTest & { readonly url: string }> {
    const under = await pageUnderTest(store);
    open.push(under);
    const { port } = await under.page.listen();
    return { ...under, url: `http://127.0.0.1:${port}/` };
  }

  async function visit(url: string, options: BrowserContextOptions = desktop): Promise<Tab> {
    const context = await browser.newContext(options);
    const tab = await context.newPage();
    complaints.length = 0;
    tab.on('pageerror', (error) => complaints.push(error.message));
    tab.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await tab.goto(url);
    return tab;
  }

  async function say(tab: Tab, text: string): Promise<void> {
    await tab.getByLabel('Your message').fill(text);
    await tab.getByRole('button', { name: 'Send' }).click();
  }

  const receipts = (tab: Tab) => tab.locator('.is-receipt');
  const dutyOf = (tab: Tab, text: string) => tab.locator('.duties li', { hasText: text });

  it('logs a reading, shows its receipt, takes its duty off the list, and strikes it out', async () => {
    const { url } = await served();
    const tab = await visit(url);
    const check = dutyOf(tab, 'Check pH, EC and water level of North bench');
    await check.waitFor();

    await say(tab, 'north bench ph 6.1 ec 2.2 level 400');
    await receipts(tab).waitFor();
    expect(await receipts(tab).innerText()).toContain('6.1');
    await check.waitFor({ state: 'detached' });
    expect(await tab.locator('.is-mine').count()).toBe(1);

    await receipts(tab).getByRole('button').click();
    await tab.locator('.is-correction').waitFor();
    await tab.locator('.is-receipt.is-struck').waitFor();
    expect(await receipts(tab).getByRole('button').count()).toBe(0);
    await check.waitFor();
    expect(complaints).toEqual([]);
  });

  it('shows in one window what was said in another', async () => {
    const { url } = await served();
    const [one, other] = [await visit(url), await visit(url, phone)];
    await say(one, 'north bench ph 6.1');
    await receipts(other).waitFor();
    await receipts(other).getByRole('button').tap();
    await one.locator('.is-receipt.is-struck').waitFor();
  });

  it('puts an example and a duty’s message into the field, to be changed before sending', async () => {
    const { url } = await served();
    const tab = await visit(url);
    await tab.getByRole('link', { name: 'North bench pH 6.1' }).click();
    const field = tab.getByLabel('Your message');
    expect(await field.inputValue()).toMatch(/^North bench pH 6\.1 EC /);
    expect(await receipts(tab).count()).toBe(0);
    await dutyOf(tab, 'Top up Bucket row').getByRole('link').click();
    expect(await field.inputValue()).toMatch(/^topped up Bucket row with \d+ L$/);
    await tab.keyboard.press('Enter');
    await receipts(tab).waitFor();
    await dutyOf(tab, 'Top up Bucket row').waitFor({ state: 'detached' });
  });

  it('fits a phone of 360 pixels, in every language and with targets for wet hands', async () => {
    for (const language of ['en', 'de'] as const) {
      const lane = quarryLane();
      const members = lane.members.map((member) => ({ ...member, language }));
      const under = await pageUnderTest(store, { ...lane, members });
      open.push(under);
      const { port } = await under.page.listen();
      const tab = await visit(`http://127.0.0.1:${port}/`, phone);
      await tab.locator('#say').fill('ph 5.8');
      await tab.keyboard.press('Enter');
      await tab.locator('.is-question').waitFor();
      for (const path of ['', 'set-up', 'nowhere']) {
        if (path !== '') await tab.goto(`http://127.0.0.1:${port}/${path}`);
        const width = await tab.evaluate('document.documentElement.scrollWidth');
        expect(width, `${language} ${path}`).toBeLessThanOrEqual(360);
        const small = await tab.evaluate<string[]>(smallTargets);
        expect(small).toEqual([]);
      }
    }
  });

  it('is worked with the keyboard alone', async () => {
    const { url } = await served();
    const tab = await visit(url);
    await tab.keyboard.type('ph 5.8');
    await tab.keyboard.press('Enter');
    await tab.locator('.is-question').waitFor();
    const focusedText = () => tab.evaluate<string>('document.activeElement.textContent.trim()');
    for (let i = 0; i < 40 && (await focusedText()) !== 'Bucket row'; i += 1) {
      await tab.keyboard.press('Shift+Tab');
    }
    expect(await focusedText()).toBe('Bucket row');
    expect(await tab.evaluate('getComputedStyle(document.activeElement).outlineStyle')).toBe(
      'solid',
    );
    await tab.keyboard.press('Enter');
    await receipts(tab).waitFor();
    expect(await tab.locator('.is-question').innerText()).toContain('✓ Bucket row');
    expect(await tab.evaluate('document.activeElement !== document.body')).toBe(true);
  });

  it('switches the speaker at a tap, and by keyboard only when that is meant', async () => {
    const { url } = await served();
    const tab = await visit(url);
    const select = tab.getByLabel('Speaking as');
    await select.focus();
    await tab.keyboard.press('t');
    expect(await select.inputValue()).toBe('tomas');
    await tab.getByRole('button', { name: 'Switch' }).press('Enter');
    await tab.locator('#chat[data-as="tomas"]').waitFor();
    await tab.getByLabel('Speaking as').selectOption('priya');
    await tab.locator('#chat[data-as="priya"]').waitFor();
  });

  it('works without scripts: sending, choosing, switching the speaker', async () => {
    const { url } = await served();
    const tab = await visit(url, { ...phone, javaScriptEnabled: false });
    await say(tab, 'ph 5.8');
    await tab.getByRole('button', { name: 'Bucket row' }).click();
    await receipts(tab).waitFor();
    expect(await receipts(tab).innerText()).toContain('5.8');
    await tab.getByLabel('Speaking as').selectOption('Tomas');
    await tab.getByRole('button', { name: 'Switch' }).click();
    expect(await receipts(tab).count()).toBe(0);
    expect(await tab.locator('#as option[selected]').innerText()).toBe('Tomas');
    await tab.getByRole('link', { name: 'North bench pH' }).click();
    expect(await tab.getByLabel('Your message').inputValue()).toMatch(/^North bench pH/);
  });

  it('keeps what is written while the bot is away, says so, and sends it once when it is back', async () => {
    const { url, desk, greenhouseId, reported } = await served();
    const tab = await visit(url);
    await tab.locator('.duties li').first().waitFor();
    await tab.context().setOffline(true);
    await say(tab, 'north bench ph 6.1');
    await tab.getByText('Not sent yet.').waitFor();
    await tab.context().setOffline(false);
    await receipts(tab).waitFor();
    expect(await tab.getByText('Not sent yet.').count()).toBe(0);
    expect(await tab.locator('.is-mine').count()).toBe(1);
    const { logbook } = await desk.standing(greenhouseId);
    expect(logbook.all).toHaveLength(1);
    expect(reported).toEqual([]);
  });

  it('catches up by itself after the bot was started anew', async () => {
    const { url, page, ...under } = await served();
    const tab = await visit(url);
    await say(tab, 'north bench ph 6.1');
    await receipts(tab).waitFor();
    await page.close();
    await tab.getByText('No connection, trying again…').waitFor();
    await under.desk.sendDue(under.greenhouseId, under.clock.nowMs);
    const again = await pageUnderTest(store, quarryLane(), {
      desk: under.desk,
      greenhouseId: under.greenhouseId,
      address: { host: '127.0.0.1', port: Number(new URL(url).port) },
    });
    open.push(again);
    await again.page.listen();
    await tab.locator('.is-round').waitFor();
    expect(await tab.locator('.message').count()).toBe(3);
    expect(await tab.getByText('No connection, trying again…').count()).toBe(0);
  });

  it('takes a photo for a system without a script, and shows it in the steps of its work', async () => {
    const { url, post, reported } = await served();
    const tab = await visit(`${url}set-up`, { ...phone, javaScriptEnabled: false });
    const attach = async (name: string, buffer: Buffer): Promise<void> => {
      await tab
        .getByLabel('Photo', { exact: true })
        .setInputFiles({ name, mimeType: 'image/jpeg', buffer });
      await tab.getByRole('button', { name: 'Keep the photo' }).click();
    };
    await tab.getByLabel('System', { exact: true }).selectOption('Bucket row');
    await tab.getByLabel('What it shows').fill('the tap is behind the door');
    await attach('tap.jpg', Buffer.from('no picture at all'));
    expect(await tab.getByRole('alert').innerText()).toContain('cannot be shown as a photo');
    expect(await tab.getByLabel('What it shows').inputValue()).toBe('the tap is behind the door');
    await attach('huge.jpg', Buffer.alloc(12 * 1024 * 1024, 0xff));
    await tab.getByText('That is too large; at most 10 MB fit.').waitFor();
    await tab.goto(`${url}set-up`);
    await tab.getByLabel('System', { exact: true }).selectOption('Bucket row');
    await attach('tap.jpg', await tab.screenshot());
    expect(await tab.getByRole('status').innerText()).toContain('is kept with Bucket row');
    await post('/messages', {
      as: 'tomas',
      id: 'message-1',
      text: 'how do I top up the bucket row?',
    });
    await tab.goto(url);
    await tab.getByLabel('Speaking as').selectOption('Tomas');
    await tab.getByRole('button', { name: 'Switch' }).click();
    const photo = tab.locator('.is-answer img.picture');
    await photo.scrollIntoViewIfNeeded();
    const widthPx = "document.querySelector('.is-answer img.picture').naturalWidth";
    await expect.poll(() => tab.evaluate(widthPx)).toBe(phone.viewport!.width);
    expect(reported).toEqual([]);
  });

  it('leaves what is being read in its place when a message comes', async () => {
    const { url, post } = await served();
    for (let i = 0; i < 12; i += 1) {
      await post('/messages', { as: 'ines', id: `message-${i}`, text: `hello number ${i}` });
    }
    const tab = await visit(url);
    const old = tab.getByText('hello number 2', { exact: true });
    await old.scrollIntoViewIfNeeded();
    await tab.waitForTimeout(100);
    const before = await old.boundingBox();
    await post('/messages', { as: 'ines', id: 'message-new', text: 'north bench ph 6.1' });
    await tab.getByRole('button', { name: 'New message below' }).waitFor();
    const after = await old.boundingBox();
    expect(Math.abs(after!.y - before!.y)).toBeLessThan(60);
    await tab.getByRole('button', { name: 'New message below' }).click();
    expect(await receipts(tab).isVisible()).toBe(true);
  });

  it('has text that stands out enough from its ground, by day and by night', async () => {
    const { url, post } = await served();
    await post('/messages', { as: 'ines', id: 'message-1', text: 'north bench ph 6.1' });
    await post('/messages', { as: 'ines', id: 'message-2', text: 'ph 5.8' });
    for (const colorScheme of ['light', 'dark'] as const) {
      const tab = await visit(url, { ...phone, colorScheme });
      const faint = await tab.evaluate<string[]>(faintTexts);
      expect(faint, colorScheme).toEqual([]);
    }
  });
});
