import { describe, expect, it } from 'vitest';
import { completedEnd, hyphenedRange, rangeFacts } from './code-ranges.js';

describe('a range of codes', () => {
  it('counts what lies between its ends without listing it', () => {
    expect(rangeFacts('07110002', '07110009')).toMatchObject({ alike: true, count: 8, turned: false });
    expect(rangeFacts('00001', '99999999')).toMatchObject({ differentLength: true, count: 99_999_999 });
    expect(rangeFacts('0'.repeat(40), '9'.repeat(40)).count).toBeGreaterThan(1e39);
  });

  it('is put in order', () => {
    expect(rangeFacts('A9', 'A1')).toMatchObject({ from: 'A1', through: 'A9', turned: true });
  });

  it('tells ends that differ in more than one number', () => {
    expect(rangeFacts('A12', 'B14')).toMatchObject({ alike: false, differentPrefix: true, count: null });
    expect(rangeFacts('NP-2406A', 'NP-2407A')).toMatchObject({ alike: true, count: 2 });
    expect(rangeFacts('2406A', '2407F')).toMatchObject({ alike: false, differentPrefix: true });
  });

  it('may be one word with a hyphen, where both halves are built alike and rise', () => {
    expect(hyphenedRange('00112-10412')).toEqual(['00112', '10412']);
    expect(hyphenedRange('24A01-24A45')).toEqual(['24A01', '24A45']);
    for (const code of ['439605-01', '10412-00112', '97-005-BN', '12-34', 'ABC-DEF'])
      expect(hyphenedRange(code)).toBeNull();
  });

  it('may have a short end', () => {
    expect(completedEnd('07110002', '09')).toBe('07110009');
    expect(completedEnd('07110009', '02')).toBeNull();
    expect(completedEnd('A1', 'A2')).toBeNull();
  });
});
