/**
 * How real notices write lots. The strings are the code information of the openFDA test data `ucm308307.json`
 * (repository FDA/openfda, CC0) [P], those marked "field reference" of open.fda.gov's enforcement reports [P]. Counts
 * were taken by eye from the strings, not by this program.
 */
import { describe, expect, it } from 'vitest';
import type { LotTerm } from '../../stock/lot-matching/lot-scope.js';
import { type NoticeReading, readNotice } from './notice-reading.js';

const today = '2012-06-13';
const read = (text: string): NoticeReading => readNotice(text, { today });
const written = (term: LotTerm): string => {
  const days = (span: { from: string | null; through: string | null } | null): string =>
    span === null ? '' : ` @${span.from}/${span.through}`;
  switch (term.kind) {
    case 'code':
      return term.code + days(term.useBy);
    case 'code range':
      return `${term.from}..${term.through}${days(term.useBy)}`;
    case 'use-by':
      return `use-by${days(term.useBy)}`;
    case 'manufactured':
      return `manufactured${days(term.manufactured)}`;
    case 'all lots':
      return 'all lots';
  }
};
const lots = (text: string): string[][] => read(text).scope.items.map((item) => item.lots.map(written));

describe('sample strings with the lots they must give', () => {
  it.each<[string, string[][]]>([
    [
      'Expiration dates from 01/19/2012 through 05/02/2012 and lot number from 00112 through 10412',
      [['00112..10412 @2012-01-19/2012-05-02']],
    ],
    ['1) - 5) Lot #030813', Array.from({ length: 5 }, () => ['030813'])],
    ['Lot # 439605-01, Lot # 439605-02', [['439605-01', '439605-02']]],
    ['Lot # 5604', [['5604']]],
    ['All products.', [['all lots']]],
    [
      'Boxes have manufacturing dated on 04-23-2012 through 5/21/2012.',
      [['manufactured @2012-04-23/2012-05-21']],
    ],
    ['Code 1742 Date produced 07 FEB 2012 Best Before 07 FEB 2014', [['1742 @2014-02-07/2014-02-07']]],
    [
      'Expiration Dates : 5/31/12, 6/7/12, 6/14/12, 6/21/12 & 6/28/12',
      [
        ['2012-05-31', '2012-06-07', '2012-06-14', '2012-06-21', '2012-06-28'].map(
          (day) => `use-by @${day}/${day}`,
        ),
      ],
    ],
    [
      'All tempeh product varieties and sizes with Best By dates between 7/11/12 and 10/25/12.',
      [['use-by @2012-07-11/2012-10-25']],
    ],
    ['Lot # TE1Y261, Exp 12/2013', [['TE1Y261 @2013-12-01/2013-12-31']]],
    [
      "Lot #'s: a) 90A024, 90A026, Exp 09/13; b) 90A028, Exp 09/13",
      [['90A024 @2013-09-01/2013-09-30', '90A026 @2013-09-01/2013-09-30'], ['90A028 @2013-09-01/2013-09-30']],
    ],
    [
      'Lot # 8D1082, Exp 01/13; 8D1151, Exp 03/13',
      [['8D1082 @2013-01-01/2013-01-31', '8D1151 @2013-03-01/2013-03-31']],
    ],
    [
      'Lot # 467061, 487551, 507521, 548051, 132171, 136571, 140181',
      [['467061', '487551', '507521', '548051', '132171', '136571', '140181']],
    ],
    [
      'Lot #: BJ3186, BJ3142, Exp 12/12.',
      [['BJ3186 @2012-12-01/2012-12-31', 'BJ3142 @2012-12-01/2012-12-31']],
    ],
    [
      'Lot #: LF00478C, LF00479C, Exp 10/12; LF00551C, LF00552C, Exp 01/13; LF01261C, Exp 03/14',
      [
        [
          'LF00478C @2012-10-01/2012-10-31',
          'LF00479C @2012-10-01/2012-10-31',
          'LF00551C @2013-01-01/2013-01-31',
          'LF00552C @2013-01-01/2013-01-31',
          'LF01261C @2014-03-01/2014-03-31',
        ],
      ],
    ],
    ['Unit: 006LT46267', [['006LT46267']]],
    [
      'Units: 042Y49061( 2 units), 042Y49062 (2 units), 042Y49063 (2 units), 042Y49064 (2 units)',
      [['042Y49061', '042Y49062', '042Y49063', '042Y49064']],
    ],
    ['Units: 0BMHX, 0BTP7, 0BTP6, 0BTPB', [['0BMHX', '0BTP7', '0BTP6', '0BTPB']]],
    [
      'Units: 110677OSCN, 110677ODCN, 110737OSCN 110737ODCN, 110761OSCN',
      [['110677OSCN', '110677ODCN', '110737OSCN', '110737ODCN', '110761OSCN']],
    ],
    [
      'Units: 2916514, 2838008, 1687108, 2852946, 2819826',
      [['2916514', '2838008', '1687108', '2852946', '2819826']],
    ],
    [
      '1) Units: 1697475; 1652549; 1677134;2) Units: 1683520; 1646887;3) Unit: 1683520',
      [['1697475', '1652549', '1677134'], ['1683520', '1646887'], ['1683520']],
    ],
    [
      'Lot # 214117, 216117, 217117, 227117, 227118, and 228117',
      [['214117', '216117', '217117', '227117', '227118', '228117']],
    ],
    [
      '1) Lot Number: 07110002 thru 07110009;2) Lot Number: 07110010 thru 07110016;3) Lot Number: 8110001 thru 8110008;4) Lot Number: 6110100',
      [['07110002..07110009'], ['07110010..07110016'], ['8110001..8110008'], ['6110100']],
    ],
    [
      'Lot Number 40041, exp. date February 2015 and Lot Number 40043, exp. date February 2015',
      [['40041 @2015-02-01/2015-02-28', '40043 @2015-02-01/2015-02-28']],
    ],
    [
      // Field reference.
      'Lot numbers and exp dates:  10108716  31-Mar-2013, \n10111510  30-Apr-2013, 10113801  31-May-2013',
      [
        [
          '10108716 @2013-03-31/2013-03-31',
          '10111510 @2013-04-30/2013-04-30',
          '10113801 @2013-05-31/2013-05-31',
        ],
      ],
    ],
    [
      // Field reference.
      'Lot #: 69403A, 69403B, Exp 10/15; 69404A, 69405A, Exp 11/15; 69767A, Exp 12/15',
      [
        [
          '69403A @2015-10-01/2015-10-31',
          '69403B @2015-10-01/2015-10-31',
          '69404A @2015-11-01/2015-11-30',
          '69405A @2015-11-01/2015-11-30',
          '69767A @2015-12-01/2015-12-31',
        ],
      ],
    ],
  ])('%s', (text, expected) => {
    expect(lots(text)).toEqual(expected);
  });

  it('never narrow an open-ended scope, and name each lot of it once', () => {
    const { scope } = read(
      '1) All lots manufactured and distributed between December 15, 2010 and November 15, 2011 including but not limited to lots: ' +
        '02031103, 09241101, 10251101, 06141101, 01201101, 01141102, 07211101, 06141101, and 01211102; ' +
        '2) All lots manufactured and distributed between December 09, 2010 and February 7, 2012 including but not limited to lots: ' +
        '11201205, 12060204, 12070210, 12070211, 11201201, and 11201202',
    );
    expect(scope.items.map(({ openEnded }) => openEnded)).toEqual([true, true]);
    // Nine are written, one of them twice; and the span of manufacture.
    expect(scope.items[0]?.lots).toHaveLength(8 + 1);
    expect(scope.items[1]?.lots).toHaveLength(6 + 1);
    expect(scope.items[0]?.lots[0]).toEqual({
      kind: 'manufactured',
      manufactured: { from: '2010-12-15', through: '2011-11-15' },
    });
  });

  it('keep inner spaces, and offer what they may part', () => {
    const { scope, remarks } = read(
      'a) Lot TFRS 130B 1503 KT34, Best By 5-25-2012; Lot TFRS 130B 1803 KT34, Best By 5-25-2012; b) Lot TFRS130B16, Best by 5-25-2012',
    );
    const codes = scope.items.map((item) => item.lots.map((term) => (term.kind === 'code' ? term.code : '')));
    expect(codes[0]).toEqual(expect.arrayContaining(['TFRS 130B 1503 KT34', 'TFRS 130B 1803 KT34']));
    expect(codes[1]).toEqual(['TFRS130B16']);
    expect(remarks.filter(({ code }) => code === 'code with spaces')).toHaveLength(2);
  });

  it('give each lot of a list without any commas, with its expiry', () => {
    const text =
      'code_info: 513602 00-001-BN 4/1/2014 513602 73-007-BB 10/1/2011 513604 84-008-BN 4/1/2012 60031-240 01-034-9D 5/1/2013 E0600-55 93-007-9D 9/1/2012 PS100U 96-018-9D 12/1/2012';
    const all = lots(text).flat();
    for (const lot of ['00-001-BN', '73-007-BB', '84-008-BN', '01-034-9D', '93-007-9D', '96-018-9D']) {
      expect(
        all.some((term) => term.startsWith(`${lot} @`)),
        lot,
      ).toBe(true);
    }
  });

  it('share the lots of a numbering that is not even, instead of losing some', () => {
    const { scope, remarks } = read(
      '1) Units: 1) 93885489, 00265489, and 00545489; 2) 00265489, 93385489, 93075489, and 92795489;2) Units: 00075489 and 00555489;3) Units: 93555489 and 00565490',
    );
    expect(remarks.some(({ code }) => code === 'numbering unclear')).toBe(true);
    // Ten different codes are written.
    for (const item of scope.items) expect(new Set(item.lots.map(written)).size).toBe(10);
  });

  it('take a bare field for lots without closing the scope', () => {
    const { scope } = read('50V08131');
    expect(scope.items).toMatchObject([{ openEnded: true, lots: [{ kind: 'code', code: '50V08131' }] }]);
  });

  it('leave the scope wide where no code stands', () => {
    const { scope, remarks } = read('Software version 3.2.0, 3.2.1 or 3.2.3');
    expect(scope.items).toMatchObject([{ lots: [] }]);
    expect(remarks.map(({ code }) => code)).toContain('nothing read');
  });

  it('leave the scope open where dates may lack their year', () => {
    const { scope, remarks } = read('1) Best if Used By Date May 17 to May 25');
    expect(scope.items[0]?.openEnded).toBe(true);
    expect(remarks.map(({ code }) => code)).toContain('date without a year');
  });
});
