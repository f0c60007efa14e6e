import type { Page } from 'playwright-core';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TrainingCoursePageView } from '../../src/reorder/courses/training-courses.views.js';
import type {
  ArtistPlanningView,
  ItemPlanningPageView,
  PlanningSettingsView,
} from '../../src/reorder/settings/planning-settings.views.js';
import type { OfferPageView } from '../../src/reorder/supply/offers.views.js';
import type { SupplierTermsView } from '../../src/reorder/supply/supplier-terms.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { dayAhead, StockedStudio } from '../support/stocked-studio.js';
import { pageOf, pageOfOwner } from '../support/web-steps.js';

interface Made {
  id: string;
}

describe.skipIf(!hasChromium)('what can be ordered, on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let supplierId: string;
  let sandId: string;

  beforeAll(async () => {
    service = await startService('sqlite');
    const studio = new StockedStudio(service);
    await studio.product({ name: 'Umber', shade: 'Umber 3' });
    sandId = await studio.product({ name: 'Sand', shade: 'Sand 1' });
    await studio.product({ name: 'Liner', kind: 'cartridge' });
    supplierId = (await service.made<Made>('/suppliers', { name: 'Aldergate Supplies' })).id;
    await service.made('/procedures', { name: 'Powdered brows', bodyPlace: 'brows' });
  });
  afterAll(() => service.dispose());

  const show = async (page: Page, path: string, heading: string) => {
    await page.goto(`${service.url}/studios/${service.studioId}/${path}`);
    await page.getByRole('heading', { level: 1, name: heading }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

  it('are the terms of a supplier and its offers, with what is wrong said at its field', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'ordering/suppliers', 'Suppliers');
      await page.getByText('offers nothing yet').waitFor();
      await page.getByRole('link', { name: 'Terms and offers of Aldergate Supplies' }).click();
      await page.getByRole('heading', { level: 1, name: 'Aldergate Supplies' }).waitFor();
      await page.getByText('Nothing is known yet, so an assumption stands.').waitFor();

      const terms = page.getByRole('form', { name: 'Terms' });
      await terms.getByLabel('Days until it delivers').fill('4');
      await terms.getByLabel('Thursday').check();
      await terms.getByLabel('Smallest order, in EUR').fill('50');
      await terms.getByLabel('Free delivery from, in EUR').fill('200');
      await terms.getByLabel('Orders go to').fill('orders@aldergate.example');
      await terms.getByLabel('Our customer number').fill('C-77');
      await terms.getByRole('button', { name: 'Save' }).click();
      await terms
        .getByText(/^It is said from which sum on delivery is free/)
        .first()
        .waitFor();
      await terms.getByLabel('One delivery costs, in EUR').fill('1.000,50');
      await terms.getByRole('button', { name: 'Save' }).click();
      await terms.getByText('Write an amount in EUR, such as 12.50').first().waitFor();
      await terms.getByLabel('One delivery costs, in EUR').fill('5,90');
      await terms.getByRole('button', { name: 'Save' }).click();
      await terms.getByText('Saved.').waitFor();
      await page.getByText('Orders take 4 days.').waitFor();
      expect(await service.seen<SupplierTermsView>(`/supplier-terms/${supplierId}`)).toMatchObject({
        ...{ quotedLeadTimeDays: 4, orderWeekdays: [4], minimumOrderMinor: 5_000, deliveryCostMinor: 590 },
        contact: { mailAddress: 'orders@aldergate.example', customerNumber: 'C-77' },
      });

      await page.getByRole('textbox', { name: 'Which product is offered?' }).fill('Liner');
      await page.getByRole('button', { name: /Liner/ }).click();
      const offer = page.getByRole('form', { name: /^Offer of/ });
      await offer.getByLabel('Pieces in a box').fill('20');
      await offer.getByLabel('A pack costs, in EUR', { exact: true }).fill('30');
      await offer.getByRole('button', { name: 'Add a price for more packs' }).click();
      await offer.getByLabel('Price 2: from so many packs').fill('10');
      await offer.getByLabel('Price 2: a pack costs, in EUR').fill('31');
      await offer.getByRole('button', { name: 'Add the offer' }).click();
      await offer
        .getByText(/^a pack would cost more from 10 packs on/)
        .first()
        .waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await offer.getByLabel('Price 2: a pack costs, in EUR').fill('27.50');
      await offer.getByRole('button', { name: 'Add the offer' }).click();
      const offered = page.getByRole('list', { name: 'Offered', exact: true });
      await offered.getByText('boxes of 20').waitFor();
      await offered.getByText('€30.00 a pack, €27.50 from 10 packs on').waitFor();

      await offered.getByRole('button', { name: /^Change the offer of/ }).click();
      const change = page.getByRole('form', { name: /^Change the offer of/ });
      await change.getByLabel('Price 2: a pack costs, in EUR').fill('31');
      await change.getByRole('button', { name: 'Save' }).click();
      await change.getByText(/^a pack would cost more from 10 packs on/).waitFor();
      expect(await change.getByText(/a pack would cost more/).count()).toBe(1);
      await change.getByLabel('Price 2: a pack costs, in EUR').fill('27.50');
      await change.getByLabel('Packs to order at least').fill('2');
      await change.getByRole('button', { name: 'Save' }).click();
      await offered.getByText('boxes of 20, at least 2 packs').waitFor();
      const { items } = await service.seen<OfferPageView>('/offers');
      expect(items).toMatchObject([
        {
          containerPieces: 20,
          minimumPacks: 2,
          prices: [
            { fromPacks: 2, packPriceMinor: 3_000 },
            { fromPacks: 10, packPriceMinor: 2_750 },
          ],
        },
      ]);

      await offered.getByRole('button', { name: /^End the offer of/ }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'End', exact: true }).click();
      await page.getByRole('list', { name: 'Offered before' }).getByText('boxes of 20').waitFor();
      await show(page, 'ordering/suppliers', 'Suppliers');
      await page
        .getByText(
          /takes 4 days, orders on Thu, smallest order €50.00, delivery €5.90, free delivery from €200.00/,
        )
        .waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('are not looked for where there is no such supplier', () =>
    withDevices(async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await show(page, `ordering/suppliers/${uuidv7()}`, 'There is no such page');
    }));

  it('are training courses, and how the studio plans', () =>
    withDevices(async (browser) => {
      const artist = await personOfRole(service, 'artist');
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'ordering/courses', 'Training courses');
      await page.getByText('No course is booked.').waitFor();
      const form = page.getByRole('form', { name: 'Book a course' });
      await form.getByLabel('What is taught').selectOption('Powdered brows');
      await form.getByLabel('Day').fill(dayAhead(-3));
      await form.getByLabel('Trainees').fill('6');
      await form.getByRole('button', { name: 'Book it' }).click();
      await form
        .getByText(/a course is planned for today or a later day/)
        .first()
        .waitFor();
      await form.getByLabel('Day').fill(dayAhead(20));
      await form.getByRole('button', { name: 'Book it' }).click();
      const booked = page.getByRole('list', { name: 'Booked' });
      await booked.getByText('Powdered brows, 6 trainees').waitFor();
      await booked.getByRole('button', { name: /^Change the course/ }).click();
      const change = page.getByRole('form', { name: /^Change the course/ });
      await change.getByLabel('Trainees').fill('8');
      await change.getByRole('button', { name: 'Save' }).click();
      await booked.getByText('Powdered brows, 8 trainees').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await booked.getByRole('button', { name: /^Cancel the course/ }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Cancel the course', exact: true }).click();
      await page.getByText('No course is booked.').waitFor();
      expect((await service.seen<TrainingCoursePageView>('/training-courses?state=all')).items).toMatchObject(
        [{ trainees: 8, cancelledAt: expect.any(String) }],
      );

      await show(page, 'settings/planning', 'Planning');
      await page.getByText(/Left empty: 95% \(common practice, no source\)\.$/).waitFor();
      const studio = page.getByRole('form', { name: 'The studio' });
      await studio.getByLabel('Need to be met, in per cent').fill('97.5');
      await studio.getByLabel('One order costs you, in EUR').fill('8');
      await studio.getByRole('button', { name: 'Save' }).click();
      await studio.getByText('Saved.').waitFor();
      expect(await service.seen<PlanningSettingsView>('/planning-settings')).toMatchObject({
        serviceTargetPerMille: { value: 975, assumed: false },
        orderCostMinor: { value: 800, assumed: false },
        returnPerMille: { assumed: true },
      });

      await page.getByRole('textbox', { name: 'Which product is new?' }).fill('Umber');
      const chosen = (label: string, name: RegExp) =>
        page.getByRole('list', { name: new RegExp(label.replace('?', '\\?')) }).getByRole('button', { name });
      await chosen('Which product is new?', /Umber/).click();
      await page.getByRole('textbox', { name: 'Which one does it take the place of?' }).fill('Sand');
      await chosen('Which one does it take the place of?', /Sand/).click();
      await page
        .getByRole('form', { name: 'New in place of old' })
        .getByRole('button', { name: 'Save' })
        .click();
      await page
        .getByRole('list', { name: 'Planned otherwise' })
        .getByText(/^in place of .*Sand/)
        .waitFor();
      expect((await service.seen<ItemPlanningPageView>('/planning-settings/items')).items).toMatchObject([
        { replacesProductName: expect.stringContaining('Sand'), version: 1 },
      ]);

      await press(page, 'Last day of Some artist');
      const leaving = page.getByRole('form', { name: 'Last day of Some artist' });
      await leaving.getByLabel('Last day here').fill(dayAhead(40));
      await leaving.getByRole('button', { name: 'Save' }).click();
      await page.getByText(/^here until /).waitFor();
      const artists = await service.seen<ArtistPlanningView[]>('/planning-settings/artists');
      expect(artists.find(({ personId }) => personId === artist.personId)).toMatchObject({
        leavesOn: dayAhead(40),
      });
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('are read by artists, who change nothing and are not told where orders go', () =>
    withDevices(async (browser) => {
      const artist = await personOfRole(service, 'artist');
      const watched = await pageOf(browser, service.url, artist.cookie);
      const { page } = watched;
      await show(page, `ordering/suppliers/${supplierId}`, 'Aldergate Supplies');
      await page.getByText('Thursday').waitFor();
      await expect.poll(() => page.getByRole('textbox').count()).toBe(0);
      const asked = await fetch(
        `${service.url}/api/v1/studios/${service.studioId}/supplier-terms/${supplierId}`,
        { headers: { cookie: artist.cookie } },
      );
      expect(await asked.json()).toMatchObject({ hasContact: true, contact: null });
      expect(await faultsEverywhere(page)).toEqual([]);
      await show(page, 'ordering/courses', 'Training courses');
      expect(await page.getByRole('form').count()).toBe(0);
      watched.expectNoComplaint();
    }));

  it('are planned otherwise, with what was written kept when somebody was faster', () =>
    withDevices(async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await show(page, 'settings/planning', 'Planning');
      const choose = async (name: string) => {
        await page.getByRole('textbox', { name: 'Plan a product otherwise' }).fill(name);
        await page
          .getByRole('list', { name: /Plan a product otherwise/ })
          .getByRole('button', { name: new RegExp(name) })
          .click();
      };
      const form = page.getByRole('form', { name: 'Plan this item otherwise' });
      await choose('Liner');
      await form.getByRole('button', { name: 'Leave it' }).click();
      await form.waitFor({ state: 'detached' });
      await choose('Sand');
      await form.getByLabel('Share of the need to be met, in per cent').fill('98');
      const faster = { itemKind: 'product', itemKey: sandId, shortageCostMinor: 5_000 };
      const setFaster = { serviceTargetPerMille: null, rangeChoice: null, replacesProductId: null };
      expect((await service.put('/planning-settings/items', { ...faster, ...setFaster })).status).toBe(200);
      await form.getByRole('button', { name: 'Save' }).click();
      await form
        .getByText(/in the meantime, so nothing was saved/)
        .first()
        .waitFor();
      await expect
        .poll(() => form.getByLabel('Share of the need to be met, in per cent').inputValue())
        .toBe('98');
      await form.getByRole('button', { name: 'Save' }).click();
      await form.waitFor({ state: 'detached' });
      const { items } = await service.seen<ItemPlanningPageView>('/planning-settings/items');
      expect(items.find(({ itemKey }) => itemKey === sandId)).toMatchObject({
        serviceTargetPerMille: 980,
        shortageCostMinor: 5_000,
      });
    }));
});
