import { describe, expect, it } from 'vitest';
import { writtenList } from './written-list.js';

describe('things as a sentence lists them', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
  ])('%j', (items, written) => {
    expect(writtenList(items, 'and')).toBe(written);
  });
});
