/** The columns of a file of opening stock, in the order of its template. A file may have them in any order. */
export const openingStockColumns = [
  { name: 'maker', needed: true },
  { name: 'product', needed: true },
  { name: 'shade', needed: false },
  { name: 'kind', needed: false },
  { name: 'role', needed: false },
  { name: 'bottle ml', needed: false },
  { name: 'opened life', needed: false },
  { name: 'notation', needed: false },
  { name: 'gtin', needed: false },
  { name: 'lot', needed: true },
  { name: 'batch', needed: false },
  { name: 'use by', needed: true },
  { name: 'manufactured on', needed: false },
  { name: 'quantity', needed: true },
  { name: 'pieces per box', needed: false },
  { name: 'opened on', needed: false },
  { name: 'remaining', needed: false },
  { name: 'place', needed: false },
  { name: 'owner', needed: false },
  { name: 'same code', needed: false },
] as const;

export type OpeningStockColumn = (typeof openingStockColumns)[number]['name'];

/** Written instead of a code or a date that is not there to be read. */
export const nonePrinted = 'none printed';
export const unreadable = 'unreadable';

/** Rows that show what may stand where: a sealed pigment, an opened one, cartridges in boxes, a gel without a date. */
export const openingStockExample: readonly Partial<Record<OpeningStockColumn, string>>[] = [
  {
    maker: 'Halden Colour Works',
    product: 'Brow pigment',
    shade: 'Warm umber',
    kind: 'pigment',
    role: 'colour',
    'bottle ml': '10',
    'opened life': 'P12M',
    gtin: '9506000134352',
    lot: 'HU-118',
    'use by': '2027-06',
    quantity: '2',
    place: 'Shelf',
  },
  {
    maker: 'Halden Colour Works',
    product: 'Brow pigment',
    shade: 'Warm umber',
    lot: 'HU-101',
    'use by': '2027-01-31',
    quantity: '1',
    'opened on': '2026-03-12',
    remaining: '60 %',
    place: 'Shelf',
  },
  {
    maker: 'Corvin Needleworks',
    product: 'Liner',
    kind: 'cartridge',
    notation: '1003RL',
    lot: 'CL-2041',
    'use by': '2028-12-31',
    quantity: '3',
    'pieces per box': '20',
    place: 'Shelf',
  },
  {
    maker: 'Corvin Needleworks',
    product: 'Barrier film',
    kind: 'consumable',
    lot: nonePrinted,
    'use by': nonePrinted,
    quantity: '50',
    place: 'Shelf',
  },
];
