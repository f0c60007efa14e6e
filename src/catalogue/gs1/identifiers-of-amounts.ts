import { type ApplicationIdentifierRow, exactly, upTo } from './application-identifier-format.js';

/**
 * Application identifiers 3900 to 3955: amounts, prices and discounts; the last digit places the decimal point.
 * Facts (not text) of the GS1 Barcode Syntax Dictionary, Apache-2.0, (c) 2020-2021 BWIPP project, 2020-2021
 * Zint Project, 2021-2025 GS1 AISBL [P].
 */
export const identifiersOfAmounts: readonly ApplicationIdentifierRow[] = [
  {
    first: '3900',
    last: '3909',
    title: 'AMOUNT',
    components: [upTo(15, 'N')],
    digitalLinkAttribute: true,
    requires: ['255', '8020'],
    excludes: ['390n', '391n', '394n', '8111'],
  },
  {
    first: '3910',
    last: '3919',
    title: 'AMOUNT',
    components: [exactly(3, 'N', 'currency-number'), upTo(15, 'N')],
    digitalLinkAttribute: true,
    requires: ['8020'],
    excludes: ['391n'],
  },
  {
    first: '3920',
    last: '3929',
    title: 'PRICE',
    components: [upTo(15, 'N')],
    digitalLinkAttribute: true,
    requires: ['01+30', '01+31nn', '01+32nn', '01+35nn', '01+36nn'],
    excludes: ['392n', '393n'],
  },
  {
    first: '3930',
    last: '3939',
    title: 'PRICE',
    components: [exactly(3, 'N', 'currency-number'), upTo(15, 'N')],
    digitalLinkAttribute: true,
    requires: ['30', '31nn', '32nn', '35nn', '36nn'],
    excludes: ['393n'],
  },
  {
    first: '3940',
    last: '3943',
    title: 'PRCNT OFF',
    components: [exactly(4, 'N')],
    digitalLinkAttribute: true,
    requires: ['255'],
    excludes: ['394n', '8111'],
  },
  {
    first: '3950',
    last: '3955',
    title: 'PRICE/UoM',
    components: [exactly(6, 'N')],
    digitalLinkAttribute: true,
    requires: ['30', '31nn', '32nn', '35nn', '36nn'],
    excludes: ['392n', '393n', '395n', '8005'],
  },
];
