import { describe, expect, it } from 'vitest';
import { noteOfHold } from './note-of-hold.js';

describe('what is said on a hold of a recall', () => {
  it('names the recall and the number it is filed under', () => {
    expect(noteOfHold('Warm umber', 'HCW-2026-07')).toBe('Warm umber (HCW-2026-07)');
  });

  it('says the number once', () => {
    expect(noteOfHold('Recall HCW-2026-07', 'HCW-2026-07')).toBe('Recall HCW-2026-07');
    expect(noteOfHold('Warm umber', null)).toBe('Warm umber');
  });

  it('is never longer than a note may be', () => {
    const note = noteOfHold('x'.repeat(400), 'y'.repeat(150));
    expect(note).toHaveLength(500);
    expect(note.endsWith('…')).toBe(true);
  });
});
