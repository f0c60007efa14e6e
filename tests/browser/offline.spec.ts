import { createServer } from 'node:http';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TrayView } from '../../src/sessions/tray.views.js';
import type { ContainerView } from '../../src/stock/container-list.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { fillSignIn, goTo, isSignedIn as isSignedInAt, signInAt } from '../support/web-steps.js';

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
      await verdict.getByRole('button', { name: 'Open it now' }).click();
      await verdict.getByRole('button', { name: 'Open it now' }).waitFor({ state: 'detached' });
      await show(page, 'OLD-1');
      await verdict.getByText('Refused', { exact: true }).waitFor();
      await show(page, 'CL-9');
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await show(page, 'CL-9');
      await verdict.getByRole('button', { name: /^\+1/ }).click();
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await show(page, 'never heard of');
      await page.getByText(/^This device does not know what was shown/).waitFor();
      const laid = page.getByRole('list', { name: 'On the tray' });
      await laid.getByText(/2 pieces/).waitFor();
      await laid.getByRole('button', { name: /^Take one off/ }).click();
      await laid.getByText(/1 piece\b/).waitFor();

      // The page is closed and opened again, and something else answers in the place of the service.
      const faulty = createServer((_, answer) => answer.writeHead(503).end('<h1>Bad gateway</h1>'));
      await new Promise((settle) => faulty.listen(Number(port), '127.0.0.1', () => settle(undefined)));
      await page.goto(`${service.url}/`);
      await goTo(page, 'Today');
      await page.getByRole('link', { name: 'To the tray' }).click();
      await laid.getByText(/Umber/).waitFor();
      await laid.getByText(/1 piece\b/).waitFor();
      await page.getByText(/^9 entries wait here/).waitFor();
      expect(await page.getByText('Sommer').count()).toBe(0);
      expect(JSON.stringify(await keptOnDevice(page, 'facts'))).not.toContain('Sommer');

      faulty.closeAllConnections();
      await new Promise((settle) => faulty.close(settle));
      const { dataFolder } = service;
      service = await startService('sqlite', { dataFolder, environment: { PORT: port } });
      await expect.poll(() => keptOnDevice(page, 'waiting'), { timeout: 15_000 }).toEqual([]);
      const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
      expect(tray.lines.map(({ lotCode, state }) => [lotCode, state]).sort()).toEqual([
        ['CL-9', 'on tray'],
        ['CL-9', 'taken off'],
        ['HU-118', 'on tray'],
      ]);
      const { items } = await service.seen<{ items: ContainerView[] }>(
        `/containers?productId=${studio.umberId}`,
      );
      expect(items.filter(({ state }) => state === 'opened')).toHaveLength(1);
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

  it('keeps a page in sight that was opened without network when the service is back and nothing waited', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'Today');
      await page.getByText(/^This device knows the day as of /).waitFor();
      await appIsKept(page);
      await page.getByRole('link', { name: 'To the tray' }).click();
      const laid = page.getByRole('list', { name: 'On the tray' });
      await laid.waitFor();

      await browser.setOffline(true);
      await page.reload();
      await laid.waitFor();
      const away = page.getByText(/^The service has not been reached since /);
      await away.waitFor();
      await browser.setOffline(false);
      await away.waitFor({ state: 'detached' });
      await laid.waitFor();
      await show(page, 'OLD-1');
      await page.locator('[data-verdict]').getByText('Refused', { exact: true }).waitFor();

      await browser.setOffline(true);
      await page.goto(`${service.url}/studios/${service.studioId}/today`);
      await away.waitFor();
      await page.getByRole('link', { name: 'To the tray' }).waitFor();
      await browser.setOffline(false);
      await away.waitFor({ state: 'detached' });
      await page.getByRole('link', { name: 'To the tray' }).waitFor();
      expect(await page.getByRole('alert').allTextContents()).toEqual([]);
    }));

  it('signs out without network: nothing is shown any more, and the service is told when it is reached', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'Today');
      await page.getByText(/^This device knows the day as of /).waitFor();
      await appIsKept(page);
      await browser.setOffline(true);
      await page.getByRole('button', { name: 'Sign out' }).click();
      const signIn = page.getByRole('heading', { level: 1, name: 'Sign in' });
      await signIn.waitFor();
      await page.reload();
      await signIn.waitFor();
      expect(await keptOnDevice(page, 'facts')).toEqual([]);
      expect(await keptOnDevice(page, 'requester')).toEqual([]);

      await browser.setOffline(false);
      const isSignedIn = async () => (await browser.request.get(`${service.url}/api/v1/me`)).ok();
      await expect.poll(isSignedIn, { timeout: 15_000 }).toBe(false);
      await signIn.waitFor();
      // Whoever signs in now stays signed in.
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await isSignedInAt(page);
      await page.reload();
      await isSignedInAt(page);
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
      // The page is loaded anew, so nothing is asked of the one before.
      await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Sign out' }).click()]);
      await page.getByRole('heading', { level: 1, name: 'Sign in' }).waitFor();
      expect(await keptOnDevice(page, 'facts')).toEqual([]);
      expect(await keptOnDevice(page, 'requester')).toEqual([]);
      expect(await keptOnDevice(page, 'waiting')).toMatchObject([{ shown: { symbol: 'CL-9' } }]);

      await page.unroute('**/scans');
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await expect.poll(() => keptOnDevice(page, 'waiting'), { timeout: 15_000 }).toEqual([]);
    }));
});
