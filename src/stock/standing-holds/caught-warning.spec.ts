import { describe, expect, it } from 'vitest';
import { matchReason } from '../lot-matching/match-reasons.js';
import { caughtWarning } from './caught-warning.js';

describe('what is said of a lot that is caught', () => {
  it('names the lot, why it is meant and what to do', () => {
    const reasons = [
      matchReason('product chosen'),
      matchReason('code equal', { named: '0711', recorded: '0711' }),
    ];
    expect(caughtWarning('0711', { grade: 'certain', reasons })).toBe(
      'The lot 0711 is recalled. A person chose this product as one that the notice means. The notice names the code 0711. It is on hold: put it aside and use none of it.',
    );
  });

  it('leaves what is only possible to a person, also without a code', () => {
    const reasons = [matchReason('code unreadable')];
    expect(caughtWarning(null, { grade: 'possible', reasons })).toBe(
      'This lot may be recalled. The code of this lot could not be read. It is on hold until a person decides: put it aside and use none of it.',
    );
  });
});
