/** How the walk goes from list to list; seen through the reading, which is what it is for. */
import { describe, expect, it } from 'vitest';
import { type KnownProduct, type NoticeReading, readNotice } from './notice-reading.js';

const today = '2026-11-26';
const read = (text: string, knownProducts: KnownProduct[] = []): NoticeReading =>
  readNotice(text, { today, knownProducts });
const codes = (text: string): string[] =>
  read(text).scope.items.flatMap(({ lots }) =>
    lots.map((term) =>
      term.kind === 'code'
        ? term.code
        : term.kind === 'code range'
          ? `${term.from}..${term.through}`
          : term.kind,
    ),
  );
const remarks = (text: string): string[] => read(text).remarks.map(({ code }) => code);

describe('a list of lots', () => {
  it.each<[string, string[]]>([
    ['Lots A and B', ['A', 'B']],
    ['LOT AB 12-34, CD 56-78', ['AB 12-34', 'CD 56-78']],
    ['Lots: 00112-10412', ['00112-10412', '00112..10412']],
    ['Lots between 0100 and 0200', ['0100..0200']],
    ['Lots 0100 bis 0200', ['0100..0200']],
    ['Lotes del 0100 al 0200', ['0100..0200']],
    ['Lots du 0100 au 0200', ['0100..0200']],
    ['Lot A12\nA13\nA14', ['A12', 'A13', 'A14']],
    ['Lots:\n\u2022 A12\n\u2022 A13', ['A12', 'A13']],
    ['The lots affected are 123 and 456.', ['123', '456']],
    ['Lot A123 of Brow Ink and lot B456 of Lip Ink', ['A123', 'B456']],
    ['Lots A123X of Brow Ink, 10 ml, NDC 0093-2090-58, and B456Y', ['A123X', 'B456Y']],
    ['Lot numbers from 00112 through 10412', ['00112..10412']],
    ['alle Chargen', ['all lots']],
    ['tous les lots', ['all lots']],
    ['All lots within expiry', ['all lots']],
    ['Lot EN 12, Lot AL 13', ['EN 12', '12', 'AL 13', '13'].filter((code) => code.length > 2)],
    ['Lot: LOT12345', ['LOT12345']],
    ['Lot 2027-10-31', ['2027-10-31']],
  ])('%s', (text, expected) => {
    expect(codes(text)).toEqual(expected);
  });

  it.each([
    'a lot of people',
    'The lot was found to be contaminated.',
    'We have parking lots and some offices.',
    'free of charge',
  ])('does not begin in %j', (text) => {
    expect(codes(text)).toEqual([]);
  });

  it('holds a date where lots stand, and says so', () => {
    expect(codes('Lot 12.03.15, 13.03.15')).toEqual(['12.03.15', '13.03.15']);
    expect(remarks('Lot 12.03.15')).toContain('code like a date');
  });

  it.each([
    ['Lots 00001 through 99999999', 'very wide range'],
    ['Lots 00001 through 99999999', 'range ends differ in length'],
    ['Lots 0009 to 0001', 'range turned'],
    ['Lots A12 to B14', 'range ends differ in letters'],
    ['Lots 07110002 to 09', 'range ends differ in length'],
    ['Lots 1000-2000', 'range or code'],
    ['Lot 12O45', 'code with O or I'],
    ['All lots except A1', 'exception'],
    ['Exp 03/04/15', 'ambiguous date'],
    ['Lot A12, exp 31/12/27; B12, exp 03/04/28', 'date order'],
    [`Lot ${'9'.repeat(70)}`, 'code too long'],
    ['Lot A123 10/2027', 'date without a word'],
    ['Lots A1, A2, exp 10/27, 12/27', 'several expiries'],
    ['Expiry: soon', 'date not read'],
    ['GTIN 9501101530004', 'number not a GTIN'],
    ['(01)09501101530004(10)A1', 'symbol not valid'],
    ['Lot A123, manufactured 10/2025', 'manufactured beside codes'],
  ])('is remarked: %s (%s)', (text, code) => {
    expect(remarks(text)).toContain(code);
  });

  it('keeps both ends of a doubtful range as lots too', () => {
    expect(codes('Lots A12 to B14')).toEqual(['A12..B14', 'A12', 'B14']);
    expect(codes('Lots 07110002 to 09')).toEqual(['07110002..09', '07110002..07110009', '07110002', '09']);
  });

  it('never leaves out what an exception names', () => {
    expect(codes('All lots except A12')).toEqual(['all lots']);
    expect(codes('Lots not affected: A12')).toEqual(['A12']);
  });

  it('closes no scope by dates that cannot be read', () => {
    expect(read('Lots A1, exp someday').scope.items[0]?.lots).toEqual([
      { kind: 'code', code: 'A1', useBy: null },
    ]);
  });
});

describe('expiries', () => {
  it.each<[string, (string | null)[]]>([
    ['Lots A1, A2, Exp 10/15; A3, Exp 11/15', ['2015-10-31', '2015-10-31', '2015-11-30']],
    ['Exp 10/15: A1, A2', []],
    ['Exp 10/15: lots A1, A2; Exp 11/15: lot B1', ['2015-10-31', '2015-10-31', '2015-11-30']],
    ['Lot A1 (Exp 10/15), A2 (Exp 11/15)', ['2015-10-31', '2015-11-30']],
    ['Lot: A1\nExp: 10/15\nLot: A2\nExp: 11/15', ['2015-10-31', '2015-11-30']],
    ['Lot No. / Exp. Date: A12 / 10/2015, A13 / 11/2015', ['2015-10-31', '2015-11-30']],
    ['Lots A1, A2; A3, Exp 11/15', [null, null, '2015-11-30']],
  ])('%s', (text, expected) => {
    const lots = read(text).scope.items.flatMap((item) => item.lots);
    expect(lots.flatMap((term) => (term.kind === 'code' ? [term.useBy?.through ?? null] : []))).toEqual(
      expected,
    );
  });
});

describe('an open-ended phrase', () => {
  it.each([
    'Lot A1, including but not limited to A2',
    'Lots A1, among others',
    'Chargen A1, unter anderem',
    'Lotes A1, entre otros',
    'Lots A1, etc.',
    'Lots A1 and other lots',
    'Lots such as A1',
    'This is not limited to the above.',
  ])('opens the scope: %s', (text) => {
    expect(read(text).scope.items.some(({ openEnded }) => openEnded)).toBe(true);
  });
});

describe('products', () => {
  const named = (text: string, known: KnownProduct[] = []) =>
    read(text, known).scope.items.map(({ makerName, productName, shade, gtins, productIds, lots }) => ({
      makerName,
      productName,
      shade,
      gtins,
      productIds,
      lots: lots.map((term) => (term.kind === 'code' ? term.code : term.kind)),
    }));
  const plain = { makerName: null, productName: null, shade: null, gtins: [], productIds: [] };

  it('have fields of their own', () => {
    expect(
      named(
        'Hersteller: Northlight GmbH\nProdukt: Brow Ink\nFarbton: Walnut\nCharge: A12\n\nProdukt: Lip Ink\nFarbton: Rose\nCharge: B12, B13',
      ),
    ).toEqual([
      { ...plain, makerName: 'Northlight GmbH', productName: 'Brow Ink', shade: 'Walnut', lots: ['A12'] },
      { ...plain, makerName: 'Northlight GmbH', productName: 'Lip Ink', shade: 'Rose', lots: ['B12', 'B13'] },
    ]);
  });

  it('stand before their lots, line by line', () => {
    expect(named('Brow Ink Walnut \u2013 lots A12, A13\nLip Ink Rose \u2013 lots B12')).toMatchObject([
      { productName: 'Brow Ink Walnut', lots: ['A12', 'A13'] },
      { productName: 'Lip Ink Rose', lots: ['B12'] },
    ]);
    expect(named('Affected lots:\nBrow Ink: A12, A13\nLip Ink: B12')).toMatchObject([
      { productName: 'Brow Ink', lots: ['A12', 'A13'] },
      { productName: 'Lip Ink', lots: ['B12'] },
    ]);
  });

  it('are not made of a heading', () => {
    expect(named('Urgent recall\nLot A12')).toEqual([{ ...plain, lots: ['A12'] }]);
  });

  it('share the lots that follow them', () => {
    expect(named('Products:\n- Brow Ink\n- Lip Ink\nLots: A12')).toMatchObject([
      { productName: 'Brow Ink', lots: ['A12'] },
      { productName: 'Lip Ink', lots: ['A12'] },
    ]);
    expect(named('Product: Brow Ink\nShades: Walnut, Sand\nLot: A12')).toMatchObject([
      { productName: 'Brow Ink', shade: 'Walnut', lots: ['A12'] },
      { productName: 'Brow Ink', shade: 'Sand', lots: ['A12'] },
    ]);
  });

  it('have the lots of their number', () => {
    const reading = read(
      'product_description: 1) Brow Ink, 10 ml; 2) Lip Ink\ncode_info: 1) Lot A12; 2) Lot B12',
    );
    expect(reading.scope.items).toMatchObject([
      { productName: 'Brow Ink', lots: [{ code: 'A12' }] },
      { productName: 'Lip Ink', lots: [{ code: 'B12' }] },
    ]);
    expect(reading.remarks).toEqual([]);
  });

  it('have numbers', () => {
    expect(named('EAN 9501101530003, Lot A12')).toEqual([
      { ...plain, gtins: ['09501101530003'], lots: ['A12'] },
    ]);
    expect(named('UPC 9-501101-530003 Lot A12')[0]?.gtins).toEqual(['09501101530003']);
    expect(named('(01)09501101530003(17)271200(10)A12\n(01)09501101530010(10)B12')).toEqual([
      { ...plain, gtins: ['09501101530003'], lots: ['A12'] },
      { ...plain, gtins: ['09501101530010'], lots: ['B12'] },
    ]);
  });

  const known: KnownProduct[] = [
    {
      productId: 'walnut',
      makerName: 'Northlight',
      productName: 'Brow Ink',
      shade: 'Walnut',
      gtins: ['09501101530003'],
    },
    {
      productId: 'sand',
      makerName: 'Northlight',
      productName: 'Brow Ink',
      shade: 'Sand',
      gtins: ['09501101530010'],
    },
    { productId: 'rose', makerName: 'Northlight', productName: 'Lip Ink', shade: 'Rose', gtins: [] },
  ];

  it('of the register are recognised where they stand', () => {
    expect(
      named('Northlight recalls Brow Ink Walnut, lots A12 and A13, and Lip Ink Rose, lot B12.', known),
    ).toMatchObject([
      {
        makerName: 'Northlight',
        productName: 'Brow Ink',
        shade: 'Walnut',
        productIds: ['walnut'],
        lots: ['A12', 'A13'],
      },
      { makerName: 'Northlight', productName: 'Lip Ink', shade: 'Rose', productIds: ['rose'], lots: ['B12'] },
    ]);
    expect(named('GTIN 09501101530010, Lot A12', known)[0]?.productIds).toEqual(['sand']);
    expect(named('Brow Ink Walnut, lot A12', known)[0]?.productIds).toEqual([]);
  });

  it('of the register are not chosen against the text', () => {
    expect(named('Maker: Northlight\nProduct: Brow Ink Nude\nLot: A12', known)[0]?.productIds).toEqual([]);
    expect(named('Maker: Northlight\nProduct: Brow Ink\nLot: A12', known)[0]?.productIds).toEqual([
      'walnut',
      'sand',
    ]);
    expect(
      read('Product: Lip Ink\nGTIN: 9501101530003\nLot: A12', known).remarks.map(({ code }) => code),
    ).toContain('names disagree');
  });
});

describe('the notice as a whole', () => {
  it('has its reference, day, class, danger and remedy', () => {
    const reading = read(
      'Recall number: NL-2026/07\nDate: 3 November 2026\nClassification: Class II\nReason: not sterile\nLot: A12\n\nStop using it.',
    );
    expect(reading).toMatchObject({
      reference: 'NL-2026/07',
      issuedOn: '2026-11-03',
      classification: 'Class II',
      risk: 'not sterile',
      remedy: 'Stop using it.',
    });
    expect(reading.parts.map(({ kind }) => kind)).toEqual([
      'reference',
      'issued on',
      'classification',
      'risk',
      'code',
      'remedy',
    ]);
  });
});
