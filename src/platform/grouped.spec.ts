import { describe, expect, it } from 'vitest';
import { grouped } from './grouped.js';

describe('rows by what they belong to', () => {
  it('keep their order', () => {
    expect([...grouped(['b1', 'a1', 'b2'], (row) => row.charAt(0))]).toEqual([
      ['b', ['b1', 'b2']],
      ['a', ['a1']],
    ]);
  });
});
