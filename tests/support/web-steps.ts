import type { BrowserContext, Locator, Page } from 'playwright-core';
import { type RunningService, testOwner } from './service.js';
import { signInOwner } from './signing-in.js';
import { openWatched, Watched } from './watched-page.js';

/** Opens the app in a browser and signs in with name and password. */
export async function signInAt(
  browser: BrowserContext,
  url: string,
  { signInName, password } = testOwner,
): Promise<Watched> {
  const watched = await openWatched(browser, url);
  await fillSignIn(watched.page, signInName, password);
  await isSignedIn(watched.page);
  return watched;
}

/** A page at which whoever these cookies belong to is signed in, and which shows nothing yet. */
export async function pageOf(browser: BrowserContext, url: string, cookie: string): Promise<Watched> {
  await browser.addCookies(
    cookie.split('; ').map((each) => {
      const [name = '', value = ''] = each.split(/=(.*)/s);
      return { name, value, url };
    }),
  );
  return new Watched(await browser.newPage());
}

/** Opens the app for whoever these cookies belong to; how they come in is tested by itself. */
export async function openAs(browser: BrowserContext, url: string, cookie: string): Promise<Watched> {
  const watched = await pageOf(browser, url, cookie);
  await watched.page.goto(url);
  return watched;
}

const cookiesOfOwners = new WeakMap<RunningService, string>();

/** The owner, signed in; once for many devices, since each check of a password takes its time on purpose. */
async function cookieOfOwner(service: RunningService): Promise<string> {
  const kept = cookiesOfOwners.get(service);
  if (kept !== undefined) {
    const { status } = await service.get(`${service.url}/api/v1/me`, { cookie: kept });
    if (status === 200) return kept;
  }
  const cookie = await signInOwner(service);
  cookiesOfOwners.set(service, cookie);
  return cookie;
}

export async function pageOfOwner(browser: BrowserContext, service: RunningService): Promise<Watched> {
  return pageOf(browser, service.url, await cookieOfOwner(service));
}

export async function openAsOwner(browser: BrowserContext, service: RunningService): Promise<Watched> {
  return openAs(browser, service.url, await cookieOfOwner(service));
}

/** Until the pages for whoever is signed in are there. */
export function isSignedIn(page: Page): Promise<void> {
  return page.getByRole('button', { name: 'Sign out', exact: true }).waitFor();
}

export async function fillSignIn(page: Page, signInName: string, password: string): Promise<void> {
  await page.getByLabel('Sign-in name').fill(signInName);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
}

/** The links of the menu that stands above every page. */
export function menuOf(page: Page): Locator {
  return page.getByRole('navigation', { name: 'Pages', exact: true }).getByRole('link');
}

const pagesOfSettings = ['Studio', 'People', 'Tablets', 'Programs', 'Procedures', 'Thresholds'];

/** Goes to a page of the menu, or of settings. */
export async function goTo(page: Page, name: string): Promise<void> {
  if (pagesOfSettings.includes(name)) {
    await page.getByRole('link', { name: 'Settings', exact: true }).click();
    await page
      .getByRole('navigation', { name: 'Pages: Settings' })
      .getByRole('link', { name, exact: true })
      .click();
  } else {
    await page.getByRole('navigation').getByRole('link', { name, exact: true }).click();
  }
  await page.getByRole('heading', { level: 1, name }).waitFor();
}

/** Adds a person on the page of people. @returns the link that is shown for them */
export async function invite(page: Page, name: string, role = 'Artist'): Promise<string> {
  await goTo(page, 'People');
  const form = page.getByRole('form', { name: 'Add a person' });
  await form.getByLabel('Name').fill(name);
  await form.getByRole('radio', { name: role, exact: true }).check();
  await form.getByRole('button').click();
  await page.getByRole('heading', { name: `The link for ${name}` }).waitFor();
  return page.getByRole('textbox', { name: 'Link' }).inputValue();
}

/** Accepts an invitation with a new account. */
export async function accept(
  browser: BrowserContext,
  link: string,
  { signInName, password }: typeof testOwner,
): Promise<Watched> {
  const watched = await openWatched(browser, link);
  await watched.page.getByLabel('Sign-in name').fill(signInName);
  await watched.page.getByLabel('Password', { exact: true }).fill(password);
  await watched.page.getByRole('button', { name: 'Accept and sign in' }).click();
  await isSignedIn(watched.page);
  return watched;
}
