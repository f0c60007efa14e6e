import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkDigit } from '../../src/catalogue/gs1/check-digit.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { pagesOf } from '../support/pdf-pages.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { accept, fillSignIn, invite, openAsOwner, pageOfOwner } from '../support/web-steps.js';

/** GTINs of 950, GS1's range for examples. */
const exampleGtin = (item: string) => `0950600${item}${checkDigit(`0950600${item}`)}`;
const boxGtin = exampleGtin('013435');
const bottleGtin = exampleGtin('013511');

interface Delivery {
  reference: string | null;
  supplierName: string | null;
  lines: { productName: string; code: string | null; useBy: string | null; quantityPieces: number }[];
}

interface Container {
  lotCode: string | null;
  pieces: number;
  labelCode: string;
  held: boolean;
}

describe.skipIf(!hasChromium)('receiving and the catalogue on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  const open = async (page: Page, path: string, name: string) => {
    await page.goto(`${service.url}/studios/${service.studioId}/${path}`);
    await page.getByRole('heading', { level: 1, name }).waitFor();
  };
  const toReceiving = (page: Page) => open(page, 'stock/receive', 'Receive');
  /** As a hand-held scanner does: it types and presses Enter; between two parts it presses the key of the separator. */
  const scan = async (page: Page, ...parts: string[]) => {
    await page.getByRole('textbox', { name: 'Symbol or lot' }).focus();
    for (const [index, part] of parts.entries()) {
      if (index > 0) await page.keyboard.press('F8');
      await page.keyboard.type(part);
    }
    await page.keyboard.press('Enter');
  };
  const lines = (page: Page) => page.getByRole('list', { name: 'What arrived' }).locator('> li');
  const line = (page: Page, text: string) => lines(page).filter({ hasText: text });

  it('take in what an empty studio scans, once, with what was unknown made in passing and nothing lost', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await toReceiving(page);

      // A number that nobody knows: maker and product are made right there.
      await scan(page, `01${boxGtin}1728103110CL-2041`);
      const unknown = line(page, 'Which product?');
      await unknown.getByText(`The number ${boxGtin} is not in the register yet.`).waitFor();
      await unknown.getByRole('button', { name: 'A new product' }).click();
      await unknown.getByLabel('Pieces inside').fill('20');
      await unknown.getByRole('radio', { name: 'cartridge or blade' }).check();
      await unknown.getByRole('button', { name: 'Add a maker' }).click();
      await unknown.getByLabel('Name of the maker').fill('Corvin Needleworks');
      await unknown.getByRole('button', { name: 'Add the maker' }).click();
      await unknown.getByLabel('Name of the maker').waitFor({ state: 'detached' });
      await unknown.getByLabel('Name', { exact: true }).fill('Liner');
      await unknown.getByLabel('Notation on the box').fill('1207rl');
      await unknown.getByText('Read as: 0.35 mm, 7 points, round liner, taper unknown.').waitFor();
      await unknown.getByRole('button', { name: 'Add the product' }).click();

      // The scan goes on by itself, and its symbol said everything.
      const first = line(page, 'CL-2041');
      await first.getByText('Corvin Needleworks Liner 1207RL').waitFor();
      await first.getByText('1 × 20 pieces').waitFor();
      // The same symbol again is never counted in silence.
      await scan(page, `01${boxGtin}1728103110CL-2041`);
      const again = page.getByRole('group', { name: 'Corvin Needleworks Liner 1207RL, scanned again' });
      await again.getByText('The same symbol was scanned again. Is that another one?').waitFor();
      await first.getByText('1 × 20 pieces').waitFor();
      await again.getByRole('button', { name: '+1', exact: true }).click();
      await first.getByText('2 × 20 pieces').waitFor();

      // Another lot, of which the month only is given; two boxes told apart by their serial numbers.
      await scan(page, `01${boxGtin}1729020010CL-2042`, '21A1');
      const second = line(page, 'CL-2042');
      await second.getByText(/usable through 28 Feb 2029/).waitFor();
      await scan(page, `01${boxGtin}1729020010CL-2042`, '21A2');
      await second.getByText('2 × 20 pieces').waitFor();
      await scan(page, `01${boxGtin}1729020010CL-2042`, '21A2');
      await page.getByText('this very piece was scanned already').waitFor();
      await second.getByText('2 × 20 pieces').waitFor();

      // A line that is taken out can be brought back.
      await second.getByRole('button', { name: /^Take out/ }).click();
      await expect.poll(() => lines(page).count()).toBe(1);
      await page.getByRole('button', { name: 'Bring it back' }).click();
      await second.getByText('2 × 20 pieces').waitFor();

      // Supplier and number come last here; the supplier is made in passing.
      await page.getByRole('button', { name: 'Add a supplier' }).click();
      await page.getByLabel('Name of the supplier').fill('Nadelhaus Berger');
      await page.keyboard.press('Enter');
      await page.getByLabel('Name of the supplier').waitFor({ state: 'detached' });
      await page.getByLabel('Number of the delivery note or invoice').fill('LS-77');

      // What the service finds wrong stands at its line, and all that was typed is still there.
      await second.getByRole('button', { name: /^Change/ }).click();
      await second.getByText(/^More: made on/).click();
      await second.getByLabel('Made on').fill('2029-01-01');
      await second.getByLabel('Pieces with a broken seal').fill('3');
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await second.getByText(/manufactured on 2029-01-01 lies after the day of receipt/).waitFor();
      await page.getByText('Nothing was recorded yet: 1 line has something to be settled.').waitFor();
      expect(await service.seen('/deliveries')).toMatchObject({ items: [] });
      await second.getByLabel('Made on').fill('');

      // A sign-in that ran out loses nothing either.
      await browser.clearCookies();
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page.getByLabel('Sign-in name').waitFor();
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await page.getByRole('heading', { level: 1, name: 'Receive' }).waitFor();
      await second.getByText('2 × 20 pieces').waitFor();
      await expect
        .poll(() => page.getByLabel('Number of the delivery note or invoice').inputValue())
        .toBe('LS-77');
      await expect.poll(() => second.getByLabel('Pieces with a broken seal').inputValue()).toBe('3');

      await page.getByRole('button', { name: 'Take in', exact: true }).dblclick();
      await page.getByText('Taken in: 2 lines, 5 bottles and boxes.').waitFor();
      await page.getByText('What is faulty is on hold: the seal is broken.').waitFor();

      // The labels of what came, on the last two positions of a sheet and the next sheet.
      await page.getByLabel('First label at position').fill('64');
      await page.getByText('5 labels on 2 sheets.').waitFor();
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Make the PDF of 5 labels' }).click();
      const pdf = readFileSync(await (await download).path());
      expect(pdf.subarray(0, 4).toString()).toBe('%PDF');
      expect(pagesOf(pdf)).toHaveLength(2);

      // Later they are found again by the delivery.
      await page.getByRole('link', { name: 'Show this delivery' }).click();
      await page.getByRole('link', { name: 'Print labels of this delivery' }).click();
      await page.getByRole('button', { name: 'Make the PDF of 5 labels' }).waitFor();

      // The API says the same, once.
      const { items } = await service.seen<{ items: Delivery[] }>('/deliveries');
      expect(items).toMatchObject([
        {
          reference: 'LS-77',
          supplierName: 'Nadelhaus Berger',
          lines: [
            { productName: 'Liner', code: 'CL-2041', useBy: '2028-10-31', quantityPieces: 40 },
            { productName: 'Liner', code: 'CL-2042', useBy: '2029-02-28', quantityPieces: 40 },
          ],
        },
      ]);
      const containers = await service.seen<{ items: Container[] }>('/containers');
      const found = containers.items.map(({ lotCode, pieces, held }) => `${lotCode} ${pieces} ${held}`);
      expect(found.sort()).toEqual([
        'CL-2041 20 false',
        'CL-2041 20 false',
        'CL-2042 17 false',
        'CL-2042 20 false',
        'CL-2042 3 true',
      ]);
      watched.expectNoComplaint();
    }));

  it('ask at the line for what is typed, and which date is right when the lot is known with another', () =>
    withDevices(async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await toReceiving(page);
      // A parcel's own number, and one of our own labels, make no line.
      await scan(page, ']C100106141411234567897');
      await page.getByText('names neither a product nor a lot').waitFor();
      const [container] = (await service.seen<{ items: Container[] }>('/containers')).items;
      await scan(page, container?.labelCode ?? '');
      await page.getByText('is one of your own labels').waitFor();
      expect(await lines(page).count()).toBe(0);
      // What cannot be read for want of a network waits.
      await browser.setOffline(true);
      await scan(page, 'CL-2041');
      await page.getByText('1 scan waits to be read; nothing is lost.').waitFor();
      await browser.setOffline(false);
      await page.getByRole('button', { name: 'Read again' }).click();
      const typed = line(page, 'Which product?');
      await typed.getByRole('textbox', { name: 'Product' }).fill('liner');
      await typed.getByRole('button', { name: 'Corvin Needleworks Liner 1207RL' }).click();
      const known = line(page, 'CL-2041');
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await known.getByText('Type the use-by date, or tick that none is printed.').waitFor();
      await known.getByLabel('Use-by date').fill('2028-13');
      await known.getByText(/does not exist in the calendar/).waitFor();
      await known.getByLabel('Use-by date').fill('2028-10');
      await known.getByText('This lot is here already: it becomes more of it.').waitFor();
      await known.getByLabel('Use-by date').fill('2028-11');
      await known
        .getByText(/The lot CL-2041 is on record with 31 Oct 2028, but here it is 30 Nov 2028/)
        .waitFor();
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page
        .getByRole('button', { name: 'To the line Corvin Needleworks Liner 1207RL, CL-2041' })
        .waitFor();
      await known.getByRole('radio', { name: 'Both: two lots' }).check();
      await known.getByLabel('How many').fill('4');
      // Everything is reached and pressed by keyboard alone.
      await page.getByRole('button', { name: 'Take in', exact: true }).focus();
      await page.keyboard.press('Enter');
      await page.getByText('Taken in: 1 line, 1 bottle or box.').waitFor();
      await page.getByText('4 pieces').waitFor();
      const { items } = await service.seen<{ items: { useBy: string }[] }>('/lots?code=CL-2041');
      expect(items.map(({ useBy }) => useBy).sort()).toEqual(['2028-10-31', '2028-11-30']);
    }));

  it('let an artist receive, but change nothing of the register', () =>
    withDevices(async (browser, other) => {
      const { page: owner } = await openAsOwner(browser, service);
      const link = await invite(owner, 'Ada Artist');
      const { page } = await accept(other, link, { signInName: 'ada', password: testOwner.password });
      await toReceiving(page);
      await scan(page, `01${bottleGtin}17280131`);
      const unknown = line(page, 'Which product?');
      await unknown.getByText('an owner or manager can add the number').waitFor();
      expect(await page.getByRole('button', { name: 'A new product' }).count()).toBe(0);
      expect(await page.getByRole('button', { name: 'Add a supplier' }).count()).toBe(0);
      await unknown.getByRole('textbox', { name: 'Product' }).fill('liner');
      await unknown.getByRole('button', { name: 'Corvin Needleworks Liner 1207RL' }).click();
      const chosen = line(page, 'Liner');
      await chosen.getByLabel('Lot on the label').selectOption('cannot be read');
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page.getByText('The lot is on hold: the lot cannot be read.').waitFor();
      await page.getByText(/is not registered, so it was counted as one piece/).waitFor();
      await page.goto(`${service.url}/studios/${service.studioId}/settings/products`);
      await page.getByRole('heading', { name: 'Not for your role' }).waitFor();
    }));

  it('keep the register: products, numbers, makers, cartridges that stand for each other, and places', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await open(page, 'settings/products', 'Products');
      await page.getByRole('button', { name: 'Add a product' }).click();
      const add = page.getByRole('form', { name: 'Add a product' });
      const addLiner = async () => {
        await add.getByRole('radio', { name: 'cartridge or blade' }).check();
        await add.getByLabel('Maker', { exact: true }).selectOption('Corvin Needleworks');
        await add.getByLabel('Name', { exact: true }).fill('liner');
        await add.getByLabel('Notation on the box').fill('3RL');
        await add.getByRole('button', { name: 'Add the product' }).click();
      };
      await addLiner();
      await add.getByText(/already has a product named "Liner"/).waitFor();
      await add.getByLabel('Name', { exact: true }).fill('Fine liner');
      await add.getByRole('button', { name: 'Add the product' }).click();
      await page.getByText('Corvin Needleworks Fine liner 3RL is added.').waitFor();

      const fine = page
        .getByRole('list', { name: 'Products', exact: true })
        .locator('> li', { hasText: 'Fine liner' });
      await fine.getByRole('button', { name: /^Numbers of/ }).click();
      await fine.getByLabel('Number below the bars (GTIN)').fill(boxGtin);
      await fine.getByRole('button', { name: 'Add the number' }).click();
      await fine.getByText(/already stands for Corvin Needleworks Liner/).waitFor();
      await fine.getByLabel('Number below the bars (GTIN)').fill(bottleGtin);
      await fine.getByRole('button', { name: 'Add the number' }).click();
      await fine.getByText('a single piece').waitFor();
      await fine.getByRole('button', { name: 'Close' }).click();
      await fine.getByRole('button', { name: /^Archive/ }).click();
      await fine.waitFor({ state: 'detached' });
      await page.getByLabel('Archived ones too').check();
      await fine.getByRole('button', { name: /^Restore/ }).click();
      await fine.getByRole('button', { name: /^Archive/ }).waitFor();

      // Somebody else changes it meanwhile: that is said, and what they made of it is shown.
      await fine.getByRole('button', { name: /^Change/ }).click();
      const { items } = await service.seen<{ items: { id: string; version: number }[] }>(
        '/products?text=fine',
      );
      const [changed] = items;
      await service.patch(`/products/${changed?.id}`, { version: changed?.version, machineFit: 'bayonet' });
      await fine.getByLabel('Membrane').selectOption('yes');
      await fine.getByRole('button', { name: 'Save' }).click();
      await fine.getByText(/changed by someone else/).waitFor();
      await expect.poll(() => fine.getByLabel('Fits which machines').inputValue()).toBe('bayonet');
      await fine.getByLabel('Membrane').selectOption('yes');
      await fine.getByRole('button', { name: 'Save' }).click();
      await fine.getByText(/bayonet, with membrane/).waitFor();

      await open(page, 'settings/configurations', 'Cartridges that stand for each other');
      const declare = page.getByRole('form', { name: 'Declare two as equal' });
      await declare.getByRole('textbox', { name: 'One of the two' }).fill('fine');
      await declare
        .getByRole('list', { name: 'One of the two: products found' })
        .getByRole('button', { name: 'Corvin Needleworks Fine liner 3RL' })
        .click();
      await declare.getByRole('textbox', { name: 'The other' }).fill('1207');
      await declare.getByText('Nothing is called “1207”.').waitFor();
      await declare.getByRole('textbox', { name: 'The other' }).fill('liner');
      await declare.getByRole('button', { name: 'Corvin Needleworks Liner 1207RL' }).click();
      await declare.getByRole('textbox', { name: 'Why' }).fill('Same needles in another box');
      await declare.getByRole('button', { name: 'Declare them equal' }).click();
      await page.getByText(/Same needles in another box/).waitFor();
      await page.getByRole('button', { name: /^Withdraw that/ }).click();
      await page.getByText(/Same needles in another box/).waitFor({ state: 'detached' });

      await open(page, 'settings/companies', 'Makers and suppliers');
      const makers = page.getByRole('form', { name: 'Add a maker' });
      await makers.getByLabel('Name of the maker').fill('corvin needleworks');
      await makers.getByRole('button').click();
      await makers.getByText(/There is already a maker named/).waitFor();

      await open(page, 'settings/places', 'Places');
      const addPlace = page.getByRole('form', { name: 'Add a place' });
      await addPlace.getByLabel('Name').fill('Room 2');
      await addPlace.getByRole('button').click();
      const places = page.getByRole('list', { name: 'Places' }).locator('> li');
      await places.filter({ hasText: 'Room 2' }).waitFor();
      await page.getByRole('button', { name: 'Archive Shelf' }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByRole('button', { name: 'Archive', exact: true }).click();
      await dialog.getByText(/containers stand at "Shelf". Move them elsewhere first./).waitFor();
      await dialog.getByRole('button', { name: 'Leave it' }).click();
      watched.expectNoComplaint();
    }));

  const screens: Record<string, (page: Page) => Promise<void>> = {
    'receiving, with everything open that is asked': async (page) => {
      await toReceiving(page);
      await scan(page, `01${exampleGtin('013528')}17290131`);
      await line(page, 'Which product?').getByRole('button', { name: 'A new product' }).click();
      await scan(page, `01${boxGtin}1728103110CL-2041`);
      await line(page, 'CL-2041').waitFor();
      await scan(page, `01${boxGtin}1728103110CL-2041`);
      await line(page, 'CL-2041')
        .getByRole('button', { name: /^Change/ })
        .click();
      await scan(page, 'CL-9');
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page.getByText(/lines have something to be settled/).waitFor();
    },
    'what was taken in': async (page) => {
      await toReceiving(page);
      await scan(page, `01${boxGtin}1720103110CL-0001`);
      await line(page, 'CL-0001').waitFor();
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page.getByText('The lot is on hold: its use-by date has passed.').waitFor();
    },
    deliveries: async (page) => {
      await open(page, 'stock/deliveries', 'Deliveries');
      await page.getByText('number LS-77').waitFor();
    },
    'a delivery': async (page) => {
      await open(page, 'stock/deliveries', 'Deliveries');
      const entry = page.getByRole('list', { name: 'Deliveries' }).locator('> li', { hasText: 'LS-77' });
      await entry.getByRole('link').click();
      await page.getByRole('heading', { level: 1, name: 'Delivery', exact: true }).waitFor();
      await page.getByText('lot CL-2041, usable through 31 Oct 2028').waitFor();
    },
    labels: async (page) => {
      await open(page, 'stock/labels', 'Labels');
      await page.getByRole('textbox', { name: 'Product' }).fill('liner');
      await page.getByRole('button', { name: 'Corvin Needleworks Liner 1207RL' }).click();
      await page.getByRole('button', { name: /^Make the PDF of/ }).waitFor();
    },
    products: async (page) => {
      await open(page, 'settings/products', 'Products');
      await page
        .getByRole('button', { name: /^Change/ })
        .first()
        .click();
      await page.getByText('How cartridges are written').first().click();
    },
    'makers and suppliers': async (page) => {
      await open(page, 'settings/companies', 'Makers and suppliers');
      await page
        .getByRole('button', { name: /^Rename/ })
        .first()
        .click();
    },
    cartridges: (page) => open(page, 'settings/configurations', 'Cartridges that stand for each other'),
    places: async (page) => {
      await open(page, 'settings/places', 'Places');
      await page.getByText('Room 2').waitFor();
    },
  };

  it('can be read and pressed by day and night, on 360 to 1280 px', { timeout: 180_000 }, () =>
    withDevices(async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      const faults: string[] = [];
      for (const [name, show] of Object.entries(screens)) {
        await show(page);
        faults.push(...(await faultsEverywhere(page)).map((fault) => `${name}: ${fault}`));
      }
      expect(faults).toEqual([]);
    }),
  );
});
