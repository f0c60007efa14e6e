import type { Page } from 'playwright-core';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import {
  makeSampleStudio,
  type ReceivedLine,
  receive,
  type SampleStudio,
  walkIn,
} from '../support/sample-studio.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { fillSignIn, goTo, openAsOwner, pageOfOwner } from '../support/web-steps.js';

interface Scan {
  trayLineId: string | null;
}

describe.skipIf(!hasChromium)('a session from walk-in to sign-off, and several at one tray', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  let earlierLot: ReceivedLine;
  let liners: ReceivedLine;
  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    earlierLot = await receive(service, studio, { productId: studio.umberId, code: 'HU-101' });
    await receive(service, studio, { productId: studio.thinnerId, code: 'T-1' });
    await receive(service, studio, { productId: studio.gelId, code: 'GEL-7' });
    liners = await receive(service, studio, { productId: studio.linerId, code: 'CL-9', quantity: 10 });
    // The visit before: 4 drops of HU-101 and 2 of thinner in one cup. Then its pigment was held.
    const earlier = await walkIn(service, studio);
    for (const symbol of ['HU-101', 'T-1']) {
      await service.made<Scan>(`/sessions/${earlier}/scans`, { symbol });
    }
    const mix = await service.made<{ id: string }>(`/sessions/${earlier}/mixes`, { label: 'Base' });
    for (const [code, drops] of [
      ['HU-101', 4],
      ['T-1', 2],
    ] as const) {
      const [container] = (
        await service.seen<{ items: { id: string; lotCode: string }[] }>('/containers')
      ).items.filter(({ lotCode }) => lotCode === code);
      await service.made(`/sessions/${earlier}/mixes/${mix.id}/components`, {
        containerId: container?.id,
        drops,
      });
    }
    await service.made(`/sessions/${earlier}/completion`, {
      lines: [],
      complications: null,
      signedBy: studio.ownerId,
    });
    await service.made('/holds', { kind: 'quarantine', reason: 'doubt', lotId: earlierLot.lot.id });
    await receive(service, studio, { productId: studio.umberId, code: 'HU-118' });
    await receive(service, studio, { productId: studio.thinnerId, code: 'T-2' });
  });
  afterAll(() => service.dispose());

  /** As a hand-held scanner does: it types and presses Enter. */
  const show = async (page: Page, symbol: string) => {
    await page.getByRole('textbox', { name: 'Scan' }).focus();
    await page.keyboard.type(symbol);
    await page.keyboard.press('Enter');
  };
  const isVerdict = (page: Page, word: string) =>
    page.locator('[data-verdict]').getByText(word, { exact: true }).waitFor();
  const trayAddress = (sessionId: string) =>
    `${service.url}/studios/${service.studioId}/today/trays/${sessionId}`;
  const openTray = async (page: Page, sessionId: string) => {
    await page.goto(trayAddress(sessionId));
    await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
  };

  it('walks in, lays, mixes, repeats the last mix and finishes; what is booked is what was said', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await goTo(page, 'Today');
      await page.getByRole('button', { name: 'Somebody walks in' }).click();
      await page.getByLabel('Name, contact or reference').fill('+43 1 5550100');
      await page.getByRole('button', { name: 'Find' }).click();
      await page.getByRole('radio', { name: /Ida Sommer/ }).waitFor();
      await page.getByLabel('Kind of visit').selectOption('touch-up');
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('button', { name: 'Begin, and lay the tray' }).click();
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      expect(await page.getByText('Ida Sommer').count()).toBe(0);
      const sessionId = page.url().split('/').at(-1) ?? '';

      for (const symbol of ['HU-118', 'T-1', 'GEL-7', 'CL-9']) {
        await show(page, symbol);
        await page.getByText(`lot ${symbol}`, { exact: false }).first().waitFor();
      }
      await show(page, 'CL-9');
      await page.getByRole('button', { name: '+1, another piece' }).click();
      await page.getByText('2 pieces, 3 bottles').waitFor();
      await show(page, 'CL-9');
      await page.getByRole('button', { name: '+1, another piece' }).click();
      await page.getByText('3 pieces, 3 bottles').waitFor();
      // A slip is taken back where it was made.
      await page.getByRole('button', { name: 'Take it back off' }).click();
      await page.getByText('2 pieces, 3 bottles').waitFor();
      await page.locator('[data-verdict]').getByText('2 on the tray').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      await page.getByRole('tab', { name: 'Last visit' }).click();
      await page.getByText('on hold now').waitFor();
      await page.getByText('On the tray instead: another lot, HU-118. Compare the colour.').waitFor();
      await page.getByText('On the tray: the same bottle.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('button', { name: 'Mix it again' }).dblclick();
      const cup = page.getByRole('region', { name: 'Base' });
      await cup.getByText('4 drops, about 160 µl').waitFor();
      // Faster than the service answers: no press is lost and none counts twice.
      const more = page.getByRole('button', { name: /^\+1 drop of .*Umber/ });
      await more.evaluate((button: { click(): void }) => {
        for (let press = 0; press < 7; press += 1) button.click();
      });
      await cup.getByText('11 drops', { exact: false }).waitFor();
      await page.getByRole('button', { name: /^−1 drop of .*Umber/ }).click();
      await cup.getByText('10 drops, about 400 µl').waitFor();
      await page.getByRole('button', { name: 'New mix' }).dblclick();
      await page.getByRole('region', { name: 'Mix 2' }).waitFor();
      await more.click();
      await page.getByText('Mix 2: 1 drop, about 40 µl').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      interface Mix {
        label: string;
        parts: { drops: number; lotCode: string }[];
      }
      const mixed = (await service.seen<Mix[]>(`/sessions/${sessionId}/mixes`)).map(({ label, parts }) => [
        label,
        parts.map(({ drops, lotCode }) => `${drops} ${lotCode}`),
      ]);
      expect(mixed).toEqual([
        ['Base', ['10 HU-118', '2 T-1']],
        ['Mix 2', ['1 HU-118']],
      ]);

      await page.getByRole('link', { name: 'Finish' }).click();
      await page.getByRole('heading', { level: 1, name: 'Finish the session' }).waitFor();
      await page.getByText('10 drops, about 400 µl in Base').waitFor();
      const bar = page.getByText('4 used · 0 opened, not used · 1 back');
      await bar.waitFor();
      await page
        .getByRole('group', { name: /lot CL-9/ })
        .first()
        .getByLabel('Opened, not used')
        .check();
      // A wrapper of the tray marks its line, one that was never there is offered.
      await show(page, 'CL-9');
      await page.getByText('Its wrapper was shown.').waitFor();
      await show(page, 'T-2');
      await page.getByRole('button', { name: /^Used: .*Thinner.*T-2/ }).click();
      await page.getByText('4 used · 1 opened, not used · 1 back').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('button', { name: 'Finish and sign' }).dblclick();
      await page.getByRole('heading', { level: 1, name: 'Session finished' }).waitFor();
      await page.getByText('Used besides the tray').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      const session = await service.seen<{
        state: string;
        uses: { lotCode: string; drops: number | null; pieces: number }[];
        tray: { lotCode: string; settledAs: string | null; state: string }[];
      }>(`/sessions/${sessionId}`);
      expect(session.state).toBe('completed');
      expect(session.uses.map((use) => `${use.lotCode} ${use.drops ?? use.pieces}`).sort()).toEqual([
        'CL-9 1',
        'HU-118 1',
        'HU-118 10',
        'T-1 2',
        'T-2 0',
      ]);
      expect(
        session.tray
          .filter(({ state }) => state === 'settled')
          .map(({ lotCode, settledAs }) => `${lotCode} ${settledAs}`)
          .sort(),
      ).toEqual(['CL-9 opened unused', 'CL-9 used', 'GEL-7 back unopened', 'HU-118 used', 'T-1 used']);
      // Of ten pieces one was used and one wasted.
      const box = await service.seen<{ pieces: number }>(`/containers/${liners.containers[0]?.id}`);
      expect(box.pieces).toBe(8);
      await page.getByRole('link', { name: 'Back to today' }).click();
      await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
      watched.expectNoComplaint();
    }));

  it('asks of what was held meanwhile whether it was used, and of nothing else', () =>
    withDevices(async (browser) => {
      const sessionId = await walkIn(service, studio);
      const held = await receive(service, studio, { productId: studio.linerId, code: 'CL-HELD' });
      for (const symbol of ['CL-9', 'CL-HELD']) {
        await service.made(`/sessions/${sessionId}/scans`, { symbol });
      }
      const { page } = await pageOfOwner(browser, service);
      await page.goto(`${trayAddress(sessionId)}/completion`);
      await page.getByText('2 used · 0 opened, not used · 0 back').waitFor();
      // It arrives while the page is open: the service does not take the completion, and the line says why.
      await service.made('/holds', { kind: 'recall', reason: 'recall notice', lotId: held.lot.id });
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByText('One thing is on hold: say whether used or not.').waitFor();
      await expect.poll(() => page.getByRole('button', { name: 'Finish and sign' }).isDisabled()).toBe(true);
      const line = page.getByRole('group', { name: /lot CL-HELD/ });
      await line.getByText('Was it used or not?').waitFor();
      await line.getByText(/was put on hold after it was laid out/).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await line.getByLabel('Used', { exact: true }).check();
      await line.getByLabel('Why it was used').fill('opened before the notice came');
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByRole('heading', { level: 1, name: 'Session finished' }).waitFor();
      const { uses } = await service.seen<{ uses: { lotCode: string; againstRefusal: string[] | null }[] }>(
        `/sessions/${sessionId}`,
      );
      expect(uses.find(({ lotCode }) => lotCode === 'CL-HELD')?.againstRefusal).toEqual(['recalled']);
    }));

  it('lets two tablets lay one tray; each sees what the other did, and the last piece goes to one', () =>
    withDevices(async (one, other) => {
      const sessionId = await walkIn(service, studio);
      await receive(service, studio, { productId: studio.gelId, code: 'GEL-8' });
      await receive(service, studio, { productId: studio.linerId, code: 'LAST-1' });
      const [first, second] = [
        (await pageOfOwner(one, service)).page,
        (await pageOfOwner(other, service)).page,
      ];
      for (const page of [first, second]) await openTray(page, sessionId);
      await show(first, 'GEL-8');
      await isVerdict(first, 'Admitted');
      // At the next look.
      await second.evaluate(`document.dispatchEvent(new Event('visibilitychange', { bubbles: true }))`);
      await second.getByText(/lot GEL-8/).waitFor();

      await Promise.all([show(first, 'LAST-1'), show(second, 'LAST-1')]);
      const words = await Promise.all(
        [first, second].map((page) =>
          page
            .locator('[data-verdict]')
            .filter({ hasText: 'Fine liner' })
            .getByText(/^(Admitted|Refused|Another one\?)$/)
            .textContent(),
        ),
      );
      expect(words.filter((word) => word === 'Admitted')).toHaveLength(1);
      const tray = await service.seen<{ lines: { lotCode: string }[] }>(`/sessions/${sessionId}/tray`);
      expect(tray.lines.filter(({ lotCode }) => lotCode === 'LAST-1')).toHaveLength(1);
      for (const page of [first, second])
        await page
          .getByText(/lot LAST-1/)
          .first()
          .waitFor();
    }));

  it('has tray and finish again after signing in in their place, with what was scanned and chosen', () =>
    withDevices(async (browser) => {
      const sessionId = await walkIn(service, studio);
      const { page } = await pageOfOwner(browser, service);
      await openTray(page, sessionId);
      await browser.clearCookies();
      await show(page, 'CL-9');
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      expect(page.url()).toContain(sessionId);
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await page
        .getByText(/lot CL-9/)
        .first()
        .waitFor();
      const { lines } = await service.seen<{ lines: unknown[] }>(`/sessions/${sessionId}/tray`);
      expect(lines).toHaveLength(1);

      await page.getByRole('link', { name: 'Finish' }).click();
      await page.getByLabel('Opened, not used').check();
      await browser.clearCookies();
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await page.getByText('0 used · 1 opened, not used · 0 back').waitFor();
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByRole('heading', { level: 1, name: 'Session finished' }).waitFor();
      const session = await service.seen<{ tray: { settledAs: string }[] }>(`/sessions/${sessionId}`);
      expect(session.tray.map(({ settledAs }) => settledAs)).toEqual(['opened unused']);
    }));

  it('is taken over on a shared tablet by PIN, with the same tray open', () =>
    withDevices(async (tablet, phone) => {
      const sessionId = await walkIn(service, studio);
      /** Asks the service as whoever is signed in at a page. */
      const ask = (page: Page, method: string, path: string, body: object) =>
        page.evaluate(
          async ([verb, address, content]) => {
            const headers = { 'content-type': 'application/json' };
            return (await fetch(address, { method: verb, headers, body: content })).status;
          },
          [method, `/api/v1${path}`, JSON.stringify(body)] as const,
        );
      const pinPath = `/me/studios/${service.studioId}/pin`;
      const tove = await service.made<{ id: string }>('/people', { name: 'Tove Lind', role: 'artist' });
      const { link } = await service.made<{ link: string }>(`/people/${tove.id}/invitation`);
      const { page: own } = await openWatched(phone, service.url);
      const account = { signInName: 'tove', password: 'seven quiet harbours blink' };
      const secret = new URL(link).hash.slice(1);
      expect(await ask(own, 'POST', '/invitation/accept', { secret, ...account })).toBeLessThan(300);
      expect(await ask(own, 'PUT', pinPath, { pin: '840362' })).toBe(200);

      const { page } = await openAsOwner(tablet, service);
      expect(await ask(page, 'PUT', pinPath, { pin: '517293' })).toBe(200);
      const enrolled = { id: uuidv7(), name: 'Room 4' };
      expect(await ask(page, 'POST', `/studios/${service.studioId}/tablets`, enrolled)).toBe(201);
      const signInWith = async (name: RegExp, pin: string) => {
        await page.getByRole('button', { name }).click();
        await page.keyboard.type(pin);
        await page.keyboard.press('Enter');
      };
      await page.goto(trayAddress(sessionId));
      await signInWith(/Tove Lind/, '840362');
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await show(page, 'CL-9');
      await isVerdict(page, 'Admitted');
      await page.getByRole('button', { name: 'Somebody else takes over' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Owner' }).waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);
      await signInWith(/^Owner/, '517293');
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await show(page, 'CL-9');
      await page.getByRole('button', { name: '+1, another piece' }).click();
      await page.getByText('2 pieces, 0 bottles').waitFor();
    }));
});
