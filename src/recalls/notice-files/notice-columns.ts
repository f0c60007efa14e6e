/**
 * The columns of a table of notices, in the order of its template; a file may have them in any order. A row is a product
 * with a lot, a range of lots, or days; rows with one reference are one notice.
 */
export const noticeColumns = [
  { name: 'reference', needed: false },
  { name: 'issuer', needed: false },
  { name: 'issued on', needed: false },
  { name: 'classification', needed: false },
  { name: 'maker', needed: false },
  { name: 'product', needed: false },
  { name: 'shade', needed: false },
  { name: 'gtin', needed: false },
  { name: 'lot', needed: false },
  { name: 'lot from', needed: false },
  { name: 'lot through', needed: false },
  { name: 'use by from', needed: false },
  { name: 'use by through', needed: false },
  { name: 'manufactured from', needed: false },
  { name: 'manufactured through', needed: false },
  { name: 'all lots', needed: false },
  { name: 'others too', needed: false },
  { name: 'risk', needed: false, textOf: 10_000 },
  { name: 'remedy', needed: false, textOf: 10_000 },
  { name: 'notice text', needed: false, textOf: 1_000_000 },
] as const;

export type NoticeColumn = (typeof noticeColumns)[number]['name'];

export type NoticeCells = Partial<Record<NoticeColumn, string>>;

/** Rows that show what may stand where: two lots of one notice, a range with use-by dates, all lots. */
export const noticeExample: readonly NoticeCells[] = [
  {
    reference: 'HR-2026-07',
    issuer: 'Halden Pigments',
    'issued on': '2026-07-03',
    maker: 'Halden Pigments',
    product: 'Brow pigment',
    shade: 'Warm umber',
    gtin: '9501101530003',
    lot: 'HU-118',
    risk: 'Bacteria were found in unopened bottles.',
    remedy: 'Stop using it and send it back.',
  },
  {
    reference: 'HR-2026-07',
    maker: 'Halden Pigments',
    product: 'Brow pigment',
    shade: 'Warm umber',
    lot: 'HU-119',
  },
  {
    reference: 'HR-2026-08',
    maker: 'Halden Pigments',
    product: 'Lip pigment',
    'lot from': '07110002',
    'lot through': '07110009',
    'use by from': '2027-01',
    'use by through': '2027-06',
    'others too': 'yes',
  },
  { reference: 'HR-2026-09', maker: 'Nordlicht Needles', product: 'Cartridge 1207RL', 'all lots': 'yes' },
];
