import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RecallPageView, RecallView } from '../../src/recalls/recalls.views.js';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { openAs, openAsOwner } from '../support/web-steps.js';

const notice = `PRODUCT SAFETY RECALL

Halden Colour Works is recalling Umber, shade Warm 02.
Lot HU-118 and lots 07110002 thru 07110009.
Risk: microbial contamination, which can lead to infection of the skin.
Stop using it at once. Return what is left to us.
Reference 2026-07
`;

describe.skipIf(!hasChromium)('recalls on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    for (const code of ['HU-118', 'HU 118', '07110005', 'OT-9']) {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code, quantity: 2 });
      if (code !== 'HU-118') continue;
      const session = await walkIn(service, studio);
      await service.made(`/sessions/${session}/scans`, { containerId: containers[0]?.id });
    }
  });
  afterAll(() => service.dispose());

  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'recalls', ...below].join('/');
  const show = async (page: Page, ...below: string[]) => {
    await page.goto(address(...below));
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText('Loading …').waitFor({ state: 'detached' });
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
  const holds = async () => (await service.seen<OpenHoldPageView>('/holds?limit=200')).items;

  it('lead from the text of a notice to what is held, decided and amended', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await page.getByRole('navigation').getByRole('link', { name: 'Recalls', exact: true }).first().click();
      await page.getByText('No recall is open.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await page.getByRole('link', { name: 'Answer a recall' }).click();
      await page.getByRole('heading', { level: 1, name: 'Answer a recall' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByLabel('Text of the notice').fill(notice);
      await press(page, 'Read the notice');

      // What was read is marked in the text as it came, and reached by keys.
      const text = page.getByRole('region', { name: 'Text of the notice with its marks' });
      await text.locator('mark', { hasText: 'HU-118' }).first().waitFor();
      await press(page, 'Next mark');
      await text.locator('mark:focus').waitFor();
      const lots = page.getByRole('list', { name: 'Lots', exact: true });
      await lots.getByText('HU-118', { exact: true }).waitFor();
      await lots.getByText('07110002 through 07110009').waitFor();
      await page.getByRole('button', { name: 'Show HU-118 in the text' }).click();
      await text.locator('mark:focus', { hasText: 'HU-118' }).waitFor();

      // Before anything is held, it says what would be.
      await page.getByText('2 lots are certainly meant, 1 possibly.').waitFor();
      await page.getByText('only spaces, hyphens or a word before the code differ').waitFor();
      expect(await holds()).toEqual([]);
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByLabel('What it is called here').fill('Umber of Halden');
      await press(page, 'Hold now and open the recall');

      await page.getByRole('heading', { level: 1, name: 'Umber of Halden' }).waitFor();
      const lotList = page.getByRole('list', { name: 'Lots', exact: true });
      await lotList.getByText('possible, to decide').waitFor();
      expect(await holds()).toHaveLength(3);
      await page.getByText('1 tray has it now').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Umber Warm 02, HU 118 is not affected');
      await page.getByLabel('What shows that it is not affected').fill('the label in hand says HU 113');
      await press(page, 'Save');
      await lotList.getByText('not affected', { exact: true }).waitFor();
      await lotList.getByText(/^Decided not affected by .*the label in hand says HU 113$/).waitFor();
      expect(await holds()).toHaveLength(2);

      await page.getByRole('link', { name: 'Widen or correct it' }).click();
      await page.getByLabel('A further notice').fill('Halden Colour Works: Umber, lot OT-9 is recalled too.');
      await press(page, 'Read the notice');
      await page.getByText('What the notice says').waitFor();
      await page
        .getByRole('list', { name: 'Lots', exact: true })
        .getByText('OT-9', { exact: true })
        .waitFor();
      await page.getByRole('heading', { name: /^Certain: 3 lots$/ }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByLabel('Why it is amended').fill('the maker added a lot');
      await press(page, 'Amend the recall');
      await page.getByText('How it was amended: 2 versions').click();
      await page.getByText('Because: the maker added a lot').waitFor();
      await page.getByText('Umber Warm 02, OT-9').first().waitFor();
      expect(await holds()).toHaveLength(3);

      // The text stays as it came, each notice by itself.
      await page.getByText('Show the text').last().click();
      await page
        .getByRole('region', { name: /Text of the notice/ })
        .getByText('Stop using it at once')
        .waitFor();

      // Today says that it is open, and leads there.
      await page.getByRole('navigation').getByRole('link', { name: 'Today', exact: true }).click();
      await page.getByRole('link', { name: 'Look at it: Recall open, Umber of Halden' }).click();
      await page.getByRole('heading', { level: 1, name: 'Umber of Halden' }).waitFor();
      watched.expectNoComplaint();
    }));
});
