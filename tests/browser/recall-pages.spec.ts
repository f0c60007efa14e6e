import type { Page } from 'playwright-core';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { OpenHoldPageView } from '../../src/stock/holds.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { PlainSql } from '../support/plain-sql.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole, studioOfSameChain } from '../support/signing-in.js';
import { openAsOwner, pageOf, pageOfOwner } from '../support/web-steps.js';

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
  /** A tray on which a bottle lies that will be recalled. */
  let trayId: string;

  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    for (const code of ['HU-118', 'HU 118', '07110005', 'OT-9']) {
      const { containers } = await receive(service, studio, { productId: studio.umberId, code, quantity: 2 });
      if (code !== 'HU-118') continue;
      trayId = await walkIn(service, studio);
      await service.made(`/sessions/${trayId}/scans`, { containerId: containers[0]?.id });
    }
  });
  afterAll(() => service.dispose());

  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'recalls', ...below].join('/');
  const show = async (page: Page, ...below: string[]) => {
    await page.goto(address(...below));
    await page.getByRole('heading', { level: 1 }).waitFor();
    await expect.poll(() => page.getByText('Loading …').count()).toBe(0);
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

      // And so does the tray on which it lies.
      await page.goto(`${service.url}/studios/${service.studioId}/today/trays/${trayId}`);
      await page.getByText('It was recalled after it was laid out. Do not use it.').waitFor();
      watched.expectNoComplaint();
    }));

  it('are answered by hand or from a file too, and rehearsed against the clock', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'answer');
      await press(page, 'Enter it by hand');
      await page.getByText('Name a product or a lot: then this shows what is here of it.').waitFor();
      await expect
        .poll(() => page.getByRole('button', { name: 'Hold now and open the recall' }).isDisabled())
        .toBe(true);
      await page.getByLabel('Product', { exact: true }).fill('Umber');
      await page.getByLabel('Maker').fill('Halden Colour Works');
      // No lot is named, so that each may be meant.
      await page.getByRole('heading', { name: 'Possible: 4 lots' }).waitFor();
      await press(page, 'It is this one: Halden Colour Works Umber Warm 02');
      await page.getByRole('list', { name: 'Meant of the register' }).getByText('Umber Warm 02').waitFor();
      await press(page, 'Add lots');
      const form = page.getByRole('form', { name: 'Add lots' });
      await form.getByLabel('Codes').fill('OT-9\nNO-7');
      expect(await faultsEverywhere(page)).toEqual([]);
      await form.getByRole('button', { name: 'Add', exact: true }).click();
      await page.getByRole('heading', { name: 'Certain: 1 lot' }).waitFor();
      await press(page, 'Take away NO-7');
      await page.getByLabel('Lots beyond these may be meant too').check();
      await page.getByRole('heading', { name: 'Possible: 3 lots' }).waitFor();

      await press(page, 'Another notice');
      const rows = [
        'maker,product,lot,reference',
        'Nobody,Nothing,X-1,F-1',
        'Halden Colour Works,Umber,OT-9,F-2',
      ];
      const file = { name: 'notices.csv', mimeType: 'text/csv', buffer: Buffer.from(rows.join('\n')) };
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), press(page, 'Choose a file')]);
      await chooser.setFiles(file);
      await page.getByText('notices.csv: 2 notices').first().waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await press(page, 'Answer F-2');
      await page.getByRole('heading', { name: 'Certain: 1 lot' }).waitFor();

      await show(page, 'drills');
      await page.getByText('None was held yet.').waitFor();
      await page.getByLabel('On a lot that I choose').check();
      await page.getByLabel('Lot code').fill('OT-9');
      await press(page, 'Find');
      await press(page, 'Umber Warm 02, OT-9');
      expect(await faultsEverywhere(page)).toEqual([]);
      const before = await holds();
      await press(page, 'Start the clock');
      await page.getByText('Drill: nothing is held and nobody is told.').waitFor();
      await page.getByRole('timer').waitFor();
      await press(page, 'Done: Notice read');
      await page.getByText(/^done, .* min$/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      expect(await holds()).toEqual(before);

      await show(page, 'drills');
      await page.getByLabel('Every so many months').fill('6');
      await page.getByLabel('The next one by').fill('2099-01-01');
      await press(page, 'Save');
      await page.getByText('Every 6 months. The next one by 1 Jan 2099.').waitFor();

      await show(page, 'quality');
      await page.getByText(/^0 uses from /).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await show(page, 'notices');
      await page.getByText('No published notice waits for an answer.').waitFor();
      watched.expectNoComplaint();
    }));

  it('are answered for a chain, and from what authorities published', () =>
    withDevices(async (browser) => {
      await studioOfSameChain(service);
      const sql = await PlainSql.connect(service, 'write');
      const text = 'Halden Colour Works recalls Umber, Warm 02. Lot OT-9. Stop using it.';
      const at = new Date().toISOString();
      await sql.rows(
        `INSERT INTO recall_notice (studio_id, id, source, reference, text, text_digest, occurred_at, recorded_at, via)
         VALUES ($1, $2, 'fetched', 'P-31', $3, 'digest', $4, $5, 'system')`,
        [service.studioId, uuidv7(), text, at, at],
      );
      await sql.close();
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await show(page, 'notices');
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('link', { name: 'Answer P-31' }).click();
      await page.getByRole('heading', { name: 'Certain: 1 lot' }).waitFor();
      await page.getByLabel('What it is called here').fill('Umber of the chain');
      await page.getByLabel('For all studios of the chain').check();
      await press(page, 'Hold now and open the recall');
      await page.getByRole('heading', { level: 1, name: 'Umber of the chain' }).waitFor();
      await page.getByRole('link', { name: 'All studios' }).click();
      const studios = page.getByRole('list', { name: 'Studios of the chain' });
      await studios.getByText('Sister studio').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await show(page, 'notices');
      await page.getByText('No published notice waits for an answer.').waitFor();

      // It was none: what it held is released, and the record stays.
      await show(page, 'all');
      await page.getByRole('link', { name: 'Umber of the chain' }).click();
      await press(page, 'Withdraw the recall');
      await page.getByLabel('Why it was none').fill('the authority took it back');
      await press(page, 'Save');
      await page.getByText('Withdrawn: the authority took it back').waitFor();
      await show(page, 'quality');
      await page.getByRole('list', { name: 'All studios of the chain' }).getByText('Sister studio').waitFor();
      watched.expectNoComplaint();
    }));

  it('are read by an auditor, who changes nothing', () =>
    withDevices(async (browser) => {
      const { cookie } = await personOfRole(service, 'auditor');
      const watched = await pageOf(browser, service.url, cookie);
      const { page } = watched;
      await show(page, 'all');
      await page.getByRole('link', { name: 'Umber of Halden' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('link', { name: 'Umber of Halden' }).click();
      await page.getByRole('heading', { level: 1, name: 'Umber of Halden' }).waitFor();
      await page.getByText('certainly affected').first().waitFor();
      for (const name of ['Affected', 'Widen or correct it', 'Withdraw the recall', 'Answer a recall']) {
        expect(await page.getByText(name, { exact: true }).count()).toBe(0);
      }
      await page.goto(address('answer'));
      await page.getByRole('heading', { level: 1, name: 'Not for your role' }).waitFor();
      watched.expectNoComplaint();
    }));
});
