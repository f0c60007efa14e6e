import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { fillSignIn, goTo, isSignedIn, signInAt } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('signing in with a browser', () => {
  const withDevices = useDevices();
  let service: RunningService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(() => service.dispose());

  it('tells a wrong password, and how long to wait when there were too many, and lets in afterwards', () =>
    withDevices(async (browser) => {
      const watched = await openWatched(browser, service.url);
      const { page } = watched;
      const button = page.getByRole('button', { name: 'Sign in', exact: true });
      const answered = () => page.waitForResponse((response) => response.url().endsWith('/sign-in'));
      let waits = false;
      for (let attempt = 1; attempt <= 12 && !waits; attempt += 1) {
        const answer = answered();
        await fillSignIn(page, testOwner.signInName, 'not the password');
        waits = (await answer).status() === 429;
        if (!waits) await page.getByText('do not go together').waitFor();
      }
      expect(waits).toBe(true);
      await page.getByText('Too many wrong attempts').waitFor();
      await page.getByText(/^You can try again in \d+ seconds?\.$/).waitFor();
      await expect.poll(() => button.isDisabled()).toBe(true);
      // It is enabled by itself when the time is over.
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await isSignedIn(page);
      watched.expectNoComplaint();
    }));

  it('leads whoever was signed out elsewhere to signing in, and back to where they were', () =>
    withDevices(async (mine, other) => {
      const here = await signInAt(mine, service.url);
      const there = await signInAt(other, service.url);
      await goTo(there.page, 'My account');
      await goTo(here.page, 'My account');
      const list = here.page.getByRole('list', { name: 'Where you are signed in' });
      await list.getByText('this browser').waitFor();
      // The newest first: the other browser's.
      const ends = list.getByRole('button', { name: /^Sign out / });
      const before = await ends.count();
      await ends.first().click();
      await expect.poll(() => ends.count()).toBe(before - 1);

      await there.page.getByRole('link', { name: 'Settings' }).click();
      await there.page.getByText('You are signed out').waitFor();
      await fillSignIn(there.page, testOwner.signInName, testOwner.password);
      await there.page.getByRole('navigation', { name: 'Pages: Settings' }).waitFor();
      await goTo(here.page, 'Today');
      here.expectNoComplaint();
      there.expectNoComplaint();
    }));

  it('shows nothing of somebody who signed out', () =>
    withDevices(async (browser) => {
      const { page } = await signInAt(browser, service.url);
      await goTo(page, 'My account');
      await page.getByRole('button', { name: 'Sign out', exact: true }).click();
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      await page.goBack();
      await page.getByRole('heading', { name: 'Sign in' }).waitFor();
      expect(await page.getByText(testOwner.signInName).count()).toBe(0);
    }));

  it('changes the password, and says why one will not do', () =>
    withDevices(async (browser) => {
      const watched = await signInAt(browser, service.url);
      const { page } = watched;
      await goTo(page, 'My account');
      const change = async (current: string, next: string) => {
        await page.getByLabel('Current password').fill(current);
        await page.getByLabel('New password').fill(next);
        await page.getByRole('button', { name: 'Change the password' }).click();
      };
      await change('another one entirely', 'six calm rivers wander');
      await page.getByText('The current password is another one.').waitFor();
      await change(testOwner.password, 'password1234');
      await page.getByText('The password is one that is guessed soon').waitFor();
      await change(testOwner.password, 'six calm rivers wander');
      await page.getByText('The password is changed.').waitFor();
      await change('six calm rivers wander', testOwner.password);
      await expect.poll(() => page.getByLabel('Current password').inputValue()).toBe('');
      watched.expectNoComplaint();
    }));

  it('says so when the service does not answer, and goes on when it does', () =>
    withDevices(async (browser) => {
      const { page } = await openWatched(browser, service.url);
      await page.getByLabel('Sign-in name').waitFor();
      await page.route('**/api/v1/sign-in', (route) => route.abort());
      await fillSignIn(page, testOwner.signInName, testOwner.password);
      await page.getByRole('alert').getByText('The service did not answer').waitFor();
      await page.unroute('**/api/v1/sign-in');
      await page.getByRole('button', { name: 'Sign in', exact: true }).click();
      await isSignedIn(page);
    }));
});
