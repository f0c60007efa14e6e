import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { german } from '../../src/web/texts/de/german.js';
import { english } from '../../src/web/texts/en/english.js';
import { hasChromium, sharedBrowser } from '../support/chromium.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive } from '../support/sample-studio.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { openWatched, type Watched } from '../support/watched-page.js';

/** Every text of a language that is no function, whatever its name. */
function said(texts: object): string[] {
  return Object.values(texts).flatMap((text) =>
    typeof text === 'string' ? [text] : typeof text === 'object' && text !== null ? said(text) : [],
  );
}

/** Also the name of the only person. */
const germanToo = new Set([...said(german), 'Owner']);
const englishOnly = new Set(said(english).filter((text) => !germanToo.has(text)));

/** Runs inside the page. */
const textsOfPage = `(() => {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts = [];
  while (walker.nextNode()) texts.push(walker.currentNode.data.trim());
  return texts;
})()`;

/** The audit log is not among them: it shows the record in the record's own words. */
const places = [
  ...['today', 'stock', 'stock/receive', 'stock/deliveries', 'stock/expected', 'records', 'records/clients'],
  ...Object.keys(english.settings.pages).map((page) => `settings/${page}`),
];

describe.skipIf(!hasChromium)('the app for a German reader', () => {
  let service: RunningService;
  beforeAll(async () => {
    await sharedBrowser();
    service = await startService();
  });
  afterAll(() => service.dispose());

  const withReader = async (locale: string, use: (device: BrowserContext) => Promise<void>) => {
    const device = await (await sharedBrowser()).newContext({ locale });
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
    await page.getByRole('heading', { level: 1, name: 'Heute' }).waitFor();
    return watched;
  };
  const languageOf = (page: Page) => page.locator('html').getAttribute('lang');
  /** Texts of the page that are whole texts of the English app. */
  const englishOn = async (page: Page) => {
    const shown = (await page.evaluate(textsOfPage)) as string[];
    return shown.filter((text) => englishOnly.has(text));
  };

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
      expect(await englishOn(page)).toEqual([]);

      await page.goto(`${place}/settings/procedures`);
      await page.getByText('Brauen, Nachbehandlung 30 bis 40 Tage später').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.goto(`${place}/settings/products`);
      await page
        .getByText(/12,5 ml/)
        .first()
        .waitFor();
      watched.expectNoComplaint();

      const found: Record<string, string[]> = {};
      for (const path of places) {
        await page.goto(`${place}/${path}`);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await expect.poll(() => page.getByText('Wird geladen …').count()).toBe(0);
        found[path] = await englishOn(page);
      }
      expect(found).toEqual(Object.fromEntries(places.map((path) => [path, []])));
    });
  });

  it('keeps the language and the brightness that were chosen, also after signing out', () =>
    withReader('de-DE', async (device) => {
      const { page } = await signIn(device);
      await page.getByLabel('Sprache').selectOption({ label: 'English' });
      await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
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
