import { describe, expect, it } from 'vitest';
import { foldContact } from './contact-folding.js';

describe('a contact that is searched for', () => {
  it.each(['+43 660 1234567', '+43 (660) 123-45-67', '0043660/1234567', ' +43.660.1234567 '])(
    'is one telephone number however it is written: %s',
    (written) => {
      expect(foldContact(written)).toBe('+436601234567');
    },
  );

  it('keeps a number without country code apart from one with', () => {
    expect(foldContact('0660 1234567')).toBe('06601234567');
  });

  it('leaves a mail address as it is', () => {
    expect(foldContact(' anna.b-c@example.org ')).toBe('anna.b-c@example.org');
  });

  it('leaves signs without any digit as they are', () => {
    expect(foldContact('--')).toBe('--');
  });
});
