import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { engines, type StartedProcess, startProcess, testOwner } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { fillSignIn, goTo, isSignedIn } from '../support/web-steps.js';

describe.skipIf(!hasChromium).each(engines)('the first start in a browser on %s', (engine) => {
  const withDevices = useDevices();
  let service: StartedProcess;
  let link: string;

  beforeAll(async () => {
    service = await startProcess(engine);
    link = /http\S+\/set-up#\S+/.exec(service.log.join(''))?.[0] ?? '';
  });

  afterAll(async () => {
    service.child.kill();
    await new Promise((resolve) => service.child.once('exit', resolve));
    rmSync(service.dataFolder, { recursive: true, force: true });
  });

  it('sends whoever comes without the link to the console', () =>
    withDevices(async (browser) => {
      const watched = await openWatched(browser, service.url);
      await watched.page.getByRole('heading', { name: 'Nobody has an account here yet' }).waitFor();
      await watched.page.goto(`${service.url}/set-up`);
      await watched.page.getByRole('heading', { name: 'The link is needed whole' }).waitFor();
      await watched.page.getByText('npm run cli -- sign-in-link').waitFor();
      watched.expectNoComplaint();
    }));

  it('tells whoever comes with a wrong link that it works no more', () =>
    withDevices(async (browser) => {
      const { page } = await openWatched(browser, `${service.url}/set-up#${'x'.repeat(43)}`);
      await page.getByLabel('Name of the studio').fill('Larkmoor');
      await page.getByLabel('Your name').fill('Mira Holt');
      await page.getByLabel('Sign-in name').fill(testOwner.signInName);
      await page.getByLabel('Password', { exact: true }).fill(testOwner.password);
      await page.getByRole('button', { name: 'Set up and sign in' }).click();
      await page.getByRole('alert').getByText('This link works no more').waitFor();
    }));

  it('leads from the link on the console to a signed-in owner', () =>
    withDevices(async (browser) => {
      const studioName = '<img src=x onerror="document.title=1">';
      const secret = link.split('#')[1] ?? '';
      const watched = await openWatched(browser, link);
      const { page } = watched;
      await page.getByLabel('Name of the studio').fill(studioName);
      expect(page.url()).toBe(`${service.url}/set-up`);
      const ownZone = await page.evaluate('Intl.DateTimeFormat().resolvedOptions().timeZone');
      expect(await page.getByRole('combobox', { name: 'Time zone' }).inputValue()).toBe(ownZone);

      await page.getByLabel('Your name').fill("Robert'); DROP TABLE person;--");
      await page.getByLabel('Sign-in name').fill(testOwner.signInName);
      const password = page.getByLabel('Password', { exact: true });
      await password.fill('too short');
      await page.getByRole('button', { name: 'Set up and sign in' }).click();
      await page.getByText('The password has 9 characters; at least 12 are needed.').waitFor();

      await password.fill(testOwner.password);
      await page.getByRole('button', { name: 'Show the password' }).click();
      expect(await password.getAttribute('type')).toBe('text');
      await page.getByRole('button', { name: 'Set up and sign in' }).click();
      await page.getByRole('heading', { name: 'The first tray' }).waitFor();
      expect(page.url()).toMatch(/\/studios\/[0-9a-f-]{36}\/today$/);
      await goTo(page, 'My account');
      await page.getByRole('link', { name: 'Your studios' }).click();
      await page.getByText(`As ${testOwner.signInName}.`).waitFor();
      await page.getByRole('heading', { name: studioName }).waitFor();
      await page.getByText('Owner', { exact: true }).waitFor();

      await page.reload();
      await page.getByRole('heading', { name: studioName }).waitFor();
      expect(await page.title()).toBe('Signed in – Lotward');
      await goTo(page, 'People');
      await page.getByText("Robert'); DROP TABLE person;--").waitFor();

      expect(secret).toHaveLength(43);
      expect(watched.requested.filter((address) => address.split('#')[0]?.includes(secret))).toEqual([]);
      expect(
        await page.evaluate('JSON.stringify(localStorage) + JSON.stringify(sessionStorage)'),
      ).not.toContain(secret);
      watched.expectNoComplaint();
    }));

  it('lets nobody use the link again, and the owner sign in', () =>
    withDevices(async (browser) => {
      const watched = await openWatched(browser, link);
      await watched.page.getByRole('heading', { name: 'The set-up was done already' }).waitFor();
      await watched.page.getByRole('link', { name: 'To signing in' }).click();
      await fillSignIn(watched.page, testOwner.signInName.toUpperCase(), testOwner.password);
      await isSignedIn(watched.page);
      watched.expectNoComplaint();
    }));
});
