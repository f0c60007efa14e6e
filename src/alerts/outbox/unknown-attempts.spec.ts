import { describe, expect, it } from 'vitest';
import { unknownAttempts } from './unknown-attempts.js';

describe('attempts whose end is unknown', () => {
  it.each([
    ['none was begun', { begun: null, attempts: 0 }, 0],
    ['they were made before beginnings were counted', { begun: null, attempts: 3 }, 0],
    ['all came to an end', { begun: 2, attempts: 2 }, 0],
    ['two were cut off', { begun: 5, attempts: 3 }, 2],
  ])('are counted when %s', (_, row, expected) => {
    expect(unknownAttempts(row)).toBe(expected);
  });
});
