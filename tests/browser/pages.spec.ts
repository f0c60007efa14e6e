import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive } from '../support/sample-studio.js';
import { type RunningService, startProcess, startService } from '../support/service.js';
import { openWatched } from '../support/watched-page.js';
import { goTo, invite, openAsOwner, pageOfOwner, signInAt } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let sessionInSetup: string;
  beforeAll(async () => {
    service = await startService();
    const studio = await makeSampleStudio(service);
    await receive(service, studio, { productId: studio.umberId, code: 'HU-118' });
    const session = {
      clientId: studio.clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
    };
    await service.made('/sessions', { ...session, plannedStart: new Date().toISOString() });
    sessionInSetup = (await service.made<{ id: string }>('/sessions/walk-in', session)).id;
  });
  afterAll(() => service.dispose());

  const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name }).waitFor();

  const pages: Record<string, (browser: BrowserContext) => Promise<Page>> = {
    'signing in': async (browser) => {
      const { page } = await openWatched(browser, service.url);
      await heading(page, 'Sign in');
      await page.getByLabel('Sign-in name').fill('nobody');
      await page.getByLabel('Password', { exact: true }).fill('wrong');
      await page.getByRole('button', { name: 'Sign in', exact: true }).click();
      await page.getByRole('alert').waitFor();
      return page;
    },
    'a set-up that was done': async (browser) => {
      const { page } = await openWatched(browser, `${service.url}/set-up#x`);
      await heading(page, 'The set-up was done already');
      return page;
    },
    'an invitation': async (browser) => {
      const { page } = await signInAt(browser, service.url);
      const link = await invite(page, 'Una New');
      await page.getByRole('button', { name: 'Sign out', exact: true }).click();
      await heading(page, 'Sign in');
      await page.goto(link);
      await heading(page, 'Come in to');
      return page;
    },
    'the start': async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await page.goto(`${service.url}/start`);
      await page.getByText('What you may do there').click();
      return page;
    },
    'my account': async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await goTo(page, 'My account');
      await page.getByText('this browser').waitFor();
      return page;
    },
    'the day': async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await goTo(page, 'Today');
      await page.getByRole('button', { name: /^Lay the tray for / }).waitFor();
      return page;
    },
    'a tray': async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await page.goto(`${service.url}/studios/${service.studioId}/today/trays/${sessionInSetup}`);
      await page.getByRole('textbox', { name: 'Scan' }).fill('HU-118');
      await page.keyboard.press('Enter');
      await page.getByText('Admitted', { exact: true }).waitFor();
      return page;
    },
    people: async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await invite(page, `Anna-Theodora ${'Longname'.repeat(9)}`);
      await page.getByRole('button', { name: 'Change Owner' }).click();
      return page;
    },
    programs: async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await goTo(page, 'Programs');
      await page.getByText('acts as you').first().waitFor();
      return page;
    },
    'a question before something is ended': async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await goTo(page, 'Programs');
      await page.getByRole('button', { name: 'Revoke tests' }).click();
      await page.getByRole('dialog').getByText('is let in no more').waitFor();
      return page;
    },
    'no page': async (browser) => {
      const { page } = await pageOfOwner(browser, service);
      await page.goto(`${service.url}/nowhere`);
      await heading(page, 'There is no such page');
      return page;
    },
  };

  it.each(Object.keys(pages))('can be read and pressed by day and night, on 360 to 1280 px: %s', (name) =>
    withDevices(async (browser) => {
      const page = await pages[name]?.(browser);
      expect(page && (await faultsEverywhere(page))).toEqual([]);
    }),
  );

  it('can be read and pressed by day and night, on 360 to 1280 px: the set-up', async () => {
    const fresh = await startProcess();
    try {
      await withDevices(async (browser) => {
        const link = /http\S+\/set-up#\S+/.exec(fresh.log.join(''))?.[0] ?? '';
        const { page } = await openWatched(browser, link);
        await page.getByLabel('Name of the studio').waitFor();
        expect(await faultsEverywhere(page)).toEqual([]);
      });
    } finally {
      fresh.child.kill();
    }
  });

  it('would be found at fault, were there anything', () =>
    withDevices(async (browser) => {
      const { page } = await openWatched(browser, service.url);
      await heading(page, 'Sign in');
      await page.evaluate(`(() => {
        const main = document.querySelector('main');
        const text = document.createElement('p');
        text.textContent = 'faint';
        text.style.color = '#cccccc';
        const wide = document.createElement('div');
        wide.style.width = '3000px';
        wide.textContent = 'wide';
        const button = document.createElement('button');
        button.style.height = '10px';
        main.append(text, wide, button);
      })()`);
      const faults = (await faultsEverywhere(page)).join('\n');
      for (const fault of ['contrast', 'wider than the window', 'no name', 'small']) {
        expect(faults).toContain(fault);
      }
    }));

  it('say what to do when a part of them is gone, as after an upgrade while they were open', () =>
    withDevices(async (browser) => {
      const { page } = await openAsOwner(browser, service);
      await goTo(page, 'Today');
      await page.route('**/assets/stock-pages-*.js', (route) => route.fulfill({ status: 404, body: '' }));
      await page.getByRole('link', { name: 'Stock', exact: true }).click();
      await heading(page, 'This page could not be shown');
      expect(await faultsEverywhere(page)).toEqual([]);
      await page.unroute('**/assets/stock-pages-*.js');
      await page.getByRole('button', { name: 'Load the page anew' }).click();
      await heading(page, 'Levels');
    }));

  it('let no style and no script in that is not their own', () =>
    withDevices(async (browser) => {
      const watched = await openWatched(browser, service.url);
      await heading(watched.page, 'Sign in');
      watched.expectNoComplaint();
      await watched.page.evaluate(`(() => {
        const style = document.createElement('style');
        style.textContent = 'h1 { display: none }';
        const script = document.createElement('script');
        script.textContent = 'document.title = "taken over"';
        document.head.append(style, script);
      })()`);
      await expect.poll(() => watched.page.getByRole('heading', { level: 1 }).isVisible()).toBe(true);
      expect(await watched.page.title()).toBe('Sign in – Lotward');
      await expect.poll(() => watched.complaints.length).toBe(2);
      expect(watched.complaints.join()).toContain('Content Security Policy');
    }));

  it('are held still behind a question, by a style that shows its nonce', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      await goTo(watched.page, 'Programs');
      await watched.page.getByRole('button', { name: 'Revoke tests' }).click();
      await watched.page.getByRole('dialog').waitFor();
      expect(await watched.page.evaluate('getComputedStyle(document.body).overflow')).toBe('hidden');
      watched.expectNoComplaint();
    }));
});
