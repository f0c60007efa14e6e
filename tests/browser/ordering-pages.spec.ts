import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkDigit } from '../../src/catalogue/gs1/check-digit.js';
import type { ClaimPageView } from '../../src/reorder/claims/claims.views.js';
import type {
  PurchaseOrderPageView,
  PurchaseOrderView,
} from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { StockedStudio } from '../support/stocked-studio.js';
import { pageOf, pageOfOwner } from '../support/web-steps.js';

interface Made {
  id: string;
}

/** GTINs of 950, GS1's range for examples. */
const exampleGtin = (item: string) => `0950600${item}${checkDigit(`0950600${item}`)}`;
const umberGtin = exampleGtin('013511');
const sandGtin = exampleGtin('013528');

describe.skipIf(!hasChromium)('what is ordered and claimed, on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;

  beforeAll(async () => {
    service = await startService('sqlite');
    const studio = new StockedStudio(service);
    await studio.shelf();
    const umberId = await studio.product({ name: 'Umber', shade: 'Umber 3' });
    const linerId = await studio.product({ name: 'Liner', kind: 'cartridge' });
    const sandId = await studio.product({ name: 'Sand', shade: 'Sand 1' });
    await service.made(`/products/${umberId}/gtins`, { gtin: umberGtin });
    await service.made(`/products/${sandId}/gtins`, { gtin: sandGtin });
    const supplierId = (await service.made<Made>('/suppliers', { name: 'Pellworm Supply' })).id;
    const terms = {
      orderWeekdays: [],
      quotedLeadTimeDays: 5,
      minimumOrderMinor: 10_000,
      deliveryCostMinor: 690,
    };
    expect((await service.put(`/supplier-terms/${supplierId}`, terms)).status).toBe(200);
    const offer = { supplierId, packContainers: 1, minimumPacks: 1 };
    await service.made('/offers', {
      ...{ ...offer, productId: umberId, containerPieces: 1, orderCode: 'PW-7' },
      prices: [{ fromPacks: 1, packPriceMinor: 2_490 }],
    });
    await service.made('/offers', {
      ...{ ...offer, productId: linerId, containerPieces: 20 },
      prices: [{ fromPacks: 1, packPriceMinor: 3_000 }],
    });
  });
  afterAll(() => service.dispose());

  const show = async (page: Page, path: string, heading: string | RegExp) => {
    await page.goto(`${service.url}/studios/${service.studioId}/${path}`);
    await page.getByRole('heading', { level: 1, name: heading }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string | RegExp) =>
    page.getByRole('button', { name, ...(typeof name === 'string' && { exact: true }) }).click();
  const confirm = async (page: Page, name: string) => {
    await press(page, name);
    await page.getByRole('dialog').getByRole('button', { name, exact: true }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  };

  it('is drafted, approved against a warning, sent, received in part, and its rest called off', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'ordering/orders', 'Purchase orders');
      await page.getByText('No order is under way.').waitFor();
      await page.getByLabel('Supplier').selectOption('Pellworm Supply');
      await press(page, 'Draft an order');
      await page.getByRole('heading', { level: 1, name: 'Order 1 to Pellworm Supply' }).waitFor();

      const adding = page.getByRole('form', { name: 'Add a product' });
      const add = async (product: RegExp) => {
        const choice = adding.getByLabel('Add a product');
        const label = await choice.locator('option', { hasText: product }).textContent();
        await choice.selectOption({ label: label ?? '' });
        await adding.getByRole('button', { name: 'Add', exact: true }).click();
      };
      await add(/Umber/);
      const draft = page.getByRole('form', { name: 'Change the draft' });
      await draft.getByLabel('Packs of Umber Umber 3').waitFor();
      await add(/Liner/);
      await draft.getByLabel(/^Packs of Liner/).waitFor();
      // What is wrong stands at its line, though only that one is handed in.
      const liners = draft.getByLabel(/^Packs of Liner/);
      await liners.fill('0');
      await draft.getByRole('button', { name: 'Save' }).click();
      await expect.poll(() => liners.getAttribute('aria-invalid')).toBe('true');
      await liners.fill('1');
      await draft.getByLabel('Packs of Umber Umber 3').fill('3');
      await draft.getByLabel('Price of a pack of Umber Umber 3, in EUR').fill('twenty');
      await draft.getByRole('button', { name: 'Save' }).click();
      await draft.getByText('amounts such as 12.50 in EUR').first().waitFor();
      await draft.getByLabel('Price of a pack of Umber Umber 3, in EUR').fill('20');
      await draft.getByRole('button', { name: 'Save' }).click();
      await page.getByText('€90.00').first().waitFor();
      await draft.getByRole('button', { name: /^Take off Liner/ }).click();
      await draft.getByLabel(/^Packs of Liner/).waitFor({ state: 'detached' });

      // Sixty of a hundred, at a price of its own: it says so, and is approved all the same.
      await page.getByText('It is below the smallest order of the supplier.').waitFor();
      await page.getByText('The price differs from the offer.').waitFor();
      const approve = page.getByRole('button', { name: 'Approve', exact: true });
      await expect.poll(() => approve.isDisabled()).toBe(true);
      expect(await faultsEverywhere(page)).toEqual([]);
      const read = page.getByLabel('I have read this; approve it all the same');
      await read.check();
      await expect.poll(() => approve.isDisabled()).toBe(false);
      // What is written and not saved is neither approved nor lost; saved, its warnings are to be read anew.
      const packs = draft.getByLabel('Packs of Umber Umber 3');
      await packs.fill('4');
      await page.getByText(/only what is saved is approved/).waitFor();
      expect(await approve.isDisabled()).toBe(true);
      expect(await packs.inputValue()).toBe('4');
      await draft.getByRole('button', { name: 'Save' }).click();
      await page.getByText('€80.00').first().waitFor();
      await expect.poll(() => read.isChecked()).toBe(false);
      await packs.fill('3');
      await draft.getByRole('button', { name: 'Save' }).click();
      await page.getByText('€60.00').first().waitFor();
      await read.check();
      await approve.click();
      await page.getByRole('heading', { level: 2, name: 'Send it' }).waitFor();
      await page.getByText('No mail server is set').waitFor();
      const download = page.waitForEvent('download');
      await press(page, 'Order 1 as PDF');
      expect(
        readFileSync(await (await download).path())
          .subarray(0, 4)
          .toString(),
      ).toBe('%PDF');
      expect(await faultsEverywhere(page)).toEqual([]);
      await confirm(page, 'Mark as sent');
      await page.getByText('Nothing has come yet.').waitFor();

      // The way to receiving names it; what is scanned counts for it, and what was never ordered is told apart.
      await page.getByRole('link', { name: 'Receive what came' }).click();
      await page.getByRole('heading', { level: 1, name: 'Receive' }).waitFor();
      const due = page.getByRole('list', { name: 'Still to come of order 1' });
      await due.getByText('3 of 3 pieces').waitFor();
      await expect.poll(() => page.getByLabel('Supplier').inputValue()).not.toBe('');
      const scan = async (symbol: string, lot: string) => {
        await page.getByRole('textbox', { name: 'Symbol or lot' }).fill(symbol);
        await page.keyboard.press('Enter');
        await page.getByRole('list', { name: 'What arrived' }).getByText(lot).first().waitFor();
      };
      await scan(`01${umberGtin}1730123110UM-1`, 'UM-1');
      await scan(`01${sandGtin}1730123110SA-1`, 'SA-1');
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Take in');
      await page.getByText(/^Taken in: 2 lines/).waitFor();

      const [summary] = (await service.seen<PurchaseOrderPageView>('/purchase-orders')).items;
      await show(page, `ordering/orders/${summary?.id}`, 'Order 1 to Pellworm Supply');
      await page.getByText('1 of 3 came, 2 still to come').waitFor();
      await page.getByRole('list', { name: 'Otherwise than ordered' }).getByText('was not ordered').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await confirm(page, 'Call off the rest');
      await page.getByText('closed, the rest was called off').waitFor();
      expect(await service.seen<PurchaseOrderView>(`/purchase-orders/${summary?.id}`)).toMatchObject({
        ...{ state: 'closed', endedAs: 'rest called off', sentAs: 'by hand' },
        lines: [{ packs: 3, packPriceMinor: 2_000, receivedPieces: 1, outstandingPieces: 2 }],
        differences: [{ kind: 'not ordered', pieces: 1 }],
      });
      await show(page, 'ordering/orders', 'Purchase orders');
      await page
        .getByRole('list', { name: 'Closed or called off' })
        .getByText('Order 1 to Pellworm Supply')
        .waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('is claimed from what is suggested, told to the supplier and settled', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'ordering/claims', 'Claims against suppliers');
      await page.getByText('No claim is under way.').waitFor();
      const suggested = page.getByRole('list', { name: 'Suggested' });
      await suggested.getByText('Pellworm Supply: not ordered').waitFor();
      await press(page, /^Open a claim: not ordered, .*Sand/);
      const form = page.getByRole('form', { name: /^Open a claim/ });
      await form.getByLabel('Asked for, in EUR').fill('a lot');
      await form.getByRole('button', { name: 'Open a claim' }).click();
      await form.getByText('Write an amount such as 12.50 in EUR').first().waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await form.getByLabel('Asked for, in EUR').fill('19,90');
      await form.getByLabel('Note for the supplier').fill('Please fetch it.');
      await form.getByRole('button', { name: 'Open a claim' }).click();
      const underWay = page.getByRole('list', { name: 'Under way' });
      await underWay.getByText('Asked for: €19.90.').waitFor();
      await page.getByText('Nothing gives reason to claim.').waitFor();

      await press(page, /^Change: not ordered/);
      const change = page.getByRole('form', { name: /^Change: not ordered/ });
      await expect
        .poll(() => change.getByLabel('Note for the supplier').inputValue())
        .toBe('Please fetch it.');
      await change.getByLabel('Asked for, in EUR').fill('21');
      await change.getByRole('button', { name: 'Save' }).click();
      await underWay.getByText('Asked for: €21.00.').waitFor();
      const download = page.waitForEvent('download');
      await press(page, /^Text for the supplier: not ordered/);
      const letter = readFileSync(await (await download).path(), 'utf8');
      expect(letter).toContain('Please fetch it.');
      expect(letter).toContain('21.00');
      await press(page, /^Mark as sent: not ordered/);
      await page.getByRole('dialog').getByRole('button', { name: 'Mark as sent', exact: true }).click();
      await underWay.getByText('sent', { exact: true }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await press(page, /^Settle: not ordered/);
      const settling = page.getByRole('form', { name: /^Settle: not ordered/ });
      await expect.poll(() => settling.getByLabel('Made good, in EUR').inputValue()).toBe('21.00');
      await settling.getByLabel('Made good, in EUR').fill('20');
      await settling.getByRole('button', { name: 'Settle', exact: true }).click();
      await page.getByRole('list', { name: 'Settled' }).getByText('Made good: €20.00.').waitFor();
      await page.getByText('No claim is under way.').waitFor();
      expect((await service.seen<ClaimPageView>('/claims?state=settled')).items).toMatchObject([
        { reason: 'not ordered', pieces: 1, amountMinor: 2_100, settledMinor: 2_000, currency: 'EUR' },
      ]);
      watched.expectNoComplaint();
    }));

  it('is claimed again when it ended, beside what is claimed already on purpose only, and without a suggestion', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      const claims = async () =>
        (await service.seen<ClaimPageView>('/claims')).items.map(({ reason, pieces }) => [reason, pieces]);
      await show(page, 'ordering/claims', 'Claims against suppliers');
      const claimAgain = async () => {
        await press(page, /^Claim again: not ordered/);
        const form = page.getByRole('form', { name: /^Claim again: not ordered/ });
        await form.getByRole('button', { name: 'Open a claim', exact: true }).click();
        return form;
      };
      const first = await claimAgain();
      await first.waitFor({ state: 'detached' });
      const second = await claimAgain();
      await second.getByText('The same is claimed already').waitFor();
      expect(await claims()).toEqual([['not ordered', 1]]);
      expect(await faultsEverywhere(page)).toEqual([]);
      await second.getByRole('button', { name: 'Open another all the same' }).click();
      await second.waitFor({ state: 'detached' });

      await press(page, 'Claim something else');
      await page.getByRole('combobox', { name: 'Supplier' }).selectOption('Pellworm Supply');
      await page.getByLabel('What is wrong').selectOption('something else');
      await page
        .getByRole('list', { name: /Is it about a product/ })
        .getByText(/Sand/)
        .click();
      await page.getByLabel('Which lot?').selectOption({ label: 'lot SA-1, use by 31 Dec 2030' });
      const byHand = page.getByRole('form', { name: 'Claim something else' });
      await byHand.getByLabel('Pieces').fill('1');
      expect(await faultsEverywhere(page)).toEqual([]);
      await byHand.getByRole('button', { name: 'Open a claim' }).click();
      const underWay = page.getByRole('list', { name: 'Under way' });
      await underWay.getByText('Pellworm Supply: something else').waitFor();
      expect(await claims()).toEqual([
        ['other', 1],
        ['not ordered', 1],
        ['not ordered', 1],
      ]);
      watched.expectNoComplaint();
    }));

  it('is read by artists, who order and claim nothing', () =>
    withDevices(async (browser) => {
      const artist = await personOfRole(service, 'artist');
      const watched = await pageOf(browser, service.url, artist.cookie);
      const { page } = watched;
      await show(page, 'ordering/claims', 'Claims against suppliers');
      await page.getByRole('list', { name: 'Settled' }).getByText('Made good: €20.00.').waitFor();
      expect(await page.getByRole('button', { name: /^(Text for|Settle|Open a claim|Claim)/ }).count()).toBe(
        0,
      );
      await show(page, 'ordering/orders', 'Purchase orders');
      expect(await page.getByRole('form').count()).toBe(0);
      await page.getByRole('link', { name: 'Open order 1' }).click();
      await page.getByRole('heading', { level: 1, name: 'Order 1 to Pellworm Supply' }).waitFor();
      expect(
        await page.getByRole('button', { name: /^(Approve|Mark as sent|Call off|Order 1 as)/ }).count(),
      ).toBe(0);
      watched.expectNoComplaint();
    }));

  it('leads auditors nowhere that is not for them', () =>
    withDevices(async (browser) => {
      const auditor = await personOfRole(service, 'auditor');
      const { page } = await pageOf(browser, service.url, auditor.cookie);
      const [order] = (await service.seen<PurchaseOrderPageView>('/purchase-orders?state=ended')).items;
      const shown: [path: string, heading: string | RegExp][] = [
        ['ordering/orders', 'Purchase orders'],
        [`ordering/orders/${order?.id}`, /^Order 1/],
        [`ordering/suppliers/${order?.supplierId}`, 'Pellworm Supply'],
      ];
      // One of each kind.
      const addresses = new Map<string, string>();
      for (const [path, heading] of shown) {
        await show(page, path, heading);
        expect(await page.getByRole('main').getByRole('form').count()).toBe(0);
        for (const link of await page.getByRole('main').getByRole('link').all()) {
          const address = (await link.getAttribute('href')) ?? '';
          addresses.set(address.replaceAll(/[0-9a-f-]{36}/g, ''), address);
        }
      }
      expect(addresses.size).toBeGreaterThan(2);
      for (const address of addresses.values()) {
        await page.goto(`${service.url}${address}`);
        await page.getByRole('heading', { level: 1 }).first().waitFor();
        expect([address, await page.getByText('Not for your role').count()]).toEqual([address, 0]);
      }
    }));
});
