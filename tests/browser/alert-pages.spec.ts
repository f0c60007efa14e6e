import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AlertDeliveryView, AlertPageView } from '../../src/alerts/alerts.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { openAs, openAsOwner, pageOf, pageOfOwner } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('alerts on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'alerts', ...below].join('/');
  const show = async (page: Page, ...below: string[]) => {
    await page.goto(address(...below));
    await page.getByRole('heading', { level: 1 }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
  const setMinimum = (productId: string, minimumPieces: number) =>
    service.put('/stock/levels', { subjectKind: 'product', subjectId: productId, minimumPieces });
  const alertOf = async (subjectId: string) => {
    const { items } = await service.seen<AlertPageView>('/alerts?state=all&limit=200');
    const alert = items.find((each) => each.subjectId === subjectId);
    if (!alert) throw new Error('There is no such alert.');
    return alert;
  };

  it('say at once what became urgent, also on other pages, and what to do about it', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
      await show(page, 'all');
      await expect.poll(() => page.getByText('None.', { exact: true }).count()).toBe(3);
      expect(await faultsEverywhere(page)).toEqual([]);

      const known = page.waitForResponse(/alerts\?.*severity=urgent/);
      await page.goto(`${service.url}/studios/${service.studioId}/today/trays/${service.studioId}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await (await known).finished();
      const live = page.getByRole('region', { name: 'Urgent alerts' });
      // No look at the page asks for it: the stream tells it.
      await setMinimum(studio.umberId, 2);
      // Where a tray is laid nothing moves: the menu says it, and a screen reader.
      await page.getByRole('link', { name: 'Alerts (1 urgent)' }).waitFor();
      await page.locator('[aria-live="polite"]').getByText('Urgent: Low stock').waitFor();
      await expect.poll(() => live.count()).toBe(0);
      await page.getByRole('link', { name: 'Stock', exact: true }).click();
      await live.getByText('Urgent: Low stock, Halden Colour Works Umber Warm 02').waitFor();
      await page.locator('[aria-live="polite"]').filter({ has: live }).waitFor();
      const menu = page.getByRole('navigation', { name: 'Pages', exact: true });
      await menu.getByRole('link', { name: 'Alerts (1 urgent)' }).waitFor();
      await page.getByRole('heading', { level: 1, name: 'Levels' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await live.getByRole('link', { name: /^Look at it, urgent: Low stock/ }).focus();
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { level: 1, name: 'Low stock' }).waitFor();
      await page.getByText('Order more, or receive what came.').waitFor();
      // The page shows it itself, and whoever saw it there need not be told again.
      await live.waitFor({ state: 'detached' });
      await page.getByRole('link', { name: 'To all alerts' }).click();
      await page.getByRole('list', { name: 'Urgent' }).getByText('Umber Warm 02').waitFor();
      await expect.poll(() => live.count()).toBe(0);
      await page.goBack();
      await page.getByRole('list', { name: 'What happened' }).getByText('Opened: urgent').waitFor();
      await page.getByText('Nobody was told of it by a message of its own.').waitFor();
      watched.expectNoComplaint();
    }));

  it('are answered step by step, and every step stays', () =>
    withDevices(async (browser) => {
      const manager = await personOfRole(service, 'manager');
      await setMinimum(studio.gelId, 1);
      const { id } = await alertOf(studio.gelId);
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, id);
      const history = page.getByRole('list', { name: 'What happened' });
      await press(page, 'I take it on');
      await history.getByText('Taken on', { exact: true }).waitFor();
      await expect.poll(() => page.getByRole('button', { name: 'I take it on' }).count()).toBe(0);

      await press(page, 'Give it to somebody');
      const giving = page.getByRole('form', { name: 'Give it to somebody' });
      await giving.getByLabel('To whom').selectOption({ label: 'Some manager' });
      expect(await faultsEverywhere(page)).toEqual([]);
      await giving.getByRole('button', { name: 'Give it to somebody' }).click();
      await history.getByText('Given to Some manager').waitFor();

      await press(page, 'Put it off');
      const day = new Date(Date.now() + 3 * 86_400_000).toISOString().slice(0, 10);
      await page.getByLabel('Until the morning of').fill(day);
      await page
        .getByRole('form', { name: 'Put it off' })
        .getByRole('button', { name: 'Put it off' })
        .click();
      await history.getByText(/^Put off until /).waitFor();

      await press(page, 'Add a note');
      await page.getByLabel('Note', { exact: true }).fill('The supplier was called.');
      await page
        .getByRole('form', { name: 'Add a note' })
        .getByRole('button', { name: 'Add a note' })
        .click();
      await history.getByText('The supplier was called.').waitFor();

      // What is put off is no work of today, and is found by asking for it.
      await show(page, 'all');
      await expect.poll(() => page.getByText('Numbing gel').count()).toBe(0);
      await page.getByText('Which alerts: open now').click();
      await page.getByLabel('Which', { exact: true }).selectOption('put off');
      await press(page, 'Show');
      await page.getByText(/given to Some manager, put off until/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await show(page, id);
      await press(page, 'Close it');
      await page.getByLabel('Why it is closed').fill('No longer offered here.');
      await page.getByRole('form', { name: 'Close it' }).getByRole('button', { name: 'Close it' }).click();
      await page.getByText('It is over. What was done stays below.').waitFor();
      await history.getByText('No longer offered here.').waitFor();

      const { page: others } = await pageOf(browser, service.url, manager.cookie);
      await others.goto(`${address('all')}?state=closed&order=latest`);
      await others.getByRole('list', { name: 'Alerts' }).getByText('Numbing gel').waitFor();
      watched.expectNoComplaint();
    }));

  it('say what could not be sent, why, and how often it may have arrived, and send it again', () =>
    withDevices(async (browser) => {
      await setMinimum(studio.thinnerId, 1);
      const { id } = await alertOf(studio.thinnerId);
      const deliveries = () => service.seen<AlertDeliveryView[]>(`/alerts/${id}/deliveries`);
      await expect.poll(async () => (await deliveries()).every(({ state }) => state === 'sent')).toBe(true);
      const giveUp = async () => {
        const sql = await PlainSql.connect(service, 'write');
        await sql.rows(
          `UPDATE outbox SET state = 'undeliverable', attempts = 4, begun = 6, last_error = 'the disk is full'
           WHERE studio_id = $1 AND alert_id = $2`,
          [service.studioId, id],
        );
        await sql.close();
      };
      await giveUp();
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      const whatIsAsked = '**/alerts/deliveries?*';
      await page.route(whatIsAsked, (route) =>
        route.fulfill({ status: 429, json: { code: 'too-many-requests', detail: 'Too many at once.' } }),
      );
      await show(page, 'not-sent');
      await expect.poll(() => page.getByText('Too many at once.').count()).toBe(2);
      await page.unroute(whatIsAsked);
      await show(page, 'all');
      await page.getByText('Some messages could not be sent.').waitFor();
      await page.getByRole('link', { name: 'Look at them' }).click();
      const list = page.getByRole('list', { name: 'Messages that could not be sent' });
      await list.getByText('Because: the disk is full').waitFor();
      await list.getByText(/^It may have been received 2 times more/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Send again: Log of the service, It opened');
      await page.getByText('Everything that was promised was sent').waitFor();
      await expect.poll(async () => (await deliveries()).every(({ state }) => state === 'sent')).toBe(true);

      // Of what is over nothing has to be done any more, so nothing is said of it.
      await giveUp();
      await service.made(`/alerts/${id}/close`, { note: 'No longer offered here.' });
      const asked = page.waitForResponse(/deliveries\?.*actionable=true/);
      await page.goto(address('all'));
      expect(await (await asked).json()).toMatchObject({ items: [] });
      await page.getByRole('heading', { level: 1 }).waitFor();
      await expect.poll(() => page.getByText('Some messages could not be sent.').count()).toBe(0);
      watched.expectNoComplaint();
    }));

  it('say what the morning would say, and are only read by an auditor', () =>
    withDevices(async (browser) => {
      await receive(service, studio, { productId: studio.linerId, code: 'OLD-1', useBy: '2020-01-31' });
      const { cookie } = await personOfRole(service, 'auditor');
      const watched = await openAs(browser, service.url, cookie);
      const { page } = watched;
      await page
        .getByRole('navigation')
        .getByRole('link', { name: /^Alerts/ })
        .waitFor();
      await show(page, 'morning');
      await page.getByRole('heading', { level: 3, name: 'To order' }).waitFor();
      await page.getByRole('heading', { level: 3, name: 'To discard' }).waitFor();
      await page.getByText('None was written for you yet.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('link', { name: /^Low stock: .*Umber/ }).click();
      await page.getByRole('heading', { level: 1, name: 'Low stock' }).waitFor();
      await expect.poll(() => page.getByRole('button', { name: 'I take it on' }).count()).toBe(0);
      await show(page, '0192f0c1-2d3e-7a4b-8c5d-6e7f80910111');
      await page.getByRole('heading', { level: 1, name: 'There is no such alert' }).waitFor();
      watched.expectNoComplaint();
    }));

  it('reach a device whose app is closed, and lead to a page of the app only', () =>
    withDevices(async (browser) => {
      const device = await browser.browser()?.newContext({ locale: 'en-GB', serviceWorkers: 'allow' });
      if (!device) throw new Error('This browser opens no other device.');
      const { page } = await openAsOwner(device, service);
      await device.grantPermissions(['notifications'], { origin: service.url });
      await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
      // As the message service of the browser's maker hands it over.
      const session = await device.newCDPSession(page);
      const registered = new Promise<string>((settle) => {
        session.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
          const own = registrations.find(({ scopeURL }) => scopeURL.startsWith(service.url));
          if (own) settle(own.registrationId);
        });
      });
      await session.send('ServiceWorker.enable');
      const registrationId = await registered;
      const shown = () =>
        page.evaluate(`navigator.serviceWorker.ready
          .then((own) => own.getNotifications())
          .then((all) => all.map(({ title, body, data }) => ({ title, body, data })))`);
      const [worker] = device.serviceWorkers();
      const pressed = (): Promise<unknown> | undefined =>
        worker?.evaluate(`(async () => {
          const [notification] = await registration.getNotifications();
          return new Promise((settle) => {
            clients.openWindow = async (address) => settle(address);
            dispatchEvent(new NotificationEvent('notificationclick', { notification }));
          });
        })()`);
      const path = `/studios/${service.studioId}/alerts/all`;
      for (const [link, opened] of [
        [`${service.url}${path}`, path],
        ['https://elsewhere.example/x', '/'],
      ] as const) {
        const sent = { title: 'Recall open', body: 'Umber', link, tag: 'one' };
        const data = JSON.stringify(sent);
        await session.send('ServiceWorker.deliverPushMessage', { origin: service.url, registrationId, data });
        await expect.poll(shown).toEqual([{ title: 'Recall open', body: 'Umber', data: opened }]);
        expect(await pressed()).toBe(`${service.url}${opened}`);
        await expect.poll(shown).toEqual([]);
      }
      await device.close();
    }));
});
