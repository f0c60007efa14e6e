import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PlanDetailView, PlanLinePageView, PlanView } from '../../src/reorder/plan/plans.views.js';
import type { PurchaseOrderPageView } from '../../src/reorder/purchase-orders/purchase-orders.views.js';
import type { ReplaysView } from '../../src/reorder/replay/replays.views.js';
import type { ItemPlanningPageView } from '../../src/reorder/settings/planning-settings.views.js';
import type { StockLevelsView } from '../../src/stock/levels.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { until } from '../support/waiting.js';
import { openAsOwner, pageOf, pageOfOwner } from '../support/web-steps.js';

const dayIn = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
const noon = (days: number) => `${dayIn(days)}T11:00:00.000Z`;

describe.skipIf(!hasChromium)('what to order, on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  let treat: (weeksAgo: number) => Promise<void>;

  beforeAll(async () => {
    service = await startService(undefined, { environment: { PLAN_PATHS: '300' } });
    studio = await makeSampleStudio(service);
    await work();
  });
  afterAll(() => service.dispose());

  /** A needle that every session takes, a shade that some take, and cups that nobody offers. */
  const work = async () => {
    const supplier = await service.made<{ id: string }>('/suppliers', { name: 'Quill and Daughters' });
    await service.put(`/supplier-terms/${supplier.id}`, {
      ...{ quotedLeadTimeDays: 5, orderWeekdays: [], deliveryCostMinor: 690, minimumOrderMinor: 100_000 },
    });
    const offer = (productId: string, containerPieces: number, packPriceMinor: number) =>
      service.made('/offers', {
        ...{ supplierId: supplier.id, productId, packContainers: 1, containerPieces, minimumPacks: 1 },
        ...{ prices: [{ fromPacks: 1, packPriceMinor }], currency: 'EUR', lifeOnArrivalDays: 540 },
      });
    await offer(studio.umberId, 1, 2_400);
    await offer(studio.linerId, 20, 1_800);
    const take = async (goods: Parameters<typeof receive>[2]) =>
      (await receive(service, studio, goods)).containers[0]?.id ?? '';
    const umber = await take({ productId: studio.umberId, code: 'UM-1', quantity: 2, useBy: dayIn(300) });
    const liner = await take({ productId: studio.linerId, code: 'FL-1', quantity: 12 });
    await take({ productId: studio.gelId, code: 'GL-1', quantity: 1 });
    const session = { clientId: studio.clientId, artistId: studio.ownerId, procedureId: studio.procedureId };
    treat = async (weeksAgo) => {
      await service.made('/sessions/late', {
        ...session,
        ...{ source: 'paper', occurredAt: noon(-7 * weeksAgo), visitKind: 'first session' },
        signedBy: studio.ownerId,
        uses: [
          ...(weeksAgo % 3 === 0 ? [{ microlitres: 300, containerId: umber, knownBy: 'own label' }] : []),
          { pieces: 1, containerId: liner, knownBy: 'own label' },
        ],
      });
    };
    for (let week = 1; week <= 10; week += 1) await treat(week);
    for (const days of [3, 10, 17]) {
      await service.made('/sessions', { ...session, visitKind: 'first session', plannedStart: noon(days) });
    }
  };
  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'ordering', ...below].join('/');
  const show = async (page: Page, ...below: string[]) => {
    await page.goto(address(...below));
    await page.getByRole('heading', { level: 1 }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
  const lineOf = async (planId: string, productId: string) => {
    const { items } = await service.seen<PlanLinePageView>(`/plans/${planId}/lines?limit=200`);
    const line = items.find(({ item }) => item.productIds.includes(productId));
    if (!line) throw new Error('The plan has no such line.');
    return line;
  };
  const latest = () => service.seen<PlanDetailView>('/plans/latest');
  const madeByService = async (): Promise<PlanDetailView> => {
    const { id } = await service.made<PlanView>('/plans', { purpose: 'plan' });
    return until('the plan', async () => {
      const plan = await service.seen<PlanDetailView>(`/plans/${id}`);
      return plan.state === 'done' ? plan : undefined;
    });
  };

  it('say how to begin, make a plan, and put orders together with the reason of each line', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await page.getByRole('link', { name: 'Ordering', exact: true }).click();
      await page.getByRole('heading', { level: 2, name: 'There is no plan yet' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await press(page, 'Make a plan now');
      await page.getByRole('heading', { level: 2, name: 'What it comes to' }).waitFor();
      const plan = await latest();
      // What every session takes runs short, and the order of it alone is smaller than the supplier takes.
      await page.getByRole('heading', { level: 2, name: 'Order to Quill and Daughters' }).waitFor();
      await page.getByText('missing', { exact: false }).first().waitFor();
      await page
        .getByRole('list', { name: 'Order to Quill and Daughters' })
        .getByText(/^Order \d+ pieces today/)
        .waitFor();
      // Nothing is offered of it, so the way to an offer is shown.
      const gel = await lineOf(plan.id, studio.gelId);
      await page.getByRole('link', { name: gel.item.label }).waitFor();
      await page.getByRole('heading', { level: 2, name: 'What was assumed' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await press(page, 'Plan anew');
      await page.getByText('Nothing that counts has changed since the plan before').waitFor();
      await page.getByRole('link', { name: 'Earlier plans' }).click();
      await expect
        .poll(() => page.getByRole('list', { name: 'Earlier plans' }).getByRole('listitem').count())
        .toBe(2);
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('show of one item what is needed, what may happen, and what else it could be; and plan it otherwise', () =>
    withDevices(async (browser) => {
      const plan = await madeByService();
      const { lineNumber, item } = await lineOf(plan.id, studio.linerId);
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'plan', plan.id, 'lines', String(lineNumber));
      await page.getByRole('img', { name: /^What is here if / }).waitFor();
      await page.getByText('The same in numbers').first().click();
      const fan = page.getByRole('table', { name: /^What is here if / }).first();
      await fan.getByRole('columnheader', { name: '95%' }).waitFor();
      const expected = page.getByRole('table', { name: 'What is to be expected' });
      await expected.getByRole('row', { name: /^Chance of running short/ }).waitFor();
      await page.getByRole('table', { name: 'Why not less, why not more' }).waitFor();
      await page.getByRole('list', { name: 'Lots as they stand now' }).getByText('FL-1').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      const form = page.getByRole('form', { name: 'Plan this item otherwise' });
      await form.getByLabel('Share of the need to be met, in per cent').fill('97.5');
      await form.getByLabel('Worth keeping in stock?').selectOption('keep in stock');
      await form.getByRole('button', { name: 'Save' }).click();
      await form.getByText('Saved').waitFor();
      const planned = async () =>
        (await service.seen<ItemPlanningPageView>('/planning-settings/items')).items.map(
          ({ itemKey, serviceTargetPerMille, rangeChoice }) => ({
            itemKey,
            serviceTargetPerMille,
            rangeChoice,
          }),
        );
      expect(await planned()).toEqual([
        { itemKey: item.key, serviceTargetPerMille: 975, rangeChoice: 'keep in stock' },
      ]);
      // Emptied, it is planned as the studio plans again.
      await form.getByLabel('Share of the need to be met, in per cent').fill('');
      await form.getByLabel('Worth keeping in stock?').selectOption('');
      await form.getByRole('button', { name: 'Save' }).click();
      await expect.poll(planned).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('show beside the plan what would be if something were different', () =>
    withDevices(async (browser) => {
      const plan = await madeByService();
      const { lineNumber, item } = await lineOf(plan.id, studio.linerId);
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'plan', plan.id, 'lines', String(lineNumber));
      await page.getByRole('link', { name: 'What if, for this item' }).click();
      const form = page.getByRole('form', { name: `Suppose, for ${item.label}` });
      await form.getByLabel('Deliveries take so many days more').fill('30');
      await form.getByLabel('So many per cent more is booked').fill('300');
      await press(page, 'Add sessions on a day');
      await form.getByLabel('Procedure').selectOption({ label: 'Powder brows' });
      await form.getByLabel('On', { exact: true }).fill(dayIn(4));
      await form.getByLabel('How many more').fill('5');
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Work it out');
      const beside = page.getByRole('table', { name: item.label });
      await beside.getByRole('row', { name: /^Decision/ }).waitFor();
      await page.getByText(`only ${item.label}, deliveries take 30 days longer, bookings +300%`).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('take reorder points into the levels, those set by hand only when they are ticked', () =>
    withDevices(async (browser) => {
      const plan = await madeByService();
      const liner = await lineOf(plan.id, studio.linerId);
      const point = liner.level.minimumPieces;
      if (point === null) throw new Error('The plan has no reorder point for what every session takes.');
      await service.put('/stock/levels', {
        ...{ subjectKind: liner.item.kind, subjectId: liner.item.key, minimumPieces: point + 7 },
      });
      const minimum = async () => {
        const { products, configurations } = await service.seen<StockLevelsView>('/stock/levels');
        const level = [...products, ...configurations].find((one) => one.level?.subjectId === liner.item.key);
        return level?.level?.minimumPieces;
      };
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'plan', plan.id, 'levels');
      const byHand = page.getByRole('checkbox', { name: liner.item.label });
      await byHand.waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await byHand.check();
      await page.getByRole('button', { name: /^Take \d+ min/ }).click();
      await page.getByRole('heading', { level: 2, name: 'Taken into the levels' }).waitFor();
      expect(await minimum()).toBe(point);
      watched.expectNoComplaint();
    }));

  it('make the draft of an order from what is to be ordered, and show those who only read nothing to press', () =>
    withDevices(async (browser) => {
      const plan = await madeByService();
      const [basket] = plan.baskets;
      if (!basket) throw new Error('The plan has nothing to order.');
      const watched = await pageOfOwner(browser, service);
      await show(watched.page, 'plan', plan.id);
      await press(watched.page, `Draft this order to ${basket.supplierName}`);
      await watched.page.waitForURL(/\/ordering\/orders\/[0-9a-f-]{36}$/);
      // What stands in an order of this plan is told, and leads there.
      await show(watched.page, 'plan', plan.id);
      await watched.page.getByRole('link', { name: 'Order 1, draft' }).waitFor();
      const { items } = await service.seen<PurchaseOrderPageView>('/purchase-orders');
      expect(items).toMatchObject([{ supplierName: basket.supplierName, planId: plan.id, state: 'draft' }]);
      const auditor = await pageOf(browser, service.url, (await personOfRole(service, 'auditor')).cookie);
      await show(auditor.page, 'plan');
      await auditor.page.getByRole('heading', { level: 2, name: 'What it comes to' }).waitFor();
      expect(await auditor.page.getByRole('button', { name: /^(Plan anew|Draft)/ }).count()).toBe(0);
      const { lineNumber } = await lineOf(plan.id, studio.gelId);
      const shown = [['plan'], ['plan', plan.id, 'lines', String(lineNumber)]];
      const links = new Set<string>();
      for (const below of shown) {
        await show(auditor.page, ...below);
        for (const link of await auditor.page.locator('main a[href]').all()) {
          links.add((await link.getAttribute('href')) ?? '');
        }
      }
      expect(links.size).toBeGreaterThan(3);
      for (const link of links) {
        await auditor.page.goto(new URL(link, service.url).href);
        await auditor.page.getByRole('heading', { level: 1 }).waitFor();
        expect(await auditor.page.getByText('Not for your role').count(), link).toBe(0);
      }
      auditor.expectNoComplaint();
    }));

  it('look back on what plans would have come to, and say when the record is too short for it', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'replay');
      await page.getByRole('heading', { level: 2, name: 'Nobody looked back yet' }).waitFor();
      await press(page, 'Look back now');
      await page.getByText('The record is too short to look back: it has 70 days').waitFor();
      for (const weeksAgo of [14, 17]) await treat(weeksAgo);
      await press(page, 'Look back anew');
      const sums = page.getByRole('table', { name: 'All items together' });
      await sums.waitFor();
      const replays = await service.seen<ReplaysView>('/plans/replay');
      const { result } = replays;
      const money = (minor = NaN) =>
        new Intl.NumberFormat('en', { style: 'currency', currency: 'EUR' }).format(minor / 100);
      const left = sums.getByRole('row', { name: /^Left in the end/ });
      expect(await left.getByRole('cell').allTextContents()).toEqual(
        [result?.plan, result?.asOrdered, result?.fixed].map((way) => money(way?.endMinor)),
      );
      const line = result?.lines[0];
      const worth = money(line?.plan.endMinor);
      await page
        .getByRole('table', { name: line?.label ?? '' })
        .getByText(worth)
        .first()
        .waitFor();
      // So short a record foretells nothing that could be looked at; what a longer one comes to is told as shares.
      await page.getByText('Nothing was foretold that could be looked at.').waitFor();
      const calibrated = { level: 0.95, forecasts: 160, enough: 152, claimed: 0.983, standardError: 0.01 };
      await page.route(/\/plans\/replay$/, (route) =>
        route.fulfill({
          json: {
            ...replays,
            result: { ...replays.result, calibration: [{ ...calibrated, verdict: 'too seldom' }] },
          },
        }),
      );
      await show(page, 'replay');
      const enough = page.getByRole('table', { name: 'Was enough really enough?' });
      await enough.getByRole('row', { name: '95% 95% 98.3% 160 too seldom' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));

  it('say that a run was stopped or failed, what is shown instead, and let it be made anew', () =>
    withDevices(async (browser) => {
      const plan = await madeByService();
      const { page } = await pageOfOwner(browser, service);
      const ending = { state: 'running', failure: null as string | null };
      const run = { ...plan, id: crypto.randomUUID(), sameAsId: null };
      await page.route(/plans\?.*limit=1(&|$)/, (route) =>
        route.fulfill({ json: { items: [{ ...run, ...ending }], next: null } }),
      );
      await page.route(/plans\/[^/]+\/cancel$/, (route) => {
        ending.state = 'cancelled';
        return route.fulfill({ status: 201, json: { ...run, ...ending } });
      });
      await show(page, 'plan');
      await press(page, 'Stop it');
      await page.getByText('stopped before it was done. What is shown was worked out before it').waitFor();
      expect(await page.getByRole('button', { name: 'Plan anew' }).count()).toBe(1);
      Object.assign(ending, { state: 'failed', failure: 'It needs more than 512 MB of memory.' });
      await show(page, 'plan');
      await page.getByRole('alert').getByText('It needs more than 512 MB of memory.').waitFor();
      await page.getByRole('alert').getByText('What is shown was worked out before it').waitFor();
      await page.getByRole('heading', { level: 2, name: 'What it comes to' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
    }));
});
