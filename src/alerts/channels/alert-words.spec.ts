import { describe, expect, it } from 'vitest';
import { type AlertAnnouncement, alertWords } from './alert-words.js';

const lowStock: AlertAnnouncement = {
  event: 'opened',
  kind: 'low stock',
  severity: 'warning',
  facts: {
    product: 'Brow Umber',
    shade: '03',
    maker: 'Example Maker',
    usablePieces: 0,
    minimumPieces: 3,
  },
};

describe('alertWords', () => {
  it('says what it is, of what product, and the facts in their order', () => {
    expect(alertWords(lowStock)).toBe(
      'Low stock (warning): Brow Umber 03 by Example Maker, usable pieces 0, minimum pieces 3',
    );
  });

  it('says that it is over', () => {
    expect(alertWords({ ...lowStock, event: 'closed', facts: {} })).toBe('Low stock is over');
  });

  it('says what became of it since', () => {
    expect(alertWords({ ...lowStock, event: 'handed on', facts: {} })).toBe('Low stock (warning, handed on)');
  });

  it('leaves out ids and what is unknown, and says a yes by its name alone', () => {
    const facts = {
      productId: '0197',
      productIds: ['0197'],
      lotCode: null,
      useBy: '2027-06-30',
      held: true,
      practice: false,
      codes: ['A1', 'B2'],
    };
    expect(alertWords({ ...lowStock, facts })).toBe(
      'Low stock (warning): use by 2027-06-30, held, codes A1 and B2',
    );
  });

  it('keeps to one line whatever a name holds', () => {
    const facts = { product: 'Umber\n2026-01-01 ERROR forged', lotCode: 'x'.repeat(500) };
    const line = alertWords({ ...lowStock, facts });
    expect(line).not.toMatch(/\p{Cc}/u);
    expect(line).toContain('Umber 2026-01-01 ERROR forged');
    expect(line.length).toBeLessThan(220);
  });
});
