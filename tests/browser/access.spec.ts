import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { accept, goTo, invite, isSignedIn, menuOf, signInAt } from '../support/web-steps.js';

const hostile = '<script>document.title="x"</script> \'; DROP TABLE person;-- {{7*7}}';
const withoutSettings = ['Today', 'Alerts', 'Stock', 'Ordering', 'Recalls', 'Records', 'My account'];
const withSettings = ['Today', 'Alerts', 'Stock', 'Ordering', 'Recalls', 'Records', 'Settings', 'My account'];

describe.skipIf(!hasChromium)('who gets into a studio, with a browser', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  it('lets an invited artist in, once, and offers them only what their role may', () =>
    withDevices(async (ownersBrowser, artistsBrowser) => {
      const owner = await signInAt(ownersBrowser, service.url);
      const link = await invite(owner.page, 'Tove Lind');
      const artist = await accept(artistsBrowser, link, {
        signInName: 'tove',
        password: 'seven quiet harbours blink',
      });
      expect(await menuOf(artist.page).allTextContents()).toEqual(withoutSettings);
      expect(await menuOf(owner.page).allTextContents()).toEqual(withSettings);

      await artist.page.goto(owner.page.url());
      await artist.page.getByRole('heading', { name: 'Not for your role' }).waitFor();

      const again = await openWatched(artistsBrowser, link);
      await again.page.getByRole('heading', { name: 'This link cannot be used' }).waitFor();
      await again.page.getByText('This link works no more').waitFor();

      await owner.page.getByRole('button', { name: 'Copy' }).click();
      await owner.page.getByRole('status').getByText('Copied').waitFor();
      // Leaving holds at once: the artist's next page shows it.
      await owner.page.getByRole('button', { name: 'I have it' }).click();
      expect(await owner.page.getByRole('textbox', { name: 'Link' }).count()).toBe(0);
      // As the owner finds them after they came in.
      await owner.page.reload();
      await owner.page.getByText('Artist, signs in').waitFor();
      await owner.page.getByRole('button', { name: 'Change Tove Lind' }).click();
      const form = owner.page.getByRole('form', { name: 'Change Tove Lind' });
      await form.getByRole('checkbox', { name: 'Works here' }).uncheck();
      await form.getByRole('button', { name: 'Save' }).click();
      await owner.page.getByText('Artist, left').waitFor();
      await artist.page.reload();
      await artist.page.getByRole('link', { name: 'Start', exact: true }).click();
      await artist.page.getByText('you have no part in any studio').waitFor();
      for (const watched of [owner, artist, again]) watched.expectNoComplaint();
    }));

  it('shows what people wrote in names as text', () =>
    withDevices(async (browser) => {
      const owner = await signInAt(browser, service.url);
      await invite(owner.page, hostile);
      await owner.page.getByRole('list', { name: 'Who works here' }).getByText(hostile).waitFor();
      await owner.page.getByRole('button', { name: `Change ${hostile}` }).waitFor();
      expect(await owner.page.title()).toBe('People – Lotward');
      owner.expectNoComplaint();
    }));

  it('asks for the last day of an auditor, and keeps it', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'People');
      const form = page.getByRole('form', { name: 'Add a person' });
      await form.getByLabel('Name').fill('Ines Inspect');
      await form.getByRole('radio', { name: 'Auditor' }).check();
      await form.getByRole('button').click();
      await expect.poll(() => form.locator('input[type=date]:invalid').count()).toBe(1);
      await form.getByLabel('Last day').fill('2099-12-31');
      await form.getByRole('button').click();
      await page.getByText('Auditor, until 31 Dec 2099, has not come in yet').waitFor();
    }));

  it('lets somebody who forgot the password choose a new one by a link', () =>
    withDevices(async (ownersBrowser, managersBrowser) => {
      const owner = await signInAt(ownersBrowser, service.url);
      const first = await invite(owner.page, 'Bo Ek', 'Manager');
      await accept(managersBrowser, first, { signInName: 'bo', password: 'eleven paper kites hover' });
      await owner.page.reload();
      await owner.page.getByRole('button', { name: 'Make a link for Bo Ek' }).click();
      await owner.page.getByText('with the link they choose a new password').waitFor();
      const link = await owner.page.getByRole('textbox', { name: 'Link' }).inputValue();
      const { page } = await openWatched(managersBrowser, link);
      await page.getByLabel('New password').fill('twelve paper boats hover');
      await page.getByRole('button', { name: 'Save and sign in' }).click();
      await isSignedIn(page);
      expect(await menuOf(page).allTextContents()).toEqual(withSettings);
      await goTo(page, 'Tablets');
      const pages = page.getByRole('navigation', { name: 'Pages: Settings' });
      expect(await pages.getByRole('link', { name: 'People' }).count()).toBe(0);
    }));

  it('lets somebody with an account join another studio by it, and change between the two', () =>
    withDevices(async (ownersBrowser, artistsBrowser) => {
      const owner = await signInAt(ownersBrowser, service.url);
      const account = { signInName: 'ida', password: 'four slow comets return' };
      await accept(artistsBrowser, await invite(owner.page, 'Ida Roe'), account);
      await service.made('/chain/studios', { name: 'Harbour Studio', timeZone: 'Europe/Vienna' });
      await owner.page.reload();
      await owner.page.getByRole('combobox', { name: 'Studio' }).selectOption({ label: 'Harbour Studio' });
      const link = await invite(owner.page, 'Ida Roe', 'Manager');

      const { page } = await openWatched(artistsBrowser, link);
      await page.getByRole('heading', { name: 'Come in to Harbour Studio' }).waitFor();
      await page.getByRole('button', { name: 'Join as ida' }).click();
      await page.getByRole('heading', { level: 3, name: 'Harbour Studio' }).waitFor();
      expect(await menuOf(page).allTextContents()).toEqual(['Start', ...withoutSettings]);
      await page.getByRole('combobox', { name: 'Studio' }).selectOption({ label: 'Harbour Studio' });
      expect(await menuOf(page).allTextContents()).toEqual(['Start', ...withSettings]);
    }));

  it('makes a token, shows it once, and ends it at once', () =>
    withDevices(async (browser) => {
      const watched = await signInAt(browser, service.url);
      const { page } = watched;
      await goTo(page, 'Programs');
      const form = page.getByRole('form', { name: 'Make a token' });
      await form.getByLabel('What it is for').fill(`Stock display ${hostile}`);
      await form.getByRole('button').click();
      await page.getByText('Tick at least one.').waitFor();
      await form.getByRole('checkbox', { name: 'read stock' }).check();
      await form.getByRole('button').click();
      const shown = page.getByRole('textbox', { name: 'Token' });
      const token = await shown.inputValue();
      const asks = async (path: string) =>
        (await service.get(path, { authorization: `Bearer ${token}` })).status;
      expect(await asks('/lots')).toBe(200);
      expect(await asks('/clients')).toBe(403);

      await page.reload();
      await page.getByText('1 permission').first().waitFor();
      expect(await shown.count()).toBe(0);
      expect(await page.content()).not.toContain(token);
      await page
        .getByText(/last used/)
        .first()
        .waitFor();

      await page.getByRole('button', { name: /^Revoke Stock display/ }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByRole('button', { name: 'Leave it' }).click();
      await expect.poll(() => dialog.count()).toBe(0);
      expect(await asks('/lots')).toBe(200);
      await page.getByRole('button', { name: /^Revoke Stock display/ }).click();
      await dialog.getByRole('button', { name: 'Revoke', exact: true }).click();
      await page.getByText(/revoked .*, last used/).waitFor();
      expect(await asks('/lots')).toBe(401);
      watched.expectNoComplaint();
    }));

  it('can all be done with the keyboard', () =>
    withDevices(async (browser) => {
      const { page } = await openWatched(browser, service.url);
      const name = page.getByLabel('Sign-in name');
      await name.waitFor();
      const press = (...keys: string[]) =>
        keys.reduce((before, key) => before.then(() => page.keyboard.press(key)), Promise.resolve());
      const focused = () =>
        page.evaluate(
          '(document.activeElement.labels?.[0] ?? document.activeElement).textContent.trim()',
        ) as Promise<string>;
      /** Goes on from control to control until the one of this name is reached. */
      const tabTo = async (wanted: string) => {
        for (let presses = 0; presses < 120; presses += 1) {
          await press('Tab');
          if ((await focused()).startsWith(wanted)) return;
        }
        throw new Error(`${wanted} cannot be reached with the Tab key.`);
      };
      await tabTo('Sign-in name');
      await page.keyboard.type(testOwner.signInName);
      await tabTo('Password');
      await page.keyboard.type(testOwner.password);
      await press('Enter');
      await page.getByRole('heading', { level: 1, name: 'Signed in' }).waitFor();
      expect(await focused()).toBe('Signed in');
      await tabTo('Settings');
      await press('Enter');
      await page.getByRole('navigation', { name: 'Pages: Settings' }).waitFor();
      await tabTo('People');
      await press('Enter');
      await page.getByRole('heading', { level: 1, name: 'People' }).waitFor();
      const form = page.getByRole('form', { name: 'Add a person' });
      await form.waitFor();
      await tabTo('Name');
      await page.keyboard.type('Kay Board');
      await tabTo('Artist');
      await press('ArrowUp', 'Tab');
      await tabTo('Add and make the link');
      await press('Space');
      await page.getByRole('heading', { name: 'The link for Kay Board' }).waitFor();
      expect(await focused()).toBe('The link for Kay Board');
      await page.getByText('Manager, has not come in yet').waitFor();
    }));
});
