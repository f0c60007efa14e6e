import type { BrowserContext } from 'playwright-core';
import { beforeAll } from 'vitest';
import { hasChromium, sharedBrowser } from './chromium.js';

/**
 * In a browser that others use as well, each test opens as many devices as it needs. They share nothing, and are
 * closed after it.
 * @param keepsApp whether they keep the app to open it without network, which takes its time
 */
export function useDevices({
  keepsApp = false,
} = {}): (use: (...devices: BrowserContext[]) => Promise<void>) => Promise<void> {
  // Begun before the first test, whose time is its own.
  beforeAll(async () => {
    if (hasChromium) await sharedBrowser();
  });
  return async (use) => {
    const browser = await sharedBrowser();
    const devices: BrowserContext[] = [];
    try {
      for (let count = 0; count < Math.max(1, use.length); count += 1) {
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
