import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processorMilliseconds } from '../../../../tests/support/processor-time.js';
import { type Piece, piecesOf } from './marked-text.js';

const none = new Set<number>();
const shown = (pieces: readonly Piece[]) =>
  pieces.map((piece) =>
    piece.kind === 'marked' ? `[${piece.mark} ${piece.text}]` : piece.kind === 'plain' ? piece.text : '…',
  );

describe('a text with its marks', () => {
  it('is whole, each mark where it stands', () => {
    const text = 'Umber, lots A1 and B2.';
    const spans = [
      { start: 0, end: 5 },
      { start: 12, end: 14 },
      { start: 19, end: 21 },
    ];
    expect(shown(piecesOf(text, spans, none))).toEqual([
      '[0 Umber]',
      ', lots ',
      '[1 A1]',
      ' and ',
      '[2 B2]',
      '.',
    ]);
  });

  it('shows the shortest of marks that lie over each other, and goes on with the longer one', () => {
    const spans = [
      { start: 0, end: 9 },
      { start: 3, end: 6 },
    ];
    const pieces = piecesOf('aaabbbccc', spans, none);
    expect(shown(pieces)).toEqual(['[0 aaa]', '[1 bbb]', '[0 ccc]']);
    expect(pieces.map((piece) => piece.kind === 'marked' && piece.isFirst)).toEqual([true, true, false]);
  });

  it('leaves out what is long and holds nothing, until it is opened', () => {
    const text = `${'x'.repeat(1_000)}A1${'y'.repeat(100)}`;
    const span = { start: 1_000, end: 1_002 };
    const pieces = piecesOf(text, [span], none);
    expect(pieces[1]).toEqual({ kind: 'left out', start: 0, characters: 520 });
    expect(shown(piecesOf(text, [span], new Set([0]))).join('')).toBe(
      `${'x'.repeat(1_000)}[0 A1]${'y'.repeat(100)}`,
    );
  });

  it('cuts no character in two where it leaves out', () => {
    const text = '\u{1F9EA}'.repeat(500);
    for (const piece of piecesOf(`a${text}`, [], none)) {
      if (piece.kind === 'plain') expect(() => encodeURIComponent(piece.text)).not.toThrow();
    }
  });

  it('is quick with a megabyte of text and five thousand marks', async () => {
    const text = 'lot 07110002, '.repeat(75_000);
    const spans = Array.from({ length: 5_000 }, (_, index) => ({
      start: index * 14 + 4,
      end: index * 14 + 12,
    }));
    const work = () => expect(piecesOf(text, spans, none).length).toBeGreaterThan(10_000);
    expect(await processorMilliseconds(work)).toBeLessThan(10_000);
  });

  it('loses and doubles nothing, whatever lies over what', () => {
    const spans = fc.array(
      fc.tuple(fc.nat(2_000), fc.nat(80)).map(([start, length]) => ({ start, end: start + length })),
    );
    fc.assert(
      fc.property(fc.string({ maxLength: 2_000, unit: 'grapheme' }), spans, (text, marks) => {
        let place = 0;
        for (const piece of piecesOf(text, marks, none)) {
          if (piece.kind === 'left out') place += piece.characters;
          else {
            expect(piece.text).toBe(text.slice(place, place + piece.text.length));
            place += piece.text.length;
          }
        }
        expect(place).toBe(text.length);
      }),
    );
  });
});
