import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drillNoticeText, readDrillNotice } from './drill-notice.js';

describe('the text of a drill', () => {
  it('says which lot, and how it was drawn, and is read back the same', () => {
    const line = fc.string({ maxLength: 60 }).map((text) => text.replace(/[\n\r\u2028\u2029]/g, ' '));
    const draw = fc.record({
      seed: fc.uuid(),
      lots: fc.nat({ max: 100_000 }),
      years: fc.integer({ min: 1, max: 20 }),
    });
    fc.assert(
      fc.property(fc.uuid(), line, fc.option(draw), (lotId, lot, drawn) => {
        const notice = { lotId, lot, draw: drawn };
        expect(readDrillNotice(drillNoticeText(notice))).toEqual(notice);
      }),
    );
  });

  it('is told from any other notice', () => {
    expect(readDrillNotice('Recall of lot L1. Lot id: none')).toBeNull();
  });
});
