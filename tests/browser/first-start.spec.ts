import { rmSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { type StartedProcess, startProcess, testOwner, usualEngine } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { fillSignIn, goTo, isSignedIn } from '../support/web-steps.js';

describe.skipIf(!hasChromium).each(usualEngine)('the first start in a browser on %s', (engine) => {
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
      await expect.poll(() => page.getByRole('combobox', { name: 'Time zone' }).inputValue()).toBe(ownZone);

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

  it('goes by the steps on the page alone from the empty studio to a finished tray', () =>
    withDevices(async (browser) => {
      const { page } = await openWatched(browser, service.url);
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      const guide = page.getByRole('heading', { name: 'The first tray' });
      const step = async (name: string, heading: string) => {
        await page.getByRole('link', { name: 'Today', exact: true }).click();
        await guide.waitFor();
        await page.getByRole('link', { name }).click();
        await page.getByRole('heading', { level: 1, name: heading }).waitFor();
      };

      await step('Name what you work with', 'Products');
      await page.getByRole('button', { name: 'Add a product' }).click();
      await page.getByRole('radio', { name: 'cartridge or blade' }).check();
      await page.getByRole('button', { name: 'Add a maker' }).click();
      await page.getByLabel('Name of the maker').fill('Corvin Needleworks');
      await page.getByRole('button', { name: 'Add the maker' }).click();
      await page.getByLabel('Name of the maker').waitFor({ state: 'detached' });
      await page.getByLabel('Name', { exact: true }).fill('Liner');
      await page.getByLabel('Notation on the box').fill('1207RL');
      await page.getByRole('button', { name: 'Add the product' }).click();
      await page.getByText('Corvin Needleworks Liner').first().waitFor();

      await step('Receive what is there', 'Receive');
      await page.getByRole('textbox', { name: 'Symbol or lot' }).fill('CL-9');
      await page.getByRole('button', { name: 'Read it' }).click();
      await page.getByRole('textbox', { name: 'Product' }).fill('liner');
      await page.getByRole('button', { name: /^Corvin Needleworks Liner/ }).click();
      await page.getByLabel('Use-by date').fill('2030-06');
      await page
        .getByLabel(/^How many/)
        .first()
        .fill('5');
      await page.getByRole('button', { name: 'Take in', exact: true }).click();
      await page.getByText(/^Taken in: 1 line/).waitFor();

      await step('Name what you offer', 'Procedures');
      await page.getByLabel('Name', { exact: true }).fill('Powder brows');
      await page.getByRole('button', { name: 'Add the procedure' }).click();
      await page.getByText('Powder brows').first().waitFor();

      await page.getByRole('link', { name: 'Today', exact: true }).click();
      await page.getByRole('button', { name: 'Somebody walks in' }).click();
      await page.getByRole('radio', { name: 'Somebody new' }).check();
      await page.getByLabel('Name', { exact: true }).fill('Ida Sommer');
      await page.getByRole('button', { name: 'Begin, and lay the tray' }).click();
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await page.getByRole('textbox', { name: 'Scan' }).fill('cl-9');
      await page.keyboard.press('Enter');
      await page.locator('[data-verdict]').getByText('Admitted', { exact: true }).waitFor();
      await page.getByRole('link', { name: 'Finish' }).click();
      await page.getByRole('button', { name: 'Finish and sign' }).click();
      await page.getByRole('heading', { level: 1, name: 'Session finished' }).waitFor();

      await page.getByRole('link', { name: 'Back to today' }).click();
      await page.getByRole('list', { name: 'Over' }).getByRole('link', { name: 'To the record' }).click();
      await page.getByText('CL-9').first().waitFor();
      await page.getByRole('link', { name: 'Today', exact: true }).click();
      await page.getByRole('list', { name: 'Over' }).waitFor();
      expect(await guide.count()).toBe(0);
    }));
});
