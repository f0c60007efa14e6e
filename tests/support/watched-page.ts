import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';

const writtenByBrowser =
  /^Failed to load resource: (the server responded with a status of 4|net::ERR_(INTERNET_DISCONNECTED|CONNECTION_REFUSED))|^Service Worker registration blocked by Playwright/;

/** What a page asked for and what it complained of. */
export class Watched {
  /** Addresses of all requests, with whatever stood behind a # left out, as the service sees them. */
  readonly requested: string[] = [];
  /** Errors of scripts, and what the browser refused by the content policy. */
  readonly complaints: string[] = [];

  constructor(readonly page: Page) {
    page.on('request', (request) => this.requested.push(request.url()));
    page.on('pageerror', (error) => this.complaints.push(`${page.url()}: ${error.message}`));
    page.on('console', (message) => {
      if (!['error', 'warning'].includes(message.type())) return;
      // What the browser writes by itself: an answer of 4xx, also one the page asked for on purpose, no network, and that
      // this test does not let the app be kept on the device.
      if (writtenByBrowser.test(message.text())) return;
      this.complaints.push(`${page.url()}: ${message.text()}`);
    });
  }

  expectNoComplaint(): void {
    expect(this.complaints).toEqual([]);
  }
}

/** A new page whose complaints and requests are kept. */
export async function openWatched(browser: BrowserContext, address: string): Promise<Watched> {
  const watched = new Watched(await browser.newPage());
  await watched.page.goto(address);
  return watched;
}
