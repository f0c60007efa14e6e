import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processorMilliseconds } from '../../../tests/support/processor-time.js';
import { softeningWords, unsoftened } from './softening-words.js';

describe('softening words', () => {
  // [P] Regulation (EU) 2023/988, Art. 36(2)(c), names these, in the German wording that was read; the English ones [S].
  it.each([
    'voluntary',
    'precautionary',
    'discretionary',
    'in rare situations',
    'in specific situations',
    'No accidents have been reported.',
    'freiwillig',
    'vorsorglich',
    'im Ermessen',
    'in seltenen Situationen',
    'in spezifischen Situationen',
    'Es wurden keine Unfälle gemeldet.',
  ])('finds what the law names: %s', (word) => {
    expect(softeningWords(word).length).toBeGreaterThan(0);
    expect(unsoftened(word).text).not.toContain(word);
  });

  it.each([
    ['Halden is voluntarily recalling lot A1.', 'Halden is recalling lot A1.'],
    ['In rare cases, the pigment may hold germs.', 'The pigment may hold germs.'],
    ['As a precaution, do not use it.', 'Do not use it.'],
    [
      'It may burn. No injuries or illnesses have been reported to date. Stop using it.',
      'It may burn. Stop using it.',
    ],
    ['No injuries have been reported, but the ink contains Pseudomonas.', 'The ink contains Pseudomonas.'],
    ['Es sind keine Unfälle bekannt; die Tinte enthält Keime.', 'Die Tinte enthält Keime.'],
    ['Das Pigment kann in seltenen Fällen brennen.', 'Das Pigment kann brennen.'],
    ['Der freiwillige Rückruf betrifft Charge A1.', 'Der Rückruf betrifft Charge A1.'],
    ['Bisher sind keine Verletzungen bekannt. Nicht verwenden.', 'Nicht verwenden.'],
    ['It may cause infections.', 'It may cause infections.'],
    ['Lot 12.03.15 of 1.5 ml is meant.', 'Lot 12.03.15 of 1.5 ml is meant.'],
  ])('leaves them out: %s', (given, hard) => {
    expect(unsoftened(given).text).toBe(hard);
  });

  it('says what it left out, and leaves nothing where there was nothing else', () => {
    expect(unsoftened('Voluntary, precautionary.')).toEqual({
      text: '',
      leftOut: ['Voluntary', 'precautionary'],
    });
  });

  it('leaves none in any text made of them, and nothing else out', () => {
    const words = fc.constantFrom(
      'voluntary',
      'in rare cases',
      'the pigment',
      'may burn.',
      'vorsorglich',
      'Charge A1',
      ',',
      'As a precaution',
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 12 }), (parts) => {
        const { text } = unsoftened(parts.join(' '));
        expect(softeningWords(text)).toEqual([]);
        const count = (within: string, word: string) => within.toLowerCase().split(word.toLowerCase()).length;
        expect(count(text, 'Charge A1')).toBe(count(parts.join(' '), 'Charge A1'));
        expect(count(text, 'may burn')).toBe(count(parts.join(' '), 'may burn'));
      }),
    );
  });

  it('reads the longest risk a recall may hold at once', async () => {
    for (const part of ['in rare ', 'no injuries ', 'a. A', ',;', 'voluntary ']) {
      const work = () => unsoftened(part.repeat(5_000 / part.length));
      expect(await processorMilliseconds(work)).toBeLessThan(10_000);
    }
  });
});
