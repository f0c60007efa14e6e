import { describe, expect, it } from 'vitest';
import { english } from '../en/english.js';
import { german } from './german.js';

/** Texts that are the same in both languages: names, codes, and words that both use. */
const same = new Set([
  ...[
    'Lotward',
    'Studio',
    'Artist',
    'Artists',
    'Passkeys',
    'Name',
    'Link',
    'Tablets',
    'Code',
    'Person',
    'Hash',
    'GTIN',
    'GTINs',
    'Webhook',
    'Webhooks',
    'Browser',
    '−1',
    // Nothing, and where nothing is.
    '',
    '–',
  ],
  // How cartridges are written on their boxes.
  ...['1207RL', '0.30/1RL', '3RL', '06 08 10 12', 'RL RS', 'M M2 RM', 'F slope blade', 'ST MT LT XLT'],
]);

/** Each text with its path; what is said of counts and names is a function. */
function textsOf(texts: object, path = ''): Map<string, unknown> {
  return new Map(
    Object.entries(texts).flatMap(([name, value]) =>
      typeof value === 'object' && value !== null
        ? [...textsOf(value, `${path}${name}.`)]
        : [[`${path}${name}`, value] as const],
    ),
  );
}

/** Maps by code, where English leaves what the service says itself. */
const byCode =
  /^(permissions|problems|problemsInBrief|reasons|matchReasons|planReasons|planSentences|planLine\.methodNames|noticeRemarks|messageRemarks|refusedSince|alerts\.values)\./;

describe('the German texts', () => {
  const englishTexts = textsOf(english);
  const germanTexts = textsOf(german);

  it('say all that the English ones say, and each in the same shape', () => {
    const missing = [...englishTexts.keys()].filter((path) => !germanTexts.has(path));
    const more = [...germanTexts.keys()].filter((path) => !englishTexts.has(path) && !byCode.test(path));
    expect({ missing, more }).toEqual({ missing: [], more: [] });
    const others = [...englishTexts].filter(([path, text]) => typeof text !== typeof germanTexts.get(path));
    expect(others.map(([path]) => path)).toEqual([]);
  });

  it('are German: none is the English one, but for names, codes and words that both use', () => {
    const untranslated = [...englishTexts].filter(
      ([path, text]) => text === germanTexts.get(path) && !same.has(String(text)),
    );
    expect(untranslated.map(([path, text]) => `${path}: ${text}`)).toEqual([]);
  });

  it('address the reader as Sie, nowhere as du', () => {
    const familiar = [...germanTexts].filter(([, text]) =>
      /\b([Dd]u|[Dd]ein\w*|[Dd]ir|[Dd]ich)\b/.test(String(text)),
    );
    expect(familiar.map(([path]) => path)).toEqual([]);
  });
});
