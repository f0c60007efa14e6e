import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * Runs inside the page and lists what is wrong with what is seen:
 * - text whose contrast with its ground is below 4.5 to 1, or 3 to 1 when it is large (WCAG 2.2, 1.4.3 [M]);
 * - a control without a name (4.1.2), or smaller than 44 by 24 CSS pixels and not part of a sentence (2.5.8 asks for 24);
 * - anything wider than the window (1.4.10), no page language, no title, not exactly one first heading.
 */
const audit = `(() => {
  const faults = [];
  const shown = (element) => element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  const parse = (colour) => {
    const [r = 0, g = 0, b = 0, a = 1] = colour.match(/[\\d.]+/g).map(Number);
    return { r, g, b, a };
  };
  const groundOf = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const ground = parse(getComputedStyle(at).backgroundColor);
      if (ground.a === 1) return ground;
      if (ground.a > 0) return { ...ground, mixed: true };
    }
    return { r: 255, g: 255, b: 255, a: 1 };
  };
  const luminance = ({ r, g, b }) => {
    const [x, y, z] = [r, g, b].map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * x + 0.7152 * y + 0.0722 * z;
  };
  const contrast = (one, other) => {
    const [high, low] = [luminance(one), luminance(other)].sort((a, b) => b - a);
    return (high + 0.05) / (low + 0.05);
  };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  let texts = 0;
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const element = node.parentElement;
    if (node.data.trim() === '' || !shown(element) || element.closest('[disabled], noscript, script, style')) continue;
    texts += 1;
    const style = getComputedStyle(element);
    const size = Number.parseFloat(style.fontSize);
    const large = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    const found = contrast(parse(style.color), groundOf(element));
    if (found < (large ? 3 : 4.5)) {
      faults.push('contrast ' + found.toFixed(2) + ': ' + node.data.trim().slice(0, 60));
    }
  }
  if (texts === 0) faults.push('no text at all');
  const controls = document.querySelectorAll('a[href], button, input, select, textarea, summary');
  for (const control of controls) {
    if (!shown(control) || control.hidden) continue;
    const labels = [...(control.labels ?? [])].map((label) => label.textContent).join(' ');
    const name = control.getAttribute('aria-label') || labels || control.textContent || '';
    if (name.trim() === '') faults.push('no name: ' + control.outerHTML.slice(0, 120));
    const inSentence = control.tagName === 'A' && control.closest('p') !== null;
    const isSkip = control.getAttribute('href') === '#content';
    // What stands beside a tick box or dial belongs to its target.
    const row = ['checkbox', 'radio'].includes(control.type) ? control.labels[0].parentElement : control;
    const { width, height } = row.getBoundingClientRect();
    const inField = control.closest('.mantine-Input-section') !== null;
    const least = inField || row !== control ? 24 : 44;
    if (!inSentence && !isSkip && (height < least || width < 24)) {
      faults.push('small, ' + Math.round(width) + ' by ' + Math.round(height) + ': ' + name.trim().slice(0, 60));
    }
  }
  const root = document.documentElement;
  if (root.scrollWidth > root.clientWidth) faults.push('wider than the window by ' + (root.scrollWidth - root.clientWidth));
  if (!root.lang) faults.push('no language');
  if (!document.title.endsWith('Lotward')) faults.push('no title: ' + document.title);
  const headings = document.querySelectorAll('h1').length;
  if (headings !== 1) faults.push(headings + ' first headings');
  if (document.querySelectorAll('main').length !== 1) faults.push('not one main part');
  return faults;
})()`;

/** The short form, which every page reads in half the time. */
const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The rules of axe-core for WCAG 2.2 A and AA, on the page as it is shown; what it calls serious or critical. */
async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(`window.axe ?? (() => { ${axeSource} })()`);
  const { violations } = (await page.evaluate(
    `axe.run(document, { resultTypes: ['violations'], runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] })`,
  )) as axe.AxeResults;
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `axe ${id}: ${html.slice(0, 160)}`));
}

/** Where to write a picture of every screen that is looked at; left out: none is written. */
const pictureFolder = process.env.SCREENSHOTS;
const taken = new Map<string, number>();

/** Named after the test, numbered where it looks at several screens. */
function pictureName(): string {
  const name = (expect.getState().currentTestName ?? 'page').replace(/[^a-z0-9]+/gi, '-').slice(-120);
  const number = (taken.get(name) ?? 0) + 1;
  taken.set(name, number);
  return `${name}-${number}`;
}

async function takePicture(page: Page, name: string): Promise<void> {
  if (pictureFolder === undefined) return;
  mkdirSync(pictureFolder, { recursive: true });
  await page.screenshot({ path: join(pictureFolder, `${name}.png`), fullPage: true });
}

/** Every fault of a page on a phone, a tablet and a desk: by night, which changes colours only, on one of them, else by day. */
export async function faultsEverywhere(page: Page): Promise<string[]> {
  const picture = pictureName();
  const faults: string[] = [];
  const look = async (where: string, width: number) => {
    await page.setViewportSize({ width, height: 800 });
    const found = (await page.evaluate(audit)) as string[];
    faults.push(...found.map((fault) => `${where}, ${width}: ${fault}`));
    await takePicture(page, `${picture}-${where}-${width}`);
  };
  await inScheme(page, 'dark');
  await look('dark', 768);
  await inScheme(page, 'light');
  for (const width of [360, 1280]) await look('light', width);
  return [...faults, ...(await axeFaults(page))];
}

async function inScheme(page: Page, colorScheme: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
  await page.locator(`html[data-mantine-color-scheme="${colorScheme}"]`).waitFor();
}
