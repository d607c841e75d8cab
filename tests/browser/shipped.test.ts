// The manifest as it ships: nothing is read until the reader presses the toolbar button.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtAt } from './chromium.ts';
import { badgeFor } from './counted.ts';
import { type Harness, lineStyle, openShop, painted, until } from './harness.ts';

let shop: Harness;
beforeAll(async () => {
  shop = await openShop({ build: 'shipped' });
});
afterAll(() => shop.close());

describe('the shipped manifest', () => {
  it('our own pages break none of its rules', async () => {
    const broken: string[] = [];
    for (const path of ['welcome.html', 'sidepanel.html']) {
      const page = await shop.context.newPage();
      page.on('console', (message) => {
        if (/content security policy|violates/i.test(message.text())) broken.push(message.text());
      });
      await page.addInitScript(() =>
        addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
          console.log(`violates ${violatedDirective}: ${blockedURI}`),
        ),
      );
      await page.goto(`chrome-extension://${shop.id}/${path}`);
      await page.waitForSelector('main, .panel');
      for (const tab of await page.getByRole('tab').all()) await tab.click();
      await page.waitForTimeout(200);
      await page.close();
    }
    expect(broken).toEqual([]);
  });

  it('asks for nothing at install beyond what is written here', () => {
    const manifest = JSON.parse(readFileSync(join(builtAt('shipped'), 'manifest.json'), 'utf8'));
    expect(manifest.permissions.toSorted()).toEqual([
      'activeTab',
      'contextMenus',
      'scripting',
      'sidePanel',
      'storage',
    ]);
    expect(manifest.host_permissions).toBeUndefined();
    expect(manifest.content_scripts).toBeUndefined();
    expect(manifest.optional_host_permissions).toEqual(['https://*/*']);
  });

  it('leaves a page alone until the button is pressed, then reads this page and no other', async () => {
    const page = await shop.open('/goods/oakum-protein-treatment');
    const other = await shop.open('/goods/isinglass-gel');
    await page.waitForTimeout(700);
    expect(await page.locator('html > div').count()).toBe(0);
    await shop.press(page);
    // What we draw is closed to the page here, so the underlines speak.
    const { lines } = await until(
      () => painted(page),
      (now) => now.lines.large !== undefined,
    );
    expect(lines.large).toContain('Hydrolyzed Wheat Protein');
    // Its rule is the browser's to bring.
    await expect.poll(() => lineStyle(page, 'Hydrolyzed Wheat Protein')).toBe('double');
    expect(await other.evaluate(() => CSS.highlights.size)).toBe(0);
    await expect.poll(() => shop.badge(page)).toBe(badgeFor('oakum-protein-treatment'));
    await other.bringToFront();
    expect(await other.locator('html > div').count()).toBe(0);
  });
});
