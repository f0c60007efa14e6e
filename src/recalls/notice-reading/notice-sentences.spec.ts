import { describe, expect, it } from 'vitest';
import { classIn, sentencesOf } from './notice-sentences.js';

const text =
  'Dear customers. The ink may be contaminated with bacteria. There is a risk of infection!\nStop using it. Return the product to us. Thank you.';
const words = (found: { start: number; end: number }[]) =>
  found.map(({ start, end }) => text.slice(start, end));

describe('sentences of a notice', () => {
  it('say what the danger is and what to do', () => {
    const { risk, remedy } = sentencesOf(text);
    expect(words(risk)).toEqual([
      'The ink may be contaminated with bacteria.',
      'There is a risk of infection!',
    ]);
    expect(words(remedy)).toEqual(['Stop using it.', 'Return the product to us.']);
  });

  it('say the class', () => {
    expect(classIn('a Class II recall')).toEqual({ start: 2, end: 10 });
    expect(classIn('first class inks')).toBeNull();
  });
});
