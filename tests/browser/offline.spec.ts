import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TrayView } from '../../src/sessions/tray.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { fillSignIn, goTo, signInAt } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('laying a tray without network', () => {
  const withDevices = useDevices({ keepsApp: true });
  let service: RunningService;
  let studio: SampleStudio;
  let sessionId: string;
  let gelLotId: string;

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    await receive(service, studio, { productId: studio.umberId, code: 'HU-118' });
    await receive(service, studio, { productId: studio.umberId, code: 'OLD-1', useBy: '2020-01-31' });
    gelLotId = (await receive(service, studio, { productId: studio.gelId, code: 'GEL-3' })).lot.id;
    await receive(service, studio, { productId: studio.linerId, code: 'CL-9', quantity: 3 });
    sessionId = (
      await service.made<{ id: string }>('/sessions', {
        clientId: studio.clientId,
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'first session',
        plannedStart: new Date().toISOString(),
      })
    ).id;
  });
  afterAll(() => service.dispose());

  const show = async (page: Page, symbol: string) => {
    await page.keyboard.type(symbol);
    await page.keyboard.press('Enter');
  };
  /** Until the app's own files lie on the device. */
  const appIsKept = (page: Page) => page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
  const keptOnDevice = (page: Page, store: string): Promise<unknown> =>
    page.evaluate(`new Promise((settle, fail) => {
      const opening = indexedDB.open('lotward');
      opening.onerror = () => fail(opening.error);
      opening.onsuccess = () => {
        const reading = opening.result.transaction('${store}').objectStore('${store}').getAll();
        reading.onsuccess = () => {
          opening.result.close();
          settle(reading.result);
        };
      };
    })`);

  it('judges by the same rules, keeps what was scanned through a new page, and sends each once when the service is back', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'Today');
      await page.getByText(/^This device knows the day as of /).waitFor();
      await appIsKept(page);

      const port = new URL(service.url).port;
      await service.stop('SIGKILL');
      await page.getByRole('button', { name: /^Lay the tray for / }).click();
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await page.getByText(/^The service has not been reached since /).waitFor();
      const verdict = page.locator('[data-verdict]');
      await show(page, 'HU-118');
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await page.getByText(/^Judged on this device/).waitFor();
      await show(page, 'OLD-1');
      await verdict.getByText('Refused', { exact: true }).waitFor();
      await show(page, 'CL-9');
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await show(page, 'CL-9');
      await verdict.getByRole('button', { name: /^\+1/ }).click();
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await show(page, 'never heard of');
      await page.getByText(/^This device does not know what was shown/).waitFor();

      // The page is closed and opened again, still without network.
      await page.goto(`${service.url}/`);
      await goTo(page, 'Today');
      await page.getByRole('link', { name: 'To the tray' }).click();
      await page.getByRole('list', { name: 'On the tray' }).getByText(/Umber/).waitFor();
      await page.getByText(/^7 entries wait here/).waitFor();
      expect(await page.getByText('Sommer').count()).toBe(0);
      expect(JSON.stringify(await keptOnDevice(page, 'facts'))).not.toContain('Sommer');

      const { dataFolder } = service;
      service = await startService('sqlite', { dataFolder, environment: { PORT: port } });
      await expect.poll(() => keptOnDevice(page, 'waiting'), { timeout: 15_000 }).toEqual([]);
      const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
      expect(tray.lines.map(({ lotCode }) => lotCode).sort()).toEqual(['CL-9', 'CL-9', 'HU-118']);
      await page.getByText(/^never heard of .* was not taken by the service/).waitFor();
      await page.getByRole('button', { name: 'I have seen it' }).click();
      await page.getByText(/was not taken by the service/).waitFor({ state: 'detached' });
    }));

  it('says what the service judges otherwise than the device did', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'Today');
      await page.getByText(/^This device knows the day as of /).waitFor();
      await appIsKept(page);
      await page.getByRole('link', { name: 'To the tray' }).click();
      await page.getByRole('list', { name: 'On the tray' }).waitFor();

      await browser.setOffline(true);
      await show(page, 'GEL-3');
      await page.locator('[data-verdict]').getByText('Admitted', { exact: true }).waitFor();
      await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: gelLotId });
      await browser.setOffline(false);
      const note = page.getByText(/Numbing gel of .*: judged here “Admitted”, by the service “Refused”\./);
      await note.waitFor();
      await page
        .getByText(/is recalled/)
        .first()
        .waitFor();
      await page.getByText(/^By the record it is not on the tray\. Take it off/).waitFor();

      // It is there until it was seen, also on a new page.
      await page.reload();
      await note.waitFor();
      await page.getByRole('button', { name: 'I have seen it' }).click();
      await note.waitFor({ state: 'detached' });
      await page.reload();
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      expect(await note.count()).toBe(0);
      const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
      expect(tray.lines.map(({ lotCode }) => lotCode)).not.toContain('GEL-3');
    }));

  it('forgets the day at signing out, and nothing that waits', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'Today');
      await page.getByText(/^This device knows the day as of /).waitFor();
      await page.getByRole('link', { name: 'To the tray' }).click();
      await page.getByRole('list', { name: 'On the tray' }).waitFor();
      // Scans do not get through, and signing out does.
      await page.route('**/scans', (route) => route.abort());
      await show(page, 'CL-9');
      await page.getByText(/^Judged on this device/).waitFor();
      await page.getByRole('button', { name: 'Sign out' }).click();
      await page.getByRole('heading', { level: 1, name: 'Sign in' }).waitFor();
      expect(await keptOnDevice(page, 'facts')).toEqual([]);
      expect(await keptOnDevice(page, 'requester')).toEqual([]);
      expect(await keptOnDevice(page, 'waiting')).toMatchObject([{ shown: { symbol: 'CL-9' } }]);

      await page.unroute('**/scans');
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await expect.poll(() => keptOnDevice(page, 'waiting'), { timeout: 15_000 }).toEqual([]);
    }));
});
