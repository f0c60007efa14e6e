import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PasskeyPage } from '../support/authenticator.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { Watched } from '../support/watched-page.js';
import { fillSignIn, goTo, isSignedIn, signInAt } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('passkeys on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  it('are added, used to sign in, renamed, and needed to remove them', () =>
    withDevices(async (browser) => {
      const { page } = await PasskeyPage.open(browser, service.url);
      const watched = new Watched(page);
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await goTo(page, 'My account');
      await page.getByText('You have none yet.').waitFor();
      await page.getByLabel('Name of the passkey').fill('<b>this laptop</b>');
      await page.getByRole('button', { name: 'Add a passkey' }).click();
      await page.getByText('The passkey “<b>this laptop</b>” is added.').waitFor();
      const list = page.getByRole('list', { name: 'Passkeys' });
      await list.getByText(/^for localhost, Added .*, last used/i).waitFor();

      await list.getByRole('button', { name: 'Rename <b>this laptop</b>' }).click();
      const form = page.getByRole('form', { name: 'Rename <b>this laptop</b>' });
      await form.getByLabel('Name of the passkey').fill('this laptop');
      await form.getByRole('button', { name: 'Save' }).click();

      // Signed in by password only, and a passkey is there: it is asked for before the passkeys are changed.
      await list.getByRole('button', { name: 'Remove this laptop' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Remove', exact: true }).click();
      const again = page.getByRole('dialog', { name: 'Sign in again' });
      expect(await again.getByLabel('Password').count()).toBe(0);
      await again.getByRole('button', { name: 'Sign in with a passkey' }).click();
      await page.getByText('You have none yet.').waitFor();

      await page.getByLabel('Name of the passkey').fill('this laptop again');
      await page.getByRole('button', { name: 'Add a passkey' }).click();
      await page.getByText('is added.').waitFor();
      await page.getByRole('button', { name: 'Sign out', exact: true }).click();
      await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
      await isSignedIn(page);
      await goTo(page, 'My account');
      await page.getByText(/^Since .*, with a passkey$/).waitFor();
      watched.expectNoComplaint();
    }));

  it('say so when none is used, and leave the password as a way in', () =>
    withDevices(async (browser) => {
      // Another device, which has no passkey.
      const { page } = await PasskeyPage.open(browser, service.url);
      await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
      await page.getByRole('alert').getByText('No passkey was used').waitFor();
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await isSignedIn(page);
    }));

  it('are not offered at a bare address, which no browser keeps them for, but the way to where they are', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url.replace('localhost', '127.0.0.1'));
      await goTo(page, 'My account');
      await page.getByText('Passkeys do not work at this address').waitFor();
      expect(await page.getByRole('button', { name: 'Add a passkey' }).count()).toBe(0);
      await page.getByRole('link', { name: 'Open Lotward as localhost' }).click();
      await page.waitForURL(`${service.url}/account`);
      await page.getByRole('button', { name: 'Sign in with a passkey' }).waitFor();
    }));
});
