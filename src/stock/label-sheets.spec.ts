import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  labelPositions,
  labelSheetNames,
  labelSheets,
  labelsPerPage,
  leastModuleMillimetres,
  moduleMillimetres,
  quietZoneMillimetres,
} from './label-sheets.js';

const names = fc.constantFrom(...labelSheetNames);

describe('label sheets', () => {
  it('keep every label on its page, and none over another', () => {
    fc.assert(
      fc.property(names, fc.integer({ min: 1, max: 200 }), fc.nat(), (name, count, offset) => {
        const sheet = labelSheets[name];
        const startAt = 1 + (offset % labelsPerPage(sheet));
        const positions = labelPositions(sheet, count, startAt);
        expect(positions).toHaveLength(count);
        for (const [index, { page, leftMillimetres, topMillimetres }] of positions.entries()) {
          expect(page).toBe(Math.floor((startAt - 1 + index) / labelsPerPage(sheet)));
          expect(leftMillimetres).toBeGreaterThanOrEqual(0);
          expect(topMillimetres).toBeGreaterThanOrEqual(0);
          expect(leftMillimetres + sheet.labelWidthMillimetres).toBeLessThanOrEqual(
            sheet.pageWidthMillimetres,
          );
          expect(topMillimetres + sheet.labelHeightMillimetres).toBeLessThanOrEqual(
            sheet.pageHeightMillimetres + 1e-9,
          );
        }
        expect(sheet.columnStepMillimetres).toBeGreaterThanOrEqual(sheet.labelWidthMillimetres);
        expect(sheet.rowStepMillimetres).toBeGreaterThanOrEqual(sheet.labelHeightMillimetres);
        const places = positions.map(
          (place) => `${place.page} ${place.leftMillimetres} ${place.topMillimetres}`,
        );
        expect(new Set(places).size).toBe(count);
      }),
    );
  });

  it('go on where a sheet used in part ends, then on the next page', () => {
    const [first, second] = labelPositions(labelSheets['A4 sheet'], 2, 65);
    expect([first?.page, second?.page]).toEqual([0, 1]);
    expect(second).toMatchObject({ leftMillimetres: 4.75, topMillimetres: 10.7 });
  });

  it.each([0, 66, 1.5, -1])('have no position %s', (startAt) => {
    expect(() => labelPositions(labelSheets['A4 sheet'], 1, startAt)).toThrow(RangeError);
  });

  it('hold symbols of 16 to 36 modules with their quiet zone, in modules that can be read', () => {
    for (const name of labelSheetNames) {
      const sheet = labelSheets[name];
      for (let modules = 16; modules <= 36; modules += 2) {
        const size = moduleMillimetres(sheet, modules);
        expect(size).toBeGreaterThanOrEqual(leastModuleMillimetres);
        expect(modules * size + 2 * quietZoneMillimetres).toBeLessThanOrEqual(sheet.labelHeightMillimetres);
        expect(modules * size).toBeLessThan(sheet.labelWidthMillimetres / 2);
      }
    }
  });
});
