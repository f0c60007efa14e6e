import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ExportOpening, exportFormat, logLine, readOpening } from './exported-log.js';

const opening: ExportOpening = {
  format: exportFormat,
  studioId: '0192b8f0-0000-7000-8000-000000000001',
  exportedAt: '2026-03-01T09:30:00.000Z',
  head: { sequence: 812, hash: 'a1'.repeat(32) },
};

describe('a line of an exported log', () => {
  it('ends where it ends and nowhere else, and holds what it was given', () => {
    const texts = fc.string({ unit: fc.constantFrom('a', '"', '\\', '\r', '\n', '\u2028', '\u2029') });
    fc.assert(
      fc.property(texts, (text) => {
        const line = logLine({ text });
        expect(JSON.parse(line)).toEqual({ text });
        expect(line.search(/[\r\n\u2028\u2029]/)).toBe(line.length - 1);
      }),
    );
  });
});

describe('the opening of an exported log', () => {
  it('is read as it was written', () => {
    expect(readOpening(JSON.stringify(opening))).toEqual(opening);
  });

  it.each([
    ['another format', { format: 'lotward-audit-log/2' }],
    ['no studio', { studioId: undefined }],
    ['no time', { exportedAt: 7 }],
    ['no head', { head: null }],
    ['half an entry', { head: { ...opening.head, sequence: 1.5 } }],
    ['no hash', { head: { ...opening.head, hash: 'short' } }],
  ])('is none with %s', (_, changes) => {
    expect(readOpening(JSON.stringify({ ...opening, ...changes }))).toBeUndefined();
  });

  it('is none in any other line', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (line) => {
        expect(readOpening(line)).toBeUndefined();
      }),
    );
  });
});
