import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { english } from '../../src/web/texts/en/english.js';
import { hasChromium, startBrowser } from '../support/chromium.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive } from '../support/sample-studio.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { openWatched, type Watched } from '../support/watched-page.js';

/** Words of the English menus: none of them is a German one. */
const englishMenus = [...Object.values(english.frame), ...Object.values(english.settings.pages)].filter(
  (word) => !['Studio', 'Start', 'Tablets'].includes(word),
);

describe.skipIf(!hasChromium)('the app for a German reader', () => {
  let browser: Browser;
  let service: RunningService;
  beforeAll(async () => {
    browser = await startBrowser();
    service = await startService();
  });
  afterAll(async () => {
    await service.dispose();
    await browser.close();
  });

  const withReader = async (locale: string, use: (device: BrowserContext) => Promise<void>) => {
    const device = await browser.newContext({ locale });
    try {
      await use(device);
    } finally {
      await device.close();
    }
  };

  const signIn = async (device: BrowserContext): Promise<Watched> => {
    const watched = await openWatched(device, service.url);
    const { page } = watched;
    await page.getByLabel('Anmeldename').fill(testOwner.signInName);
    await page.getByLabel('Passwort', { exact: true }).fill(testOwner.password);
    await page.getByRole('button', { name: 'Anmelden', exact: true }).click();
    await page.getByRole('heading', { name: 'Angemeldet' }).waitFor();
    return watched;
  };
  const languageOf = (page: Page) => page.locator('html').getAttribute('lang');
  const links = (page: Page) => page.getByRole('navigation').getByRole('link').allTextContents();

  it('speaks German from the first page on, writes dates the German way, and says why something is refused', async () => {
    const studio = await makeSampleStudio(service);
    await service.made('/products', {
      kind: 'pigment',
      makerId: studio.makerId,
      name: 'Ochre',
      pigmentRole: 'colour',
      volumeMicrolitres: 12_500,
    });
    await receive(service, studio, { productId: studio.umberId, code: 'OLD-1', useBy: '2020-01-31' });
    const { id: sessionId } = await service.made<{ id: string }>('/sessions/walk-in', {
      clientId: studio.clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
    });
    await withReader('de-AT', async (device) => {
      const watched = await signIn(device);
      const { page } = watched;
      expect(await languageOf(page)).toBe('de');
      const place = `${service.url}/studios/${service.studioId}`;

      await page.goto(`${place}/today/trays/${sessionId}`);
      await page.getByRole('heading', { level: 1, name: 'Tablett' }).waitFor();
      await page.getByRole('textbox', { name: 'Scannen' }).fill('OLD-1');
      await page.keyboard.press('Enter');
      await page.getByText('Abgelehnt', { exact: true }).waitFor();
      await page.getByText('ist abgelaufen: verwendbar bis 31.01.2020.').waitFor();
      expect(await links(page)).toEqual(expect.not.arrayContaining(englishMenus));

      await page.goto(`${place}/settings/procedures`);
      await page.getByText('Brauen, Nachbehandlung 30 bis 40 Tage später').waitFor();
      expect(await links(page)).toEqual(expect.not.arrayContaining(englishMenus));
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.goto(`${place}/settings/products`);
      await page
        .getByText(/12,5 ml/)
        .first()
        .waitFor();
      watched.expectNoComplaint();
    });
  });

  it('keeps the language and the brightness that were chosen, also after signing out', () =>
    withReader('de-DE', async (device) => {
      const { page } = await signIn(device);
      await page.getByLabel('Sprache').selectOption({ label: 'English' });
      await page.getByRole('heading', { name: 'Signed in' }).waitFor();
      expect(await languageOf(page)).toBe('en');
      await page.getByLabel('Brightness').selectOption({ label: 'dark' });
      await page.locator('html[data-mantine-color-scheme="dark"]').waitFor();
      await page.getByRole('button', { name: 'Sign out', exact: true }).click();
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      await page.locator('html[data-mantine-color-scheme="dark"]').waitFor();
      // Also where nobody is signed in.
      await page.getByLabel('Language').selectOption({ label: 'Deutsch' });
      await page.getByRole('heading', { name: 'Anmelden' }).waitFor();
      await page.reload();
      await page.getByRole('heading', { name: 'Anmelden' }).waitFor();
    }));
});
