import { describe, expect, it } from 'vitest';
import { isScientific, readCount, readMillilitres, readPercent } from './written-number.js';

describe('a number in a file', () => {
  it('is whole where things are counted, without separators of thousands', () => {
    expect(readCount('12', 100)).toEqual({ count: 12 });
    expect(readCount('1.000', 10_000)).toEqual({
      fault: '1.000 may be read in two ways; write 1000 if that is meant',
    });
    expect(readCount('1,000', 10_000)).toMatchObject({ fault: expect.stringContaining('two ways') });
    for (const text of ['0', '101', '-1', '1.5', 'two', ''])
      expect(readCount(text, 100)).toHaveProperty('fault');
  });

  it('has a point or a comma before at most two digits where volumes are written', () => {
    expect(readMillilitres('10')).toEqual({ microlitres: 10_000 });
    expect(readMillilitres('7.5 ml')).toEqual({ microlitres: 7_500 });
    expect(readMillilitres('7,25mL')).toEqual({ microlitres: 7_250 });
    expect(readMillilitres('1.500')).toMatchObject({ fault: expect.stringContaining('1500 or 1.50') });
    expect(readMillilitres('ten')).toMatchObject({ fault: expect.stringContaining('millilitres') });
  });

  it('is at most a hundred where it is a share', () => {
    expect(readPercent('60 %')).toEqual({ percent: 60 });
    expect(readPercent('12,5%')).toEqual({ percent: 12.5 });
    expect(readPercent('101 %')).toHaveProperty('fault');
  });

  it('is known when a spreadsheet shortened it', () => {
    expect(isScientific('9.50600E+12')).toBe(true);
    expect(isScientific('9,506E+12')).toBe(true);
    expect(isScientific('HU-118')).toBe(false);
    expect(isScientific('9506000134352')).toBe(false);
  });
});
