import { createECDH, randomBytes } from 'node:crypto';
import type { Page } from 'playwright-core';
import { Webhook } from 'standardwebhooks';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { HandingOnView } from '../../src/alerts/handing-on/handing-on.views.js';
import type { AlertPreferenceView } from '../../src/alerts/preferences/alert-preferences.views.js';
import type { ExpectedDeliveryPageView } from '../../src/stock/expected-deliveries/expected-deliveries.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { MailReceiver } from '../support/mail-receiver.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { openAsOwner, pageOf, pageOfOwner } from '../support/web-steps.js';
import { type ReceivedWebhook, WebhookReceiver } from '../support/webhook-receiver.js';

describe.skipIf(!hasChromium)('the settings of alerts on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let mail: MailReceiver;
  let hook: WebhookReceiver;

  beforeAll(async () => {
    [mail, hook] = [await MailReceiver.start(), await WebhookReceiver.start()];
    service = await startService('sqlite', {
      environment: {
        OUTGOING_PRIVATE_ADDRESSES: '127.0.0.1',
        SMTP_URL: mail.url,
        MAIL_FROM: 'lotward@studio.example',
      },
    });
  });
  afterAll(async () => {
    await service.dispose();
    await Promise.all([mail.stop(), hook.stop()]);
  });

  const show = async (page: Page, path: string, heading: string) => {
    await page.goto(`${service.url}${path}`);
    await page.getByRole('heading', { level: 1, name: heading }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

  it('let each choose how they are told, by mail and in their calendar', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, '/account', 'My account');
      await page.getByRole('link', { name: /^How .* tells you$/ }).click();
      await page.getByRole('heading', { level: 1, name: 'How you are told' }).waitFor();
      await page.getByText(/^You chose nothing yet: this is assumed of your role/).waitFor();
      await page.getByText(/^Nothing is sent to you as it stands/).waitFor();
      await page.getByText('You have no such address.').waitFor();

      // What is wrong with an address is said in words, beside it.
      const adding = page.getByRole('form', { name: 'Add the address' });
      await adding.getByLabel('E-mail address').fill('Desk <desk@studio.example>');
      await press(page, 'Add the address');
      await adding.getByText(/^address must be a mail address such as/).waitFor();
      await adding.getByLabel('E-mail address').fill('desk@studio.example');
      await page.keyboard.press('Enter');
      const addresses = page.getByRole('list', { name: 'E-mail' });
      await addresses.getByText('desk@studio.example').waitFor();
      await press(page, 'Send a test to desk@studio.example');
      await addresses.getByText('The test was sent and taken.').waitFor();
      expect(mail.received.map(({ to }) => to)).toEqual([['desk@studio.example']]);

      await page.getByText('Kinds you are not told of: none').click();
      await page.getByLabel('Quiet from').fill('21:00');
      await press(page, 'Save');
      await page
        .getByText('Quiet hours have an end too; give both times, or neither', { exact: true })
        .waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByLabel('Quiet until').fill('07:00');
      await page.getByLabel('A recall drill is due').check();
      await page.getByLabel('At what time').fill('06:45');
      await press(page, 'Save');
      await page.getByText('Saved.').waitFor();
      await expect.poll(() => page.getByText(/^You chose nothing yet/).count()).toBe(0);
      expect(await service.seen<AlertPreferenceView>('/alert-preferences/own')).toMatchObject({
        ...{ isDefault: false, quietFrom: '21:00', quietUntil: '07:00', summaryAt: '06:45' },
        kindsLeftOut: ['drill due'],
      });

      await press(page, 'Make an address');
      await page.getByRole('heading', { name: 'Your calendar address' }).waitFor();
      const secret = await page.getByRole('textbox', { name: 'Calendar address' }).inputValue();
      expect(await (await fetch(secret)).text()).toMatch(/^BEGIN:VCALENDAR/);
      await page.getByRole('button', { name: 'Test the calendar' }).click();
      await page.getByText('It answers with no entry so far.').waitFor();
      await page.getByRole('button', { name: 'Test the open page' }).click();
      await page.getByText('This page is told at once.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'I have it');
      await press(page, 'Remove the address');
      await page.getByRole('dialog').getByRole('button', { name: 'Remove the address' }).click();
      await page.getByText('You have no such address.').waitFor();
      expect((await fetch(secret)).status).toBe(404);

      await press(page, 'Pause desk@studio.example');
      await addresses.getByText('Paused: what is promised to it waits.').waitFor();
      await press(page, 'Remove desk@studio.example');
      await page.getByRole('dialog').getByRole('button', { name: 'Remove', exact: true }).click();
      await page.getByText('No address of yours is known here.').waitFor();
      watched.expectNoComplaint();
    }));

  it('let those who run a studio say where alerts go, and show secrets once', () =>
    withDevices(async (browser) => {
      const artist = await personOfRole(service, 'artist');
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, `/studios/${service.studioId}/settings/channels`, 'Where alerts go');
      await page.getByText('No webhook is told.').waitFor();
      const form = page.getByRole('form', { name: 'Add a webhook' });
      const add = async (address: string) => {
        await form.getByLabel('Address').fill(address);
        await form.getByRole('button', { name: 'Add a webhook' }).click();
      };
      await form.getByLabel('Name').fill('Desk program');
      await add('desk.example/alerts');
      await form.getByText('The address is no address: one such as https://desk.example/alerts').waitFor();
      await add('https://192.168.0.7/alerts');
      await form.getByText(/^The address leads to an address that is not on the open internet/).waitFor();
      await add(hook.url('/alerts?key=1'));
      await page.getByRole('heading', { name: 'The secret of Desk program' }).waitFor();
      const secret = page.getByRole('textbox', { name: 'Secret' });
      const first = await secret.inputValue();
      // One that was not copied yet stays when another is made.
      await form.getByLabel('Name').fill('Other program');
      await add(hook.url('/other'));
      await page.getByRole('heading', { name: 'The secret of Other program' }).waitFor();
      await expect.poll(() => secret.first().inputValue()).toBe(first);
      for (const _ of [1, 2]) await page.getByRole('button', { name: 'I have it' }).first().click();
      await expect.poll(() => secret.count()).toBe(0);
      const webhooks = page.getByRole('list', { name: 'Webhooks' });
      await expect.poll(() => webhooks.getByText('key=1').count()).toBe(0);

      await press(page, 'Send a test to Desk program');
      await webhooks.getByText('The test was sent and taken.').waitFor();
      const [sent] = hook.received;
      expect(() => new Webhook(first).verify(sent?.body ?? '', headersOf(sent))).not.toThrow();

      await press(page, 'New secret for Desk program');
      await page.getByRole('dialog').getByRole('button', { name: 'New secret' }).click();
      await page.getByText(/The one before signs too until/).waitFor();
      await expect.poll(() => secret.inputValue()).not.toBe(first);
      await press(page, 'I have it');

      await press(page, 'Change Desk program');
      await page
        .getByRole('form', { name: 'Change Desk program' })
        .getByLabel('From which severity on')
        .selectOption('urgent');
      await page
        .getByRole('form', { name: 'Change Desk program' })
        .getByRole('button', { name: 'Save' })
        .click();
      await webhooks.getByText(/from “urgent” on/).waitFor();

      // Gone at the receiver is gone here, and says why.
      hook.usually = { status: 410 };
      await press(page, 'Send a test to Desk program');
      await webhooks.getByText(/^The test could not be sent: /).waitFor();
      await page.reload();
      const stopped = page.getByRole('list', { name: 'Stopped' });
      await stopped.getByText(/^Stopped: .*410/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      hook.usually = {};
      await press(page, 'Go on telling Desk program');
      await webhooks.getByText('Desk program', { exact: true }).waitFor();

      await press(page, 'Add an address for Some artist');
      const giving = page.getByRole('form', { name: 'Add an address for Some artist' });
      await giving.getByLabel('E-mail address').fill('artist@studio.example');
      await giving.getByRole('button', { name: 'Add the address' }).click();
      await page.getByRole('list', { name: 'Addresses and browsers of Some artist' }).waitFor();

      const order = page.getByRole('form', { name: 'Order of people' });
      await order.getByLabel('Add somebody at the end').selectOption({ label: 'Some artist' });
      await order.getByLabel('Minutes until it goes on').fill('15');
      await order.getByRole('button', { name: 'Save' }).focus();
      await page.keyboard.press('Enter');
      await order.getByText('Saved.').waitFor();
      await page.getByText('As it stands now: Some artist').waitFor();
      expect(await service.seen<HandingOnView>('/handing-on')).toMatchObject({ afterMinutes: 15 });
      expect(await faultsEverywhere(page)).toEqual([]);

      // Who only treats sees to their own.
      const { page: own } = await pageOf(browser, service.url, artist.cookie);
      await own.goto(`${service.url}/studios/${service.studioId}/settings/channels`);
      await own.getByRole('heading', { level: 1, name: 'Not for your role' }).waitFor();
      await own.goto(`${service.url}/account/told/${service.studioId}`);
      await own.getByRole('list', { name: 'E-mail' }).getByText('artist@studio.example').waitFor();
      watched.expectNoComplaint();
    }));

  it('take days of warning of one product, and what is expected, which ends when it is received', () =>
    withDevices(async (browser) => {
      const { linerGtin, umberId } = await makeSampleStudio(service);
      const { id: supplierId } = await service.made<{ id: string }>('/suppliers', { name: 'Corvin Supply' });
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, `/studios/${service.studioId}/settings/thresholds`, 'Thresholds');
      await page.getByText('No product has days of its own.').waitFor();
      await page.getByRole('textbox', { name: 'Set the days of a product' }).fill('umber');
      await page.getByRole('button', { name: 'Halden Colour Works Umber Warm 02' }).click();
      const days = page.getByRole('form', { name: /^Days of Halden Colour Works Umber/ });
      const save = days.getByRole('button', { name: 'Save' });
      await expect.poll(() => save.isDisabled()).toBe(true);
      await days.getByLabel('Days before a use-by date').fill('180');
      // Somebody else is faster: what they set stays, and so does what was written here.
      await service.put(`/date-thresholds/${umberId}`, { openedLifeEndingDays: 14 });
      await save.click();
      await days.getByText(/^Somebody else changed this/).waitFor();
      await expect.poll(() => days.getByLabel('Days before an opened life ends').inputValue()).toBe('14');
      await save.click();
      const products = page.getByRole('list', { name: 'Days of single products' });
      await products.getByText('use-by: 180 days before, opened life: 14 days before').waitFor();
      await press(page, 'Change the days of Halden Colour Works Umber Warm 02');
      await days.getByLabel('Days before a use-by date').fill('');
      await days.getByLabel('Days before an opened life ends').fill('');
      await save.click();
      await days
        .getByText(/^Neither of the two is given/)
        .first()
        .waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await days.getByLabel('Days before an opened life ends').fill('21');
      await save.click();
      await products.getByText('opened life: 21 days before', { exact: true }).waitFor();

      await show(page, `/studios/${service.studioId}/stock/expected`, 'Expected');
      await page.getByText('Nothing is expected.').waitFor();
      const expecting = page.getByRole('form', { name: 'Expect a delivery' });
      const expectOn = async (day: string, reference: string) => {
        await expecting.getByLabel('Supplier').selectOption({ label: 'Corvin Supply' });
        await expecting.getByLabel('Expected on').fill(day);
        await expecting.getByLabel('Number of the order').fill(reference);
        await press(page, 'Expect it');
      };
      await expectOn('2199-01-01', 'A-1');
      await expecting
        .getByText(/lies more than 730 days ahead; check the year/)
        .first()
        .waitFor();
      await expectOn('2026-01-05', 'A-1');
      const list = page.getByRole('list', { name: 'Still to come' });
      await list.getByText('late', { exact: true }).waitFor();
      await expectOn(nextWeek(), 'A-2');
      await list.getByText('Corvin Supply, A-2').waitFor();
      await list.getByRole('button', { name: /^Change: Corvin Supply, A-1/ }).click();
      const changing = page.getByRole('form', { name: /^Change: Corvin Supply, A-1/ });
      await changing.getByLabel('Number of the order').fill('A-1b');
      expect(await faultsEverywhere(page)).toEqual([]);
      const { items } = await service.seen<ExpectedDeliveryPageView>('/expected-deliveries');
      const open = items.find(({ reference }) => reference === 'A-1');
      await service.patch(`/expected-deliveries/${open?.id}`, { version: 1, orderedOn: '2026-01-02' });
      await changing.getByRole('button', { name: 'Save' }).click();
      await changing.getByText(/^Somebody else changed this/).waitFor();
      await changing.getByRole('button', { name: 'Save' }).click();
      await list.getByText('Corvin Supply, A-1b').waitFor();
      await list.getByText(/ordered .*2026/).waitFor();
      await list.getByRole('button', { name: /^Call off: Corvin Supply, A-2/ }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Call off' }).click();
      const ended = page.getByRole('list', { name: 'No longer expected' });
      await ended.getByText('called off', { exact: true }).waitFor();

      await show(page, `/studios/${service.studioId}/stock/receive`, 'Receive');
      await page.getByRole('textbox', { name: 'Symbol or lot' }).fill(`01${linerGtin}1728103110CL-7`);
      await page.keyboard.press('Enter');
      await page.getByRole('list', { name: 'What arrived' }).getByText('CL-7').first().waitFor();
      await page.getByLabel('Which expected delivery is it?').selectOption({ index: 1 });
      await expect.poll(() => page.getByLabel('Supplier').inputValue()).toBe(supplierId);
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Take in');
      await page.getByText(/^Taken in: 1 line/).waitFor();
      await show(page, `/studios/${service.studioId}/stock/expected`, 'Expected');
      await page.getByText('Nothing is expected.').waitFor();
      await ended.getByRole('link', { name: /^To the delivery: Corvin Supply, A-1b/ }).click();
      await page.getByRole('heading', { level: 1, name: 'Delivery', exact: true }).waitFor();
      watched.expectNoComplaint();
    }));

  it('tell a browser of its own accord only once its owner allows it, and forget it again', () =>
    withDevices(async (browser) => {
      const device = await browser.browser()?.newContext({ locale: 'en-GB', serviceWorkers: 'allow' });
      if (!device) throw new Error('This browser opens no other device.');
      await device.addInitScript(ownPushService());
      const { page } = await openAsOwner(device, service);
      await page.evaluate('navigator.serviceWorker.ready.then(() => undefined)');
      const path = `/account/told/${service.studioId}`;
      await show(page, path, 'How you are told');
      await press(page, 'Tell this browser');
      await page.getByText('This browser does not let Lotward show messages.').waitFor();
      expect(await page.evaluate('localStorage.subscribed')).toBeUndefined();

      await device.grantPermissions(['notifications'], { origin: service.url });
      await show(page, path, 'How you are told');
      await press(page, 'Tell this browser');
      const browsers = page.getByRole('list', { name: 'Browsers' });
      await browsers.getByText('this browser').waitFor();
      await expect.poll(() => page.getByRole('button', { name: 'Tell this browser' }).count()).toBe(0);
      expect(await page.evaluate('localStorage.subscribedWith')).toMatch(/^4,/);
      // It knows itself again.
      await show(page, path, 'How you are told');
      await browsers.getByText('this browser').waitFor();
      await browsers.getByRole('button', { name: /^Remove/ }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Remove', exact: true }).click();
      await page.getByText('No browser of yours is told.').waitFor();
      await page.getByRole('button', { name: 'Tell this browser' }).waitFor();
      expect(await page.evaluate('localStorage.subscribed')).toBeUndefined();
      await device.close();
    }));
});

function headersOf(sent: ReceivedWebhook | undefined): Record<string, string> {
  return Object.fromEntries(
    Object.entries(sent?.headers ?? {}).map(([name, value]) => [name, String(value)]),
  );
}

function nextWeek(): string {
  return new Date(Date.now() + 7 * 86_400_000).toISOString().slice(0, 10);
}

/** Stands for the message service of the browser's maker, which is not reached from here: it gives out one address. */
function ownPushService(): string {
  const key = createECDH('prime256v1').generateKeys('base64url');
  const auth = randomBytes(16).toString('base64url');
  return `(() => {
    const subscription = {
      endpoint: 'https://push.example/one',
      options: { applicationServerKey: null },
      toJSON: () => ({ endpoint: subscription.endpoint, keys: { p256dh: '${key}', auth: '${auth}' } }),
      unsubscribe: async () => delete localStorage.subscribed,
    };
    PushManager.prototype.getSubscription = async () => (localStorage.subscribed ? subscription : null);
    PushManager.prototype.subscribe = async ({ applicationServerKey }) => {
      localStorage.subscribed = 'yes';
      localStorage.subscribedWith = [...applicationServerKey].join();
      return subscription;
    };
  })()`;
}
