import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ReadinessView } from '../../src/recalls/closing/closing.views.js';
import type { OpenedRecallView } from '../../src/recalls/recalls.views.js';
import type { RecallReportView } from '../../src/recalls/report/recall-report.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { pageOf, pageOfOwner } from '../support/web-steps.js';

const notice = `PRODUCT SAFETY RECALL

Halden Colour Works is recalling Umber, shade Warm 02.
Lot HU-118 only.
Risk: microbial contamination, which can lead to infection of the skin.
Stop using it at once. Return what is left to us.
Reference 2026-07
`;

interface Made {
  id: string;
  reference: string;
}

const dayMilliseconds = 86_400_000;
const noonInDays = (days: number) =>
  `${new Date(Date.now() + days * dayMilliseconds).toISOString().slice(0, 10)}T11:00:00.000Z`;

describe.skipIf(!hasChromium)('the answer to a recall on its pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  let slateId: string;
  let ada: Made;
  let pia: Made;
  let slateRecall: string;
  let drill: string;
  let umberBottles: string[];

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, contactPoint: 'telephone 0800 555 0100' });
    await service.made('/people', { name: 'Bea Zweite', role: 'manager' });
    await service.made('/places', { name: 'Recall box', kind: 'set aside' });
    const supplierId = (await service.made<Made>('/suppliers', { name: 'Fernweg Supplies' })).id;
    slateId = (
      await service.made<Made>('/products', {
        ...{ kind: 'pigment', makerId: studio.makerId, name: 'Slate', shade: 'Cool 05' },
        ...{ volumeMicrolitres: 10_000, openedLife: 'P12M' },
      })
    ).id;
    const bought = async (productId: string, code: string, quantity: number) => {
      const { lines } = await service.made<ReceiptView>('/deliveries', {
        ...{ origin: 'purchase', supplierId, reference: 'note 12' },
        lines: [
          {
            ...{ productId, quantity, useBy: '2099-12-31', placeId: studio.placeId },
            codes: [{ kind: 'lot', code }],
          },
        ],
      });
      return lines[0]?.containers ?? [];
    };
    const [slate] = await bought(slateId, 'SL-7', 2);
    const umber = await bought(studio.umberId, 'HU-118', 2);
    await bought(studio.umberId, 'HU 118', 1);
    umberBottles = umber.map(({ labelCode }) => labelCode.replace(/(.{4})(?=.)/g, '$1-'));

    ada = await service.made<Made>('/clients', { name: 'Ada Certain', contact: 'ada@example.com' });
    pia = await service.made<Made>('/clients', { name: 'Pia Possible' });
    const used = (clientId: string, containerId: string | undefined, knownBy: string, days: number) =>
      service.made<RecordedUsesView>('/sessions/late', {
        ...{ source: 'paper', occurredAt: noonInDays(-days), clientId, artistId: studio.ownerId },
        ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
        uses: [{ knownBy, microlitres: 80, containerId }],
      });
    const treated = await used(ada.id, slate?.id, 'own label', 30);
    await used(pia.id, slate?.id, 'picked from a list', 20);
    await used(studio.clientId, umber[0]?.id, 'own label', 10);
    await service.made('/sessions', {
      ...{ clientId: ada.id, artistId: studio.ownerId, procedureId: studio.procedureId },
      ...{ visitKind: 'touch-up', plannedStart: noonInDays(5), followsSessionId: treated.id },
    });
    const scope = {
      items: [
        {
          ...{ gtins: [], productIds: [slateId], openEnded: false },
          lots: [{ kind: 'code', code: 'SL-7' }],
        },
      ],
    };
    slateRecall = (
      await service.made<OpenedRecallView>('/recalls', {
        ...{ title: 'Slate of Halden', scope, issuer: 'Halden Colour Works', reference: 'HC-7' },
        ...{ risk: 'The ink may hold germs.', remedy: 'The price is paid back.' },
      })
    ).id;
    const lots = await service.seen<{ items: { lotId: string }[] }>(`/recalls/${slateRecall}/lots`);
    drill = (await service.made<{ recallId: string }>('/recalls/drills', { lotId: lots.items[0]?.lotId }))
      .recallId;
  });
  afterAll(() => service.dispose());

  const show = async (page: Page, recallId: string, part: string) => {
    await page.goto(`${service.url}/studios/${service.studioId}/recalls/${recallId}/${part}`);
    await page.getByRole('heading', { level: 2 }).first().waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string | RegExp) =>
    page.getByRole('button', { name, ...(typeof name === 'string' && { exact: true }) }).click();
  /** Presses what saves a file. @returns its name and content */
  const saved = async (page: Page, name: string) => {
    const download = page.waitForEvent('download');
    await press(page, name);
    const file = await download;
    return { name: file.suggestedFilename(), content: readFileSync(await file.path()) };
  };
  const record = async (page: Page, channel: string, outcome: string, note = '') => {
    await page.getByLabel('How', { exact: true }).selectOption({ label: channel });
    await page.getByLabel('What came of it').selectOption({ label: outcome });
    if (note !== '') await page.getByLabel('What was said').fill(note);
    await press(page, 'Record the attempt');
    await page.getByLabel('What came of it').waitFor({ state: 'detached' });
  };
  const readiness = (id: string) => service.seen<ReadinessView>(`/recalls/${id}/readiness`);

  it('shows whom it touched and why that is only possible, whom it would touch next, and gives it all as a file', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, slateRecall, 'exposures');
      await page.getByText('first session: 2 sessions').waitFor();
      const clients = page.getByRole('list', { name: 'Client by client' });
      await press(page, `Show the sessions of ${ada.reference}`);
      await press(page, `Show the sessions of ${pia.reference}`);
      await page
        .getByRole('list', { name: `Sessions of ${ada.reference}` })
        .getByText('Slate Cool 05, lot SL-7, about 0.08 ml, known by our label')
        .waitFor();
      await page
        .getByRole('list', { name: `Sessions of ${pia.reference}` })
        .getByText('Possible: its lot was picked from a list and may have been another.')
        .waitFor();
      expect(await clients.getByText(/Ada|Pia/).count()).toBe(0);
      await press(page, 'Show all sessions');
      const sessions = page.getByRole('list', { name: 'Session by session' });
      await sessions.getByText(/^possibly touched$/).waitFor();
      await sessions.getByText(new RegExp(`, ${ada.reference}$`)).waitFor();
      const planned = page.getByRole('list', { name: 'Whom it would touch next' });
      await planned.getByText('Its mix would be repeated from').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      const table = await saved(page, 'As a table (CSV)');
      expect(table.name).toMatch(/\.csv$/);
      expect(table.content.toString()).toContain(ada.reference);
      const sheet = await saved(page, 'As a spreadsheet (XLSX)');
      expect(sheet.name).toMatch(/\.xlsx$/);
      expect(sheet.content.subarray(0, 2).toString()).toBe('PK');
      await page.getByLabel('Show', { exact: true }).selectOption({ label: 'possibly touched' });
      await clients.getByText(ada.reference).waitFor({ state: 'detached' });
      await clients.getByText(pia.reference).first().waitFor();
      watched.expectNoComplaint();
    }));

  it('tells each with a message of their own until all are told, and closes what stands only with a reason', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, slateRecall, 'telling');
      const recipients = page.getByRole('list', { name: 'Clients', exact: true });
      await recipients.getByText('ada@example.com').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, `Read the message for Ada Certain, ${ada.reference}`);
      const sheet = page.getByRole('article', { name: 'Message for Ada Certain' });
      await sheet.getByRole('heading', { name: 'Product safety recall' }).waitFor();
      await sheet.getByText('telephone 0800 555 0100').first().waitFor();
      await sheet.getByText('SL-7').first().waitFor();
      expect(await page.getByRole('link', { name: 'Write an e-mail' }).getAttribute('href')).toMatch(
        /^mailto:ada@example\.com\?subject=/,
      );
      expect(await faultsEverywhere(page)).toEqual([]);
      // On paper there is the message and nothing else.
      await page.emulateMedia({ media: 'print' });
      await expect.poll(() => sheet.isVisible()).toBe(true);
      for (const name of ['Print', 'Back to the list', 'Record the attempt']) {
        expect(await page.getByRole('button', { name, exact: true }).count()).toBe(0);
      }
      await page.emulateMedia({ media: 'screen' });
      await page.getByLabel('Language of the message').selectOption({ label: 'In German' });
      await sheet.getByRole('heading', { name: 'Produktsicherheitsrückruf' }).waitFor();
      await record(page, 'by telephone', 'no answer', 'rang twice');
      await page.getByRole('list', { name: 'What was tried' }).getByText('rang twice').waitFor();
      await recipients.getByText(/^1 attempt, the last /).waitFor();
      await press(page, `Record an attempt to tell Ada Certain, ${ada.reference}`);
      expect(await faultsEverywhere(page)).toEqual([]);
      await record(page, 'in person', 'reached: they know');
      await page.getByLabel('Only those who are still to be told').check();
      await recipients.getByText('Ada Certain').waitFor({ state: 'detached' });
      await press(page, `Record an attempt to tell Pia Possible, ${pia.reference}`);
      await record(page, 'by letter', 'they did not want to know');
      await page.getByText('Nobody is left to be told.').waitFor();

      await page.getByLabel('Only those who are still to be told').uncheck();
      await page.getByLabel('Whom').selectOption({ label: 'Suppliers' });
      await press(page, 'Read the message for Fernweg Supplies');
      await page.getByRole('article').getByText('note 12').waitFor();
      await record(page, 'by e-mail', 'reached: they know');
      await page.getByLabel('Whom').selectOption({ label: 'Authorities' });
      await page.getByLabel('An authority').fill('Office of Product Safety');
      await press(page, 'Record an attempt');
      await record(page, 'by e-mail', 'a message was left');
      await page.getByRole('list', { name: 'Authorities' }).getByText('Office of Product Safety').waitFor();
      const names = await saved(page, 'Names and contacts of all (CSV)');
      expect(names.content.toString()).toContain('Ada Certain');

      // What stands against closing leads to where it is mended.
      await page.getByRole('link', { name: /^Close/ }).click();
      const obstacles = page.getByRole('list', { name: 'What stands against closing' });
      await obstacles.getByText('2 containers not found').waitFor();
      expect(await obstacles.getByText('clients not told').count()).toBe(0);
      await page.getByRole('link', { name: 'Look for them' }).click();
      await page.getByRole('list', { name: 'Bottles and boxes' }).waitFor();
      await page.goBack();
      const close = page.getByRole('button', { name: 'Sign and close the recall' });
      await page.getByText('2 things stand against it without a reason: see above.').waitFor();
      await expect.poll(() => close.isDisabled()).toBe(true);
      await page.getByLabel('Close all the same: containers not found').check();
      await page.getByLabel('Why containers need not be found').fill('the house was flooded');
      await page.getByLabel('Close all the same: stock neither returned nor destroyed').check();
      await page.getByLabel('Why stock may stay').fill('it went with the water');
      expect(await faultsEverywhere(page)).toEqual([]);
      await close.click();
      await page.getByText('The recall is closed.').waitFor();
      await page.getByText(/hold stays? on what is left; what arrives later .* is held too/).waitFor();
      await page.getByText('Containers not found, closed all the same: the house was flooded').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      const { closing } = await service.seen<RecallReportView>(`/recalls/${slateRecall}/report.json`);
      expect(closing?.overrides.map(({ reason }) => reason)).toEqual([
        'the house was flooded',
        'it went with the water',
      ]);
      // Who was told stands nowhere in an address, nor in the title.
      expect(watched.requested.join(' ')).not.toMatch(/Ada|Pia|example\.com/);
      expect(await page.title()).not.toMatch(/Ada|Pia/);
      watched.expectNoComplaint();
    }));

  it('is read by an auditor without a name, and rehearsed in a drill without anybody being told', () =>
    withDevices(async (browser, other) => {
      const { cookie } = await personOfRole(service, 'auditor');
      const { page } = await pageOf(browser, service.url, cookie);
      await show(page, slateRecall, 'telling');
      await page.getByRole('list', { name: 'Clients', exact: true }).getByText(ada.reference).waitFor();
      expect(await page.getByText(/Ada Certain|ada@example/).count()).toBe(0);
      expect(await page.getByRole('button', { name: /^(Read|Record|Names)/ }).count()).toBe(0);
      await show(page, drill, 'closing');
      expect(await page.getByRole('button', { name: 'Stop the clock' }).count()).toBe(0);
      const document = await saved(page, 'The report (PDF)');
      expect(pagesOf(document.content).map(textOn).join('\n')).toContain('drill');

      const watched = await pageOfOwner(other, service);
      const own = watched.page;
      await show(own, drill, 'telling');
      await own.getByText('Drill: nothing is held and nobody is told.').waitFor();
      expect(await own.getByRole('button', { name: /^Record an attempt/ }).count()).toBe(0);
      await press(own, `Read the message for Ada Certain, ${ada.reference}`);
      await own.getByRole('article').getByText('Drill: this message goes to nobody.').waitFor();
      expect(await own.getByRole('link', { name: 'Write an e-mail' }).count()).toBe(0);
      expect(await faultsEverywhere(own)).toEqual([]);
      await show(own, drill, 'closing');
      await press(own, 'Stop the clock');
      await own.getByText('The drill is over.').waitFor();
      await own.getByText('containers found').waitFor();
      expect(await faultsEverywhere(own)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('goes by hand from the pasted text to the closed report, with everybody told and every bottle found', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      const part = (name: string) =>
        page
          .getByRole('navigation', { name: 'Parts of the answer' })
          .getByRole('link', { name: new RegExp(`^${name}`) })
          .click();
      await page.goto(`${service.url}/studios/${service.studioId}/recalls/all`);
      await page.getByRole('link', { name: 'Answer a recall' }).click();
      await page.getByLabel('Text of the notice').fill(notice);
      await press(page, 'Read the notice');
      await page.getByText('1 lot is certainly meant, 1 possibly.').waitFor();
      await page.getByLabel('What it is called here').fill('Umber of Halden');
      await press(page, 'Hold now and open the recall');
      await page.getByRole('heading', { level: 1, name: 'Umber of Halden' }).waitFor();
      const recallId = new URL(page.url()).pathname.split('/').at(-1) ?? '';

      await press(page, 'Umber Warm 02, HU 118 is not affected');
      await page.getByLabel('What shows that it is not affected').fill('the label in hand says HU 113');
      await press(page, 'Save');
      await page.getByText(/^Decided not affected by /).waitFor();

      await part('Find the stock');
      const stock = page.getByRole('list', { name: 'Bottles and boxes' });
      for (const label of umberBottles) {
        await press(page, new RegExp(`^Found: .*${label}$`));
        await page.getByLabel('Written on the tag').fill(`tag of ${label}`);
        await press(page, 'Record');
        await stock.getByText(`tag: tag of ${label}`).waitFor();
        await press(page, new RegExp(`^Returned or destroyed: .*${label}$`));
        await page.getByLabel('Number of the parcel or certificate').fill(`Parcel ${label}`);
        await page.getByLabel('Witness').selectOption({ label: 'Bea Zweite' });
        await press(page, 'Record');
        await stock.getByText(new RegExp(`Parcel ${label}, seen by Bea Zweite$`)).waitFor();
      }

      await part('Who was exposed');
      await page.getByText('first session: 1 session').waitFor();
      await part('Tell people');
      await press(page, /^Read the message for Ida Sommer/);
      await page.getByRole('article').getByText('HU-118').first().waitFor();
      await record(page, 'by telephone', 'reached: they know');
      await part('Balance');
      await page.getByText('Everything is accounted for.').waitFor();

      await part('Close');
      await page.getByText('Nothing stands against closing.').waitFor();
      expect(await readiness(recallId)).toMatchObject({ ready: true });
      await page.getByLabel('Who signs with you').selectOption({ label: 'Bea Zweite' });
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Sign and close the recall');
      await page.getByText('The recall is closed.').waitFor();
      await page.getByText(/signed by .*, with Bea Zweite$/).waitFor();
      const report = await saved(page, 'The report (PDF)');
      expect(report.name).toMatch(/^recall-report-.*\.pdf$/);
      const text = pagesOf(report.content).map(textOn).join('\n');
      for (const said of ['Umber of Halden', 'HU-118', 'Bea Zweite']) expect(text).toContain(said);
      expect(text).not.toContain('Ida Sommer');
      watched.expectNoComplaint();
    }));
});
