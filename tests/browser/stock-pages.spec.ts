import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { TraceView } from '../../src/sessions/trace.views.js';
import type { LotView } from '../../src/stock/lot-list.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { samplePhoto } from '../support/photos.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole, signInOwner } from '../support/signing-in.js';
import { daysAgo } from '../support/stocked-studio.js';
import { pageOf } from '../support/web-steps.js';

interface Bottle {
  id: string;
  labelCode: string;
  lotId: string;
}

describe.skipIf(!hasChromium)('stock on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  /** Of one lot: one for each thing that is recorded, and one that was used. */
  let bottles: Bottle[];
  let box: Bottle;
  let expired: Bottle;
  let used: Bottle;
  let sessions: string[];
  let owner: string;

  beforeAll(async () => {
    service = await startService();
    owner = await signInOwner(service);
    studio = await makeSampleStudio(service);
    const take = async (productId: string, code: string, more: object = {}) => {
      const { lot, containers } = await receive(service, studio, { productId, code, ...more });
      return containers.map(({ id, labelCode }): Bottle => ({ id, labelCode, lotId: lot.id }));
    };
    bottles = await take(studio.umberId, 'HU-118', { quantity: 4 });
    [box = missing()] = await take(studio.linerId, 'CL-9', { quantity: 20 });
    [expired = missing()] = await take(studio.thinnerId, 'OLD-1', { useBy: '2020-01' });
    [used = missing()] = await take(studio.umberId, 'HU-200');
    const [thinner = missing()] = await take(studio.thinnerId, 'TH-5');
    await service.made(`/containers/${thinner.id}/open`);
    for (const name of ['Liner seven', 'Other seven']) {
      const { makerId } = studio;
      const known = { notation: '1207RLMT', taper: 'medium', machineFit: 'universal', membrane: 'yes' };
      await service.made('/products', { kind: 'cartridge', makerId, name, ...known });
    }
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, houseBlends: 'allowed' });
    await service.made(`/containers/${used.id}/open`, { occurredAt: daysAgo(100) });
    const blend = await service.made<{ containerId: string }>('/blends', {
      productId: studio.umberId,
      parents: [
        { containerId: used.id, microlitres: 2_000 },
        { containerId: thinner.id, microlitres: 1_000 },
      ],
      placeId: studio.placeId,
    });
    sessions = [await treat(used.id), await treat(blend.containerId)];
  });
  afterAll(() => service.dispose());

  /** A session that is completed, in which some of a bottle was mixed. */
  const treat = async (containerId: string) => {
    const session = await walkIn(service, studio);
    await service.made(`/sessions/${session}/scans`, { containerId });
    const mix = await service.made<{ id: string }>(`/sessions/${session}/mixes`, { label: 'base' });
    const component = { containerId, microlitres: 120 };
    await service.made(`/sessions/${session}/mixes/${mix.id}/components`, component);
    const completion = { lines: [], complications: null, signedBy: studio.ownerId };
    await service.made(`/sessions/${session}/completion`, completion);
    return session;
  };

  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'stock', ...below].join('/');
  const show = async (page: Page, ...below: string[]) => {
    await page.goto(address(...below));
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText('Loading …').waitFor({ state: 'detached' });
  };
  const find = async (page: Page, text: string) => {
    await page.getByRole('searchbox', { name: 'Find a label, a lot or a product' }).fill(text);
    await page.keyboard.press('Enter');
  };
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
  const recorded = (page: Page, text: string) => page.getByRole('status').getByText(text).waitFor();
  const bottle = (index: number) => bottles[index] ?? missing();
  const asOwner = (browser: BrowserContext) => pageOf(browser, service.url, owner);
  const signInAs = async (browser: BrowserContext, role: Parameters<typeof personOfRole>[1]) =>
    pageOf(browser, service.url, (await personOfRole(service, role)).cookie);

  it('find what a scanner types, wherever it is, by label, lot and product, and say when there is none', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await page.goto(service.url);
      await page.getByRole('navigation').getByRole('link', { name: 'Stock' }).click();
      await page.getByRole('heading', { level: 1, name: 'Levels' }).waitFor();
      // Nothing was pressed: as a hand-held scanner does, it is typed and ends with Enter.
      await page.keyboard.type(bottle(0).labelCode.toLowerCase());
      await page.keyboard.press('Enter');
      await page.getByText(/^Bottle [A-Z0-9]{4}-/).waitFor();
      expect(page.url()).toBe(address('containers', bottle(0).id));

      await find(page, 'hu-118');
      await page.getByRole('heading', { level: 1, name: 'Umber Warm 02, HU-118' }).waitFor();
      await find(page, studio.linerGtin);
      await page.getByText('Of Fine liner, Halden Colour Works.').waitFor();
      await page.getByRole('link', { name: 'Fine liner, CL-9' }).waitFor();
      // A symbol names its lot.
      await find(page, `01${studio.linerGtin}10CL-9`);
      await page.getByRole('heading', { level: 1, name: 'Fine liner, CL-9' }).waitFor();
      await find(page, 'warm umber');
      await page.getByRole('link', { name: 'Umber Warm 02, HU-118' }).waitFor();
      await find(page, 'NOTHING-LIKE-IT');
      await page.getByRole('alert').getByText('“NOTHING-LIKE-IT”').waitFor();
      watched.expectNoComplaint();
    }));

  it('show the time of a bottle, record its opening and take that back, with what is left in it and of its lot', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await show(page, 'containers', bottle(0).id);
      const time = page.getByRole('figure');
      await time.getByText('label: use by 31 Dec 2099').waitFor();
      expect(await time.getByText(/opened/).count()).toBe(0);
      const drawn = () => time.locator('svg').first().innerHTML();
      const sealed = await drawn();

      await press(page, 'Open it now');
      await recorded(page, 'Recorded as opened.');
      await recorded(
        page,
        'In it now by the book: 1 piece, about 10 ml. Of the lot on hand: 4 pieces, about 40 ml.',
      );
      await time.getByText(/^opened life ends /).waitFor();
      expect(await drawn()).not.toBe(sealed);
      expect(await page.getByRole('button', { name: 'Open it now' }).count()).toBe(0);

      await press(page, 'Correct the day of opening');
      const opened = daysAgo(40).slice(0, 10);
      await page.getByLabel('Opened on').fill(opened);
      await page.getByLabel('Reason').fill('noted on the label');
      await press(page, 'Correct the day of opening');
      await recorded(page, 'The day of opening is corrected.');
      const { openedAt } = await service.seen<{ openedAt: string }>(`/containers/${bottle(0).id}`);
      expect(openedAt.slice(0, 10)).toBe(opened);

      await press(page, 'It was not opened');
      await page.getByLabel('Reason').fill('it was the bottle beside it');
      await press(page, 'It was not opened');
      await recorded(page, 'Recorded as sealed again.');
      await page.getByRole('button', { name: 'Open it now' }).waitFor();
      expect(await drawn()).toBe(sealed);
      watched.expectNoComplaint();
    }));

  it('discard a bottle with its reason, and take that back in the history, where both stay with what was on hand', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await show(page, 'containers', bottle(1).id);
      await press(page, 'Throw away');
      await page.getByLabel('Reason').fill('dropped');
      await press(page, 'Throw away');
      await recorded(page, 'Of the lot on hand: 3 pieces, about 30 ml.');
      await page.getByText('gone', { exact: true }).waitFor();
      expect(await page.getByRole('heading', { name: 'Record what happens' }).count()).toBe(0);

      await page.getByRole('link', { name: 'HU-118' }).click();
      const history = page.getByRole('list', { name: 'History' }).locator('> li');
      await history.first().getByText('On hand then: 3 pieces, about 30 ml').waitFor();
      expect(await history.first().textContent()).toContain('dropped');
      await page.getByRole('button', { name: /^Take back wasted -1 piece, about -10 ml/ }).click();
      await page.getByLabel('Why it was a mistake').fill('the other bottle was meant');
      await press(page, 'Save');
      await history.getByText('This was taken back.').waitFor();
      await history.getByText(/^Takes back wasted -1 piece/).waitFor();
      await history.first().getByText('On hand then: 4 pieces, about 40 ml').waitFor();
      const { movements } = await service.seen<LotView>(`/lots/${bottle(1).lotId}`);
      expect(movements[0]).toMatchObject({ pieces: 1, reversesId: movements[1]?.id });
      watched.expectNoComplaint();
    }));

  it('show the difference of a count before it is booked, waste and move pieces', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await service.made('/places', { name: 'Room 2', kind: 'treatment room' });
      await show(page, 'containers', box.id);
      await press(page, 'Count');
      await page.getByLabel('Pieces in the box').fill('18');
      await page.getByText('The book shows 20. That is 2 fewer: it will show 18.').waitFor();
      expect((await service.seen<{ pieces: number }>(`/containers/${box.id}`)).pieces).toBe(20);
      await press(page, 'Book the count');
      await recorded(page, 'In it now by the book: 18 pieces.');

      await press(page, 'Throw pieces away');
      await page.getByRole('textbox', { name: 'Pieces' }).fill('3');
      await page.getByLabel('Reason').fill('blisters torn');
      await press(page, 'Throw pieces away');
      await recorded(page, 'In it now by the book: 15 pieces.');

      await press(page, 'Move');
      await page.getByLabel('New place').selectOption('Room 2');
      await page.getByRole('textbox', { name: 'Pieces' }).fill('5');
      await press(page, 'Move');
      await recorded(page, 'In it now by the book: 10 pieces. Of the lot on hand: 15 pieces.');
      await show(page, 'containers');
      await page.getByLabel('Place').selectOption('Room 2');
      const stand = page.getByRole('list', { name: 'Bottles and boxes' }).locator('> li');
      await expect.poll(() => stand.allInnerTexts()).toHaveLength(1);
      await stand.getByText('Box, sealed, 5 pieces, Room 2').waitFor();
      watched.expectNoComplaint();
    }));

  it('put a bottle on hold and release it, each with its reason; among the holds it stands meanwhile', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await show(page, 'containers', bottle(2).id);
      await press(page, 'Put this one on hold');
      await page.getByLabel('Kind of hold').selectOption('Recall');
      await page.getByLabel('Reason').selectOption('recall notice');
      await page.getByLabel('What was seen').fill('letter of the maker');
      await press(page, 'Save');
      await page.getByText('recalled', { exact: true }).waitFor();

      await page.getByRole('navigation').getByRole('link', { name: 'Holds' }).click();
      const holds = page.getByRole('list', { name: 'Holds' }).locator('> li');
      const mine = holds.filter({ hasText: 'letter of the maker' });
      await mine.getByText('Recall: recall notice').waitFor();
      // Nobody else may release holds here, so a photo stands for the second person.
      await mine
        .getByRole('button', { name: /^Ask for the release of the hold on Umber Warm 02, lot HU-118/ })
        .click();
      await mine.getByLabel('Why it may be used again').fill('the letter names another batch');
      await mine.getByText(/nobody else may release holds in this studio/).waitFor();
      await mine.locator('input[type=file]').setInputFiles({
        name: 'bottle.png',
        mimeType: 'image/png',
        buffer: Buffer.from(samplePhoto(120).content, 'base64'),
      });
      await mine.getByRole('img', { name: 'The photo that will be kept' }).waitFor();
      await mine.getByRole('button', { name: 'Ask for the release', exact: true }).click();
      await mine.getByText(/ asked for the release .*: the letter names another batch$/).waitFor();
      await mine.getByRole('link', { name: /^Photo of the thing/ }).waitFor();
      await mine.getByRole('button', { name: /^Release the hold on Umber Warm 02, lot HU-118/ }).click();
      await mine.getByLabel('Why it may be used again').fill('not our batch');
      await mine.getByRole('button', { name: 'Save' }).click();
      await mine.waitFor({ state: 'detached' });

      await show(page, 'containers', bottle(2).id);
      await page.getByText(/^Released .*: not our batch$/).waitFor();
      await page.getByText('may be used', { exact: true }).waitFor();
      watched.expectNoComplaint();
    }));

  it('set a minimum, and find what is low, held or to be used soon', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await show(page, 'levels');
      const row = (name: string) => page.getByRole('listitem').filter({ hasText: name });
      // Cartridges that stand for each other are one line.
      await row('1207RL').getByRole('link', { name: 'Halden Colour Works Other seven' }).waitFor();
      await expect.poll(() => row('Liner seven').count()).toBe(1);
      // By keys alone, and without losing one's place.
      const focused = () =>
        page.evaluate<string>(
          '[document.activeElement.tagName, document.activeElement.closest("li")?.innerText].join(" ")',
        );
      await page.getByRole('button', { name: 'Set the minimum of Numbing gel' }).press('Enter');
      await expect.poll(focused).toMatch(/^INPUT .*Numbing gel/s);
      await page.keyboard.type('2');
      await page.keyboard.press('Enter');
      await row('Numbing gel').getByText('low', { exact: true }).waitFor();
      await expect.poll(focused).toMatch(/^(A|BUTTON) .*Numbing gel/s);
      await page.getByLabel('Show', { exact: true }).selectOption('what is low');
      await row('Umber').waitFor({ state: 'detached' });
      await press(page, 'Set the minimum of Numbing gel');
      await press(page, 'Take the minimum away');
      await page.getByText('Nothing fits.').waitFor();
      await page.getByLabel('Show', { exact: true }).selectOption('what is on hold');
      await row('Thinner').getByText('on hold', { exact: true }).waitFor();
      await page.getByLabel('Show', { exact: true }).selectOption('everything');
      await page.getByLabel('Shade, product or maker').fill('WARM');
      await row('Fine liner').waitFor({ state: 'detached' });
      await row('Umber Warm 02').waitFor();
      watched.expectNoComplaint();
    }));

  it('correct the facts of a lot, and still find it by what stood there before', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      await show(page, 'lots', expired.lotId);
      await press(page, 'Correct the facts');
      await page.getByLabel('lot', { exact: true }).fill('OLD-7');
      await expect.poll(() => page.getByLabel('Use by, as printed').inputValue()).toBe('2020-01');
      await page.getByLabel('Use by, as printed').fill('2020-02');
      await page.getByLabel('What was wrong').fill('misread');
      await press(page, 'Save');
      await page.getByRole('heading', { level: 1, name: 'Thinner, OLD-7' }).waitFor();
      await page.getByText('OLD-1 (lot)').waitFor();
      await find(page, 'OLD-1');
      await page.getByText('use by the end of the month: 29 Feb 2020').first().waitFor();
      expect(await service.seen<LotView>(`/lots/${expired.lotId}`)).toMatchObject({
        ...{ code: 'OLD-7', useBy: '2020-02-29', useByPrecision: 'month' },
      });
      watched.expectNoComplaint();
    }));

  it('draw the trace from a lot to the sessions that used it, and say the same in a table as the service', () =>
    withDevices(async (browser) => {
      const watched = await asOwner(browser);
      const { page } = watched;
      const trace = await service.seen<TraceView>(`/lots/${used.lotId}/trace`);
      await show(page, 'lots', used.lotId, 'trace');
      await page.getByText('2 uses in 2 sessions, of 1 client.').waitFor();
      const rows = page.getByRole('table').locator('tbody tr');
      await expect.poll(() => rows.count()).toBe(2);
      expect(await rows.evaluateAll((all) => all.map((row) => row.getAttribute('data-use')))).toEqual(
        trace.items.map(({ id }) => id),
      );
      for (const [index, use] of trace.items.entries()) {
        const words = (await rows.nth(index).textContent()) ?? '';
        for (const word of [use.clientReference, use.lotCode ?? '', '0.12 ml', 'a mix'])
          expect(words).toContain(word);
        expect(words.includes('a house blend')).toBe(use.through.includes('house blend'));
      }
      expect(await page.getByText('Ida Sommer').count()).toBe(0);

      const picture = page.getByRole('region', { name: /^The way from lots to sessions/ });
      const nodes = await picture
        .getByRole('link')
        .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''));
      const kinds = nodes.map((name) => name.split(',')[0]).sort();
      expect(kinds).toEqual([
        ...['Bottle or box', 'Bottle or box', 'House blend', 'Lot', 'Mix', 'Mix', 'Session', 'Session'],
      ]);
      // By keys, as a link.
      await picture
        .getByRole('link', { name: /^Session, / })
        .first()
        .focus();
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/records\/sessions\/[0-9a-f-]{36}$/);
      expect(sessions.some((id) => page.url().endsWith(id))).toBe(true);

      await show(page, 'sessions', sessions[1] ?? '', 'trace');
      await page.getByRole('link', { name: 'Lot, HU-200 Umber Warm 02' }).click();
      await page.getByRole('heading', { level: 1, name: 'Umber Warm 02, HU-200' }).waitFor();
      watched.expectNoComplaint();
    }));

  it('show an auditor all of it and nothing to press', () =>
    withDevices(async (browser) => {
      const watched = await signInAs(browser, 'auditor');
      const { page } = watched;
      for (const below of [
        ['levels'],
        ['lots'],
        ['lots', bottle(3).lotId],
        ['containers'],
        ['containers', bottle(3).id],
        ['containers', expired.id],
        ['holds'],
      ]) {
        await show(page, ...below);
        await page.getByRole('listitem').first().waitFor();
        const buttons = await page.getByRole('main').getByRole('button').allInnerTexts();
        expect([below, buttons]).toEqual([below, ['Find']]);
      }
      watched.expectNoComplaint();
    }));

  it('let an artist handle bottles and place holds, and leave corrections and releases to others', () =>
    withDevices(async (browser) => {
      const { page } = await signInAs(browser, 'artist');
      await show(page, 'containers', expired.id);
      await page.getByRole('button', { name: 'Keep for practice' }).waitFor();
      await page.getByRole('button', { name: 'Put this one on hold' }).waitFor();
      expect(await page.getByRole('button', { name: /^Release/ }).count()).toBe(0);
      await show(page, 'lots', expired.lotId);
      await page
        .getByText(/^On hand then/)
        .first()
        .waitFor();
      expect(await page.getByRole('button', { name: /^(Take back|Correct|Release)/ }).count()).toBe(0);
    }));

  const pages: Record<string, (page: Page) => Promise<void>> = {
    levels: async (page) => {
      await show(page, 'levels');
      await page
        .getByRole('button', { name: /^Set the minimum of/ })
        .first()
        .click();
    },
    lots: (page) => show(page, 'lots'),
    'a lot': async (page) => {
      await show(page, 'lots', bottle(3).lotId);
      await press(page, 'Correct the facts');
      await page
        .getByRole('button', { name: /^Take back/ })
        .first()
        .click();
    },
    'bottles and boxes': (page) => show(page, 'containers'),
    'an opened bottle': async (page) => {
      await show(page, 'containers', used.id);
      await press(page, 'Correct the day of opening');
    },
    'a bottle past its date': async (page) => {
      await show(page, 'containers', expired.id);
      await press(page, 'Put this one on hold');
    },
    'a box': async (page) => {
      await show(page, 'containers', box.id);
      await press(page, 'Count');
    },
    holds: async (page) => {
      await show(page, 'holds');
      await page
        .getByRole('button', { name: /^Release/ })
        .first()
        .click();
    },
    'asking for a release': async (page) => {
      const { lotId } = bottle(3);
      await service.made('/holds', { lotId, kind: 'recall', reason: 'recall notice' });
      await show(page, 'holds');
      await page
        .getByRole('button', { name: /^Ask for the release/ })
        .first()
        .click();
      await page.locator('input[type=file]').setInputFiles({
        name: 'bottle.png',
        mimeType: 'image/png',
        buffer: Buffer.from(samplePhoto(120).content, 'base64'),
      });
      await page.getByRole('img', { name: 'The photo that will be kept' }).waitFor();
    },
    'a trace': async (page) => {
      await show(page, 'lots', used.lotId, 'trace');
      await page.getByRole('table').waitFor();
    },
  };

  it('can be read and pressed by day and night, on 360 to 1280 px', { timeout: 180_000 }, () =>
    withDevices(async (browser) => {
      const { page } = await asOwner(browser);
      for (const [name, open] of Object.entries(pages)) {
        await open(page);
        expect([name, await faultsEverywhere(page)]).toEqual([name, []]);
      }
    }),
  );
});

function missing(): never {
  throw new Error('It was not received.');
}
