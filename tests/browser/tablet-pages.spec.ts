import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { type RunningService, startService } from '../support/service.js';
import { accept, goTo, invite, menuOf, openAsOwner, signInAt } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('a shared tablet', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  const enrol = async (page: Page, name: string) => {
    await goTo(page, 'Tablets');
    await page.getByLabel('Name of the tablet').fill(name);
    const button = page.getByRole('button', { name: 'Make this device a tablet' });
    await button.click();
    await page.getByText('You are signed out on this very device').waitFor();
    expect(await faultsEverywhere(page)).toEqual([]);
    await button.click();
    await page.getByText(`This is the tablet “${name}”`).waitFor();
  };

  it('is enrolled once, then changed over by PIN, and lets nobody do more than tray work', () =>
    withDevices(async (desk, tablet, phone) => {
      const owner = await openAsOwner(desk, service);
      const artist = await accept(phone, await invite(owner.page, 'Tove Lind'), {
        signInName: 'tove',
        password: 'seven quiet harbours blink',
      });
      await goTo(artist.page, 'My account');
      const choose = async (pin: string) => {
        await artist.page.getByLabel('New PIN').fill(pin);
        await artist.page.getByRole('button', { name: 'Choose the PIN' }).click();
      };
      await choose('1234');
      await artist.page.getByText(/which is tried first/).waitFor();
      await choose('840362');
      await artist.page.getByText(/^Chosen /).waitFor();
      expect(await faultsEverywhere(artist.page)).toEqual([]);

      const shared = await signInAt(tablet, service.url);
      const { page } = shared;
      await enrol(page, 'Room 2');
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('button', { name: 'Tove Lind' }).click();
      for (const digit of '840361') await page.getByRole('button', { name: `Digit ${digit}` }).click();
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.getByRole('button', { name: 'Sign in', exact: true }).click();
      await page.getByText('Person and PIN do not go together').waitFor();
      for (const digit of '84036') await page.getByRole('button', { name: `Digit ${digit}` }).click();
      await page.keyboard.type('2');
      await page.keyboard.press('Enter');
      await page.getByRole('banner').getByText('Tove Lind').waitFor();
      expect(await menuOf(page).allTextContents()).toEqual(['Today', 'Alerts', 'Stock']);
      await page.goto(`${service.url}/account`);
      await page.getByRole('heading', { name: 'Not for your role' }).waitFor();
      await page.getByRole('button', { name: 'Somebody else' }).click();
      await page.getByText('This is the tablet “Room 2”').waitFor();

      await goTo(owner.page, 'Tablets');
      await owner.page.getByRole('button', { name: 'Revoke Room 2' }).click();
      await owner.page.getByRole('dialog').getByRole('button', { name: 'Revoke', exact: true }).click();
      await owner.page.getByText(/enrolled .*, revoked/).waitFor();
      await page.reload();
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      for (const watched of [owner, artist, shared]) watched.expectNoComplaint();
    }));

  it('prints a badge, and takes none that it did not print', () =>
    withDevices(async (desk, tablet, phone) => {
      const owner = await openAsOwner(desk, service);
      await accept(phone, await invite(owner.page, 'Bo Ek'), {
        signInName: 'bo',
        password: 'eleven paper kites hover',
      });
      await owner.page.reload();
      await owner.page.getByRole('button', { name: 'Change Bo Ek' }).click();
      const downloaded = owner.page.waitForEvent('download');
      await owner.page.getByRole('button', { name: 'Print a badge' }).click();
      const file = await (await downloaded).path();
      expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-');
      await owner.page.getByText(/^Printed .*, never used\.$/).waitFor();
      expect(await faultsEverywhere(owner.page)).toEqual([]);

      const shared = await signInAt(tablet, service.url);
      await enrol(shared.page, 'Room 3');
      const show = async (badge: string) => {
        await shared.page.locator('input[type=password]').fill(badge);
        await shared.page.keyboard.press('Enter');
      };
      await show(`LB${'0'.repeat(40)}`);
      await shared.page.getByText('This badge does not work here').waitFor();
      owner.expectNoComplaint();
      shared.expectNoComplaint();
    }));

  it('lets somebody be signed out everywhere by the owner', () =>
    withDevices(async (desk, phone) => {
      const owner = await openAsOwner(desk, service);
      const ida = await accept(phone, await invite(owner.page, 'Ida Roe'), {
        signInName: 'ida',
        password: 'four slow comets return',
      });
      await owner.page.reload();
      await owner.page.getByRole('button', { name: 'Change Ida Roe' }).click();
      await owner.page.getByRole('button', { name: 'Sign out everywhere' }).click();
      await owner.page.getByRole('dialog').getByRole('button', { name: 'Sign out everywhere' }).click();
      await expect.poll(() => owner.page.getByRole('dialog').count()).toBe(0);
      // Her page may notice by itself, before she goes to the next.
      const account = ida.page.getByRole('link', { name: 'My account' });
      const told = ida.page.getByText('You are signed out');
      await account.or(told).first().waitFor();
      if (!(await told.isVisible())) await account.click({ timeout: 5_000 }).catch(() => undefined);
      await told.waitFor();
    }));
});
