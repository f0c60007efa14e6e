import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  openingStockColumns,
  openingStockExample,
} from '../../src/stock/opening-stock/opening-stock-columns.js';
import { templateText } from '../../src/web/taking-in/template-text.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { openAsOwner, pageOfOwner } from '../support/web-steps.js';

const pictures = process.env.SCREENSHOTS;

describe.skipIf(!hasChromium)('bringing a list', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
    await makeSampleStudio(service);
  });
  afterAll(() => service.dispose());

  const look = (page: Page) => page.getByRole('button', { name: 'Look it over' }).click();
  /** What the page offers to be saved, and how it is called. */
  const saved = async (page: Page, button: string) => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: button }).click(),
    ]);
    return file;
  };
  const picture = async (page: Page, name: string) => {
    if (pictures === undefined) return;
    mkdirSync(pictures, { recursive: true });
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      for (const width of [360, 1280]) {
        await page.setViewportSize({ width, height: 800 });
        await page.screenshot({
          path: join(pictures, `${name}-${colorScheme}-${width}.png`),
          fullPage: true,
        });
      }
    }
  };

  it('shows every fault of opening stock by its row, and takes it in once it is mended', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.goto(`${service.url}/studios/${service.studioId}/stock/opening-stock`);
      await page.getByRole('heading', { level: 1, name: 'Opening stock' }).waitFor();
      expect((await saved(page, 'Save an example')).suggestedFilename()).toBe('opening-stock-example.csv');

      // The number of the example is another product's in this studio.
      const [first, ...rest] = openingStockExample.map(({ gtin: _, ...row }) => row);
      const faulty = [{ ...first, 'use by': '03/04/2027', quantity: 'two' }, ...rest];
      const file = (name: string, text: string | Buffer) => ({
        name,
        mimeType: 'text/csv',
        buffer: Buffer.from(text),
      });
      const choose = page.locator('input[type=file]');
      await choose.setInputFiles(file('latin.csv', Buffer.from([0x4a, 0xf6, 0x72])));
      await page.getByText('This file is not UTF-8').waitFor();
      await choose.setInputFiles(file('shelf.csv', templateText(openingStockColumns, faulty)));
      await page.getByText('shelf.csv is read.').waitFor();
      await look(page);
      await page.getByText('1 of 4 rows cannot be taken in.').waitFor();
      await page.getByText('2027-04-03 or 2027-03-04, whichever is meant').waitFor();
      await page.getByText('"two" is not a whole number').waitFor();
      expect(await page.getByRole('button', { name: 'Take everything in' }).count()).toBe(0);
      const rows = page.getByRole('list', { name: 'Rows of the list' }).locator(':scope > li');
      await expect.poll(() => rows.count()).toBe(1);
      await page.getByLabel('Only the 1 row to be corrected').uncheck();
      await expect.poll(() => rows.count()).toBe(4);
      expect(await faultsEverywhere(page)).toEqual([]);
      await picture(page, 'opening-stock-faults');

      await choose.setInputFiles(
        file('mended.csv', templateText(openingStockColumns, [{ ...first }, ...rest])),
      );
      await look(page);
      await page.getByText('4 rows, no faults.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await picture(page, 'opening-stock-preview');
      await page.getByRole('button', { name: 'Take everything in' }).click();
      await page.getByText('Taken in: 4 rows, 4 new lots').waitFor();
      await picture(page, 'opening-stock-taken');
      await page.getByRole('link', { name: 'Show what was taken in' }).click();
      await page.getByRole('heading', { level: 1, name: 'Delivery' }).waitFor();
      watched.expectNoComplaint();
    }));

  it('takes in bookings that are pasted, with what is chosen for all, and keeps no name anywhere', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await page.getByRole('link', { name: 'Settings', exact: true }).click();
      await page.getByRole('link', { name: 'Bookings from a list' }).click();
      await page.getByRole('heading', { level: 1, name: 'Bookings from a list' }).waitFor();
      const paste = page.getByLabel('Or paste it here');
      const day = new Date(Date.now() + 10 * 86_400_000).toISOString().slice(0, 10);
      await paste.fill(
        `client name\tcontact\tplanned start\nPia Berg\tpia@example.org\t${day} 14:30\nIda Sommer\t+43 1 5550100\t${day} 15:00`,
      );
      await look(page);
      await page.getByText('2 of 2 rows cannot be taken in.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await picture(page, 'bookings-faults');
      await page.getByLabel('Visit, where none is said').selectOption({ label: 'refresh' });
      await look(page);
      await page.getByText('2 new sessions, 1 new client').waitFor();
      await page.getByText('The artist has another session 30 minutes before').waitFor();
      await page.getByText('How a calendar is read').click();
      expect(await faultsEverywhere(page)).toEqual([]);
      await picture(page, 'bookings-preview');
      await page.getByRole('button', { name: 'Take everything in' }).click();
      await page.getByText('Taken in: 2 sessions, 1 new client.').waitFor();
      expect(
        await page.evaluate('document.title + JSON.stringify(localStorage) + JSON.stringify(sessionStorage)'),
      ).not.toContain('Berg');
      expect(watched.requested.join('\n')).not.toContain('Berg');

      const entry = (uid: string, start: string) =>
        `BEGIN:VEVENT\r\nUID:${uid}\r\nDTSTART${start}\r\nSUMMARY:Pia Berg – Powder brows – touch-up\r\nEND:VEVENT\r\n`;
      const basic = day.replaceAll('-', '');
      await paste.fill(
        `BEGIN:VCALENDAR\r\n${entry('a', `:${basic}T090000`)}${entry('b', `;VALUE=DATE:${basic}`)}END:VCALENDAR`,
      );
      await look(page);
      await page.getByText('a day without a time').waitFor();
      await paste.fill(`BEGIN:VCALENDAR\r\n${entry('a', `:${basic}T090000`)}END:VCALENDAR`);
      await look(page);
      await page.getByText('1 new session, 0 new clients').waitFor();
      watched.expectNoComplaint();
    }));
});
