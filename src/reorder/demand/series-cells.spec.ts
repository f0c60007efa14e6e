import { describe, expect, it } from 'vitest';
import { seriesOfCells } from './series-cells.js';

const line = (text: string) => seriesOfCells(text.split(','), 'Line 3');

describe('a series in cells', () => {
  it('is read with or without a name', () => {
    expect(line('Warm brown, 0,2, 1.0')).toEqual([0, 2, 1]);
    expect(line('0,2,1')).toEqual([0, 2, 1]);
  });

  it('leaves out nothing at its beginning and end', () => {
    expect(line('shade,,NA,0,3,,')).toEqual([0, 3]);
    expect(line(',,4,0')).toEqual([4, 0]);
  });

  it('is a heading without any number', () => {
    expect(line('name,January,February')).toBeNull();
    expect(line('')).toBeNull();
  });

  it('says which cell cannot be read', () => {
    expect(() => line('shade,1,,3')).toThrow('Line 3: cell 3 is empty between two counts');
    expect(() => line('shade,1,-3')).toThrow('Line 3: cell 3 is "-3". Allowed are whole numbers');
    expect(() => line('1,1.5')).toThrow('cell 2 is "1.5"');
    expect(() => line('1,1e9')).toThrow('cell 2 is "1e9"');
    expect(() => line('1,999999999')).toThrow('from 0 to 100000');
    expect(() => seriesOfCells(new Array<string>(1_001).fill('1'), 'Line 1')).toThrow('Allowed are 1000');
  });
});
