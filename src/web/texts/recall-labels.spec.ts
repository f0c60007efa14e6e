import { describe, expect, it } from 'vitest';
import { german } from './de/german.js';
import { english } from './en/english.js';

/** WCAG 2.2, 2.5.3 [M]: whoever speaks what stands on a button reaches it. */
describe.each([
  ['English', english],
  ['German', german],
])('the name of a button of an answered recall, in %s,', (_, texts) => {
  const { recallExposures, recallTelling, recallClosing } = texts;
  const buttons: [name: string, written: string][] = [
    [recallTelling.readFor('Ida'), recallTelling.read],
    [recallTelling.logFor('Ida'), recallTelling.log],
    [recallExposures.showOf('AB-12'), recallExposures.show],
    [recallExposures.hideOf('AB-12'), recallExposures.hide],
    ...Object.values(recallClosing.overrideOf).map((name): [string, string] => [
      name,
      recallClosing.override,
    ]),
  ];
  it.each(buttons)('%s, holds what is written on it', (name, written) => {
    expect(name.toLowerCase()).toContain(written.toLowerCase());
  });
});
