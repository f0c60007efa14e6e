import type { Browser, BrowserContext } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { hasChromium, startBrowser } from './chromium.js';

/**
 * One browser for all tests of a file, in which each test opens as many devices as it needs. They share nothing, and are
 * closed after it.
 * @param keepsApp whether they keep the app to open it without network, which takes its time
 */
export function useDevices({
  keepsApp = false,
} = {}): (use: (...devices: BrowserContext[]) => Promise<void>) => Promise<void> {
  let browser: Browser | undefined;
  beforeAll(async () => {
    if (hasChromium) browser = await startBrowser();
  });
  afterAll(async () => {
    await browser?.close();
  });
  return async (use) => {
    const devices: BrowserContext[] = [];
    try {
      for (let count = 0; count < Math.max(1, use.length); count += 1) {
        if (!browser) throw new Error('The browser is not started.');
        devices.push(
          await browser.newContext({ locale: 'en-GB', serviceWorkers: keepsApp ? 'allow' : 'block' }),
        );
      }
      await use(...devices);
    } finally {
      for (const device of devices) await device.close();
    }
  };
}
