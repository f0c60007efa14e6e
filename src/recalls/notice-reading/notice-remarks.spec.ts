import { describe, expect, it } from 'vitest';
import { maximumRemarksOfAKind, RemarkList, remarkSentence } from './notice-remarks.js';

describe('remarks', () => {
  it('say what was seen and what to do, in one sentence or two', () => {
    expect(remarkSentence('range turned', { seen: '9 to 1', readAs: '1 \u2013 9' })).toBe(
      'The range "9 to 1" ends before it begins. It was read as 1 \u2013 9. Check both ends.',
    );
  });

  it('show what stands in their span, shortened', () => {
    const list = new RemarkList(`x ${'long '.repeat(100)}`);
    list.add('exception', { start: 2, end: 500 });
    expect(list.remarks[0]?.facts.seen).toHaveLength(80);
  });

  it('are in the order of the text, and bounded', () => {
    const list = new RemarkList('abc');
    for (let place = 40; place > 0; place--) list.add('code of letters', { start: place, end: place + 1 });
    list.add('nothing read', null);
    const remarks = list.inOrder();
    expect(remarks).toHaveLength(maximumRemarksOfAKind + 1);
    expect(remarks[0]?.code).toBe('nothing read');
    expect(list.count('code of letters')).toBe(40);
  });
});
