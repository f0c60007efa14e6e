import { expect, it } from 'vitest';
import { lineSentence } from '../decision/explanation-words.js';
import { finishedLines } from './finished-lines.js';
import { uncomputedItem } from './uncomputed-item.js';

it('is a line that says nothing can be ordered, and leaves baskets to the others', () => {
  const { decision, ...shown } = uncomputedItem('2026-03-02');
  expect(shown).toMatchObject({ fanWithout: null, fanAfter: null, demand: { weeks: [] } });
  const { lines, baskets } = finishedLines([{ name: 'a', label: 'A', decision }], [], '2026-03-02', true);
  expect(lines).toMatchObject([{ decision: 'cannot be ordered', packs: 0, order: null, offerId: null }]);
  expect(baskets).toEqual([]);
  const sentence = lineSentence(decision, { unit: 'pieces', currency: 'EUR' });
  expect(sentence).not.toMatch(/undefined|NaN/);
});
