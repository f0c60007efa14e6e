import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';

const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];
const program = places.find((place) => place !== undefined && existsSync(place));

/** Whether there is a browser for tests. Where there must be one, with CI set, its absence is a failure. */
export const hasChromium = program !== undefined || process.env.CI !== undefined;

if (program === undefined) {
  process.stdout.write('\nSKIPPED: what needs a browser. Install Chromium, or name one in CHROMIUM.\n\n');
}

const quietArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Starts one browser for many tests, which is quicker: each opens a context in it, which knows nothing of the others as
 * another device would not.
 */
export function startBrowser(furtherArguments: string[] = []): Promise<Browser> {
  if (program === undefined)
    throw new Error('There is no Chromium here. Install it, or name one in CHROMIUM.');
  return chromium.launch({
    executablePath: program,
    headless: true,
    args: [...quietArguments, ...furtherArguments],
  });
}

let browserOfAll: Promise<Browser> | undefined;

/**
 * The browser of all test files that run in this process: it starts with the first that needs it, and ends with the
 * process. Whoever opens a context in it closes that.
 */
export async function sharedBrowser(): Promise<Browser> {
  const running = await browserOfAll?.catch(() => undefined);
  if (running?.isConnected()) return running;
  browserOfAll = startBrowser();
  return browserOfAll;
}

/** Opens a browser with a fresh profile, uses it and closes it. */
export async function withBrowser<Result>(
  use: (browser: BrowserContext) => Promise<Result>,
  furtherArguments: string[] = [],
): Promise<Result> {
  if (program === undefined)
    throw new Error('There is no Chromium here. Install it, or name one in CHROMIUM.');
  const profile = mkdtempSync(join(tmpdir(), 'lotward-browser-'));
  const browser = await chromium.launchPersistentContext(profile, {
    executablePath: program,
    headless: true,
    locale: 'en-GB',
    args: [...quietArguments, ...furtherArguments],
  });
  try {
    return await use(browser);
  } finally {
    await browser.close();
    rmSync(profile, { recursive: true, force: true });
  }
}
