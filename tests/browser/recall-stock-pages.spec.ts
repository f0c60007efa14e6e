import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RecallBalanceView } from '../../src/recalls/balance/recall-balance.views.js';
import type { RecallContainerPageView } from '../../src/recalls/containers/recall-containers.views.js';
import type { OpenedRecallView } from '../../src/recalls/recalls.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, type ReceivedLine, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { pageOfOwner } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('held stock on the pages of a recall', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  let bottles: ReceivedLine;
  let box: ReceivedLine;
  let recallId: string;

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    await service.made('/places', { name: 'Recall box', kind: 'set aside' });
    await service.made('/people', { name: 'Mira Anders', role: 'artist' });
    bottles = await receive(service, studio, { productId: studio.umberId, code: 'ST-118', quantity: 2 });
    box = await receive(service, studio, { productId: studio.linerId, code: 'ST-204', quantity: 10 });
    const item = { gtins: [], openEnded: false };
    const opened = await service.made<OpenedRecallView>('/recalls', {
      title: 'Umber and liner',
      scope: {
        items: [
          { ...item, productIds: [studio.umberId], lots: [{ kind: 'code', code: 'ST-118' }] },
          { ...item, productIds: [studio.linerId], lots: [{ kind: 'code', code: 'ST-204' }] },
        ],
      },
    });
    recallId = opened.id;
  });
  afterAll(() => service.dispose());

  const show = async (page: Page, part: string) => {
    await page.goto(`${service.url}/studios/${service.studioId}/recalls/${recallId}/${part}`);
    await page.getByRole('heading', { level: 1, name: 'Umber and liner' }).waitFor();
    await page.getByText('Loading …').waitFor({ state: 'detached' });
  };
  const written = (labelCode: string | undefined) => (labelCode ?? '').replace(/(.{4})(?=.)/g, '$1-');
  const containers = () => service.seen<RecallContainerPageView>(`/recalls/${recallId}/containers`);

  it('are found by their labels, put aside or missed, returned in parts, and accounted for', () =>
    withDevices(async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await show(page, 'containers');
      const list = page.getByRole('list', { name: 'Bottles and boxes' });
      await list.getByRole('listitem').nth(2).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      // A label of something else is not of this recall; one that is, opens what is to be said of it.
      const [first, second] = bottles.containers;
      const other = await receive(service, studio, { productId: studio.gelId, code: 'OTHER' });
      await page.keyboard.type(other.containers[0]?.labelCode ?? '');
      await page.keyboard.press('Enter');
      await page.getByText('is no bottle or box of this recall').waitFor();
      await page.keyboard.type(first?.labelCode ?? '');
      await page.keyboard.press('Enter');
      const scanned = page.getByRole('list', { name: written(first?.labelCode) });
      await scanned.getByLabel('Written on the tag').fill('RECALL 7');
      await expect.poll(() => scanned.getByLabel('Put aside at').inputValue()).not.toBe('');
      expect(await faultsEverywhere(page)).toEqual([]);
      await scanned.getByRole('button', { name: 'Record' }).click();
      await scanned.waitFor({ state: 'detached' });
      await list.getByText('tag: RECALL 7').waitFor();
      const about = (label: string | undefined) => new RegExp(`${written(label)}$`);
      await page
        .getByRole('button', { name: new RegExp(`^Not found: .*${written(second?.labelCode)}$`) })
        .click();
      await page.getByLabel('What was seen').fill('Not in any room');
      await page.getByRole('button', { name: 'Record' }).click();
      await list.getByText('Not in any room').waitFor();
      expect((await containers()).totals).toMatchObject({ found: 1, notFound: 1, notLookedFor: 1 });

      // Neither without a witness nor a photo; then four of ten pieces, seen by somebody.
      const liner = box.containers[0]?.labelCode;
      await page
        .getByRole('button', { name: new RegExp(`^Returned or destroyed: .*${written(liner)}$`) })
        .click();
      const form = page.getByRole('form', { name: about(liner) });
      await form.getByLabel('How many pieces').fill('4');
      await form.getByLabel('Number of the parcel or certificate').fill('Parcel 7741');
      await form.getByRole('button', { name: 'Record' }).click();
      await form.getByRole('alert').first().waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await form.getByLabel('Witness').selectOption({ label: 'Mira Anders' });
      await form.getByRole('button', { name: 'Record' }).click();
      await list.getByText(/Parcel 7741, seen by Mira Anders$/).waitFor();

      await show(page, 'balance');
      const account = page.getByRole('table', { name: /Fine liner, ST-204$/ });
      await account.getByRole('button', { name: /^1 movement: sent back/ }).click();
      await account
        .getByRole('list', { name: /^Movements: sent back/ })
        .getByText(/[-−]4 piece/)
        .waitFor();
      await page.getByText(/^1 piece.*: looked for and not found$/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      const balance = await service.seen<RecallBalanceView>(`/recalls/${recallId}/balance`);
      expect(balance.totals.cameIn.pieces).toBe(12);
      expect(balance.totals.notAccounted.pieces).toBe(7);
    }));
});
