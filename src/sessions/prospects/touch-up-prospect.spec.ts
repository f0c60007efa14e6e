import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lastUsableDay } from '../../stock/opened-life.js';
import { mixAtTouchUp, touchUpWindow } from '../touch-up-window.js';
import { type OwedMix, type PigmentHere, touchUpsAtRisk } from './touch-up-prospect.js';

const timeZone = 'Europe/Berlin';
const today = '2026-06-15';

function visit(facts: Partial<OwedMix> = {}): OwedMix {
  return {
    sessionId: 'first',
    window: touchUpWindow('2026-06-01', { fromDays: 30, toDays: 40 }),
    plannedOn: null,
    pigments: [{ lotId: 'umber A', productId: 'umber' }],
    ...facts,
  };
}

function bottle(facts: Partial<PigmentHere> = {}): PigmentHere {
  return {
    lotId: 'umber A',
    productId: 'umber',
    held: false,
    practice: false,
    finished: false,
    end: { lastDay: '2027-01-31', lastInstant: null, boundBy: 'use-by' },
    ...facts,
  };
}

const until = (lastDay: string, boundBy: 'use-by' | 'opened life' = 'use-by') => ({
  end: { lastDay, lastInstant: null, boundBy },
});
const judge = (owed: OwedMix, here: PigmentHere[]) => touchUpsAtRisk([owed], here, today, timeZone);

describe('the mix of a touch-up to come', () => {
  it('lasts while something of each lot may be used through the end of the window', () => {
    expect(judge(visit(), [bottle()])).toEqual([]);
    expect(judge(visit(), [bottle(until('2026-07-11'))])).toEqual([]);
    expect(judge(visit(), [bottle(until('2026-07-10'))])).toEqual([
      {
        sessionId: 'first',
        opensOn: '2026-07-01',
        closesOn: '2026-07-11',
        likelyOn: '2026-07-11',
        severity: 'warning',
        pigments: [
          {
            lotId: 'umber A',
            productId: 'umber',
            because: 'expired',
            lastDay: '2026-07-10',
            anotherLotIsHere: false,
          },
        ],
      },
    ]);
  });

  it('is judged for the day that is planned, where there is one', () => {
    const planned = visit({ plannedOn: '2026-07-02' });
    expect(judge(planned, [bottle(until('2026-07-02'))])).toEqual([]);
    expect(judge(planned, [bottle(until('2026-07-01', 'opened life'))])).toMatchObject([
      { likelyOn: '2026-07-02', pigments: [{ because: 'open too long' }] },
    ]);
  });

  it('has to last the whole day, also when its life is counted in hours', () => {
    const end = {
      lastDay: '2026-07-11',
      lastInstant: '2026-07-11T20:00:00Z',
      boundBy: 'opened life',
    } as const;
    expect(judge(visit(), [bottle({ end })])).toHaveLength(1);
  });

  it.each([
    ['held', { held: true }, 'held'],
    ['kept for practice', { practice: true }, 'practice only'],
    ['empty', { finished: true }, 'finished'],
  ] as const)('is at risk when its lot is %s', (_, facts, because) => {
    expect(judge(visit(), [bottle(facts)])).toMatchObject([{ pigments: [{ because }] }]);
  });

  it('is at risk when nothing of its lot is here any more', () => {
    expect(judge(visit(), [])).toMatchObject([{ pigments: [{ because: 'finished', lastDay: null }] }]);
  });

  it('lasts when another bottle of the same lot does', () => {
    expect(judge(visit(), [bottle(until('2026-06-20', 'opened life')), bottle()])).toEqual([]);
  });

  it('is a notice when another lot of the same product is here, and names first what has none', () => {
    const other = bottle({ lotId: 'umber B' });
    expect(judge(visit(), [bottle({ held: true }), other])).toMatchObject([
      { severity: 'notice', pigments: [{ anotherLotIsHere: true }] },
    ]);
    const two = [...visit().pigments, { lotId: 'sand A', productId: 'sand' }];
    expect(judge(visit({ pigments: two }), [bottle({ held: true }), other])).toMatchObject([
      { severity: 'warning', pigments: [{ productId: 'sand' }, { productId: 'umber' }] },
    ]);
  });

  it('is owed until its last day is over', () => {
    expect(touchUpsAtRisk([visit()], [], '2026-07-11', timeZone)).toHaveLength(1);
    expect(touchUpsAtRisk([visit()], [], '2026-07-12', timeZone)).toEqual([]);
  });

  it('is judged as a preparation of that visit would judge it for that day', () => {
    const anyBottle = fc.record({
      useByLastDay: fc.option(fc.constantFrom('2026-07-01', '2026-07-10', '2026-07-11', '2026-08-01')),
      openedAt: fc.option(fc.constantFrom('2026-06-05T10:00:00Z', '2026-07-10T21:59:00Z')),
      openedLife: fc.option(fc.constantFrom('P36D', 'P35D', 'PT24H', 'PT25H')),
      held: fc.boolean(),
      practice: fc.boolean(),
      finished: fc.boolean(),
    });
    fc.assert(
      fc.property(anyBottle, (given) => {
        const life = { ...given, assumedOpenedLife: null, usableThrough: null };
        const part = { ...life, lotId: 'umber A', containerId: null, label: 'Umber' };
        const window = { opensOn: '2026-07-11', closesOn: '2026-07-11' };
        const [prepared] = mixAtTouchUp([part], window, timeZone);
        const { held, practice, finished } = given;
        const here = bottle({ held, practice, finished, end: lastUsableDay({ ...life, timeZone }) });
        const [atRisk] = judge(visit(), [here]);
        expect(atRisk === undefined).toBe(prepared?.usableAtEnd !== 'no');
        if (atRisk !== undefined) {
          expect(prepared?.whyNot.map(({ obstacle }) => obstacle)).toContain(atRisk.pigments[0]?.because);
        }
      }),
    );
  });
});
