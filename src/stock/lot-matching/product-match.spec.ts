import { describe, expect, it } from 'vitest';
import type { ProductFacts } from './lot-facts.js';
import type { ScopeItem } from './lot-scope.js';
import { matchProduct } from './product-match.js';

const onRecord: ProductFacts = {
  productId: 'p1',
  makerName: 'Nordlys Pigment',
  productName: 'Brow Colour',
  shade: 'Umber',
  gtins: ['09501101530003'],
};
const nothing: ScopeItem = {
  makerName: null,
  productName: null,
  shade: null,
  gtins: [],
  productIds: [],
  lots: [],
  openEnded: false,
};

function judged(item: Partial<ScopeItem>, product: Partial<ProductFacts> = {}): string {
  const { grade, reason } = matchProduct({ ...nothing, ...item }, { ...onRecord, ...product });
  return `${grade}: ${reason.code}`;
}

const maker = { makerName: 'Nordlys Pigment' };
const names = { ...maker, productName: 'Brow Colour' };
const other = { makerName: 'Fjordfarve', productName: 'Lip Tint' };

describe('a product against an item of a notice', () => {
  it.each([
    ['chosen by a person', { productIds: ['p1'] }, {}, 'certain: product chosen'],
    ['chosen, whatever the names say', { ...other, productIds: ['p0', 'p1'] }, {}, 'certain: product chosen'],
    ['not among those chosen', { ...names, productIds: ['p2'] }, {}, 'not: other product'],

    ['equal maker and name, no shade named', names, {}, 'certain: names equal'],
    ['and the shade', { ...names, shade: 'Umber' }, {}, 'certain: names equal'],
    [
      'in other letters',
      { makerName: 'NORDLYS PIGMENT A/S', productName: 'brow-colour', shade: 'ÜMBER' },
      {},
      'certain: names equal',
    ],
    ['the maker in the name', { productName: 'Nordlys Pigment Brow Colour' }, {}, 'certain: names equal'],
    ['the maker twice', { ...maker, productName: 'Nordlys Pigment Brow Colour' }, {}, 'certain: names equal'],
    ['the shade in the name', { ...maker, productName: 'Brow Colour Umber' }, {}, 'certain: names equal'],
    [
      'the shade twice',
      { ...maker, productName: 'Brow Colour Umber', shade: 'Umber' },
      {},
      'certain: names equal',
    ],
    [
      'the shade in the recorded name',
      { ...names, shade: 'Umber' },
      { productName: 'Brow Colour Umber', shade: null },
      'certain: names equal',
    ],

    ['another shade', { ...names, shade: 'Sand' }, {}, 'not: other shade'],
    ['another number of shade', { ...names, shade: 'Umber 2' }, { shade: 'Umber 3' }, 'not: other shade'],
    ['a slip in the shade', { ...names, shade: 'Umbre' }, {}, 'possible: shade similar'],
    ['part of the shade', { ...names, shade: 'Warm Umber' }, {}, 'possible: shade similar'],
    ['no shade on record', { ...names, shade: 'Umber' }, { shade: null }, 'possible: no shade on record'],

    ['a slip in the maker', { ...names, makerName: 'Nordlis Pigment' }, {}, 'possible: maker similar'],
    ['part of the maker', { ...names, makerName: 'Nordlys' }, {}, 'possible: maker similar'],
    ['a slip in the name', { ...names, productName: 'Brow Color' }, {}, 'possible: product name similar'],
    [
      'part of the name',
      { ...names, productName: 'Brow Colour Intense' },
      {},
      'possible: product name similar',
    ],
    ['only the name', { productName: 'Brow Colour' }, {}, 'possible: only product name'],
    ['only part of it', { productName: 'Colour' }, {}, 'possible: product name similar'],
    ['only another name', { productName: 'Lip Tint' }, {}, 'not: other product'],
    [
      'the name, of another maker',
      { ...names, makerName: 'Fjordfarve' },
      {},
      'possible: product name equal, other maker',
    ],
    [
      'part of the name, of another maker',
      { ...other, productName: 'Colour' },
      {},
      'slight: slight likeness',
    ],
    ['another name of the maker', { ...maker, productName: 'Lip Tint' }, {}, 'slight: slight likeness'],
    [
      'another name of nearly the maker',
      { makerName: 'Nordlis Pigment', productName: 'Lip Tint' },
      {},
      'slight: slight likeness',
    ],
    ['another name of another maker', other, {}, 'not: other product'],
    ['only the maker', maker, {}, 'possible: only maker'],
    ['only another maker', { makerName: 'Fjordfarve' }, {}, 'not: other product'],
    ['only the shade', { shade: 'Umber' }, {}, 'possible: only shade'],
    ['only another shade', { shade: 'Sand' }, {}, 'not: other shade'],
    ['only a shade, none on record', { shade: 'Umber' }, { shade: null }, 'slight: no shade on record'],
    ['nothing', {}, {}, 'possible: no product named'],

    ['the GTIN', { gtins: ['09501101530003'] }, {}, 'certain: gtin equal'],
    ['the GTIN in 13 digits', { gtins: ['9501101530003'] }, {}, 'certain: gtin equal'],
    ['the GTIN among others', { gtins: ['09501101530010', '09501101530003'] }, {}, 'certain: gtin equal'],
    ['the GTIN and the names', { ...names, gtins: ['09501101530003'] }, {}, 'certain: gtin equal'],
    [
      'the GTIN and part of the name',
      { ...names, productName: 'Colour', gtins: ['09501101530003'] },
      {},
      'certain: gtin equal',
    ],
    [
      'the GTIN, another shade',
      { ...names, shade: 'Sand', gtins: ['09501101530003'] },
      {},
      'possible: gtin equal, named otherwise',
    ],
    [
      'the GTIN, another name',
      { ...maker, productName: 'Lip Tint', gtins: ['09501101530003'] },
      {},
      'possible: gtin equal, named otherwise',
    ],
    [
      'the GTIN, another maker',
      { ...names, makerName: 'Fjordfarve', gtins: ['09501101530003'] },
      {},
      'possible: gtin equal, named otherwise',
    ],
    [
      'the names, another GTIN',
      { ...names, gtins: ['09501101530010'] },
      {},
      'possible: names equal, other gtin',
    ],
    [
      'the names, no GTIN on record',
      { ...names, gtins: ['09501101530010'] },
      { gtins: [] },
      'certain: names equal',
    ],
    [
      'part of the name, another GTIN',
      { ...names, productName: 'Colour', gtins: ['09501101530010'] },
      {},
      'possible: product name similar',
    ],
    [
      'another name of the maker, another GTIN',
      { ...maker, productName: 'Lip Tint', gtins: ['09501101530010'] },
      {},
      'not: other product',
    ],
    ['another GTIN', { gtins: ['09501101530010'] }, {}, 'slight: slight likeness'],
    ['a GTIN, none on record', { gtins: ['09501101530003'] }, { gtins: [] }, 'possible: no gtin on record'],
    ['the GTIN of another pack', { gtins: ['19501101530000'] }, {}, 'possible: gtin of another pack'],
    [
      'the names and the GTIN of another pack',
      { ...names, gtins: ['19501101530000'] },
      {},
      'certain: names equal',
    ],
    [
      'other names and the GTIN of another pack',
      { ...other, gtins: ['19501101530000'] },
      {},
      'possible: gtin of another pack',
    ],
  ] as const)('%s', (_, item, product, expected) => {
    expect(judged(item as Partial<ScopeItem>, product)).toBe(expected);
  });

  it('says what was named and what is on record', () => {
    const { reason } = matchProduct({ ...nothing, ...names, shade: 'Sand' }, onRecord);
    expect(reason).toEqual({
      code: 'other shade',
      message: 'The notice names the shade “Sand”; this is “Umber”.',
      facts: { named: 'Sand', recorded: 'Umber' },
    });
  });
});
