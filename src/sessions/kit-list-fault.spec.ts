import { describe, expect, it } from 'vitest';
import { kitListFault } from './kit-list-fault.js';

const product = (productId: string) => ({ productId, configuration: null });
const configuration = (key: string) => ({ productId: null, configuration: key });

describe('a kit list', () => {
  it('names a product or a configuration on each line, or has no line', () => {
    expect(kitListFault([])).toBeNull();
    expect(kitListFault([product('umber'), configuration('7 liner'), configuration('9 magnum')])).toBeNull();
  });

  it('has no line that names nothing, or both', () => {
    expect(kitListFault([product('umber'), { productId: null, configuration: null }])).toEqual({
      index: 1,
      message: 'Line 2 names neither a product nor a configuration. Name exactly one.',
    });
    expect(kitListFault([{ productId: 'umber', configuration: '7 liner' }])).toEqual({
      index: 0,
      message: 'Line 1 names both a product and a configuration. Name exactly one.',
    });
  });

  it.each([
    [[product('umber'), configuration('7 liner'), product('umber')], 2],
    [[configuration('7 liner'), configuration('7 liner')], 1],
  ])('names nothing twice', (lines, index) => {
    expect(kitListFault(lines)).toMatchObject({
      index,
      message: expect.stringContaining(`Line ${index + 1} `),
    });
  });
});
