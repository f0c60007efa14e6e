import { describe, expect, it } from 'vitest';
import { lateAmount } from './late-amount.js';

const umber = { productName: 'Umber', stockForm: 'container', dropMicrolitres: 40 } as const;
const liner = { productName: 'Liner', stockForm: 'pieces', dropMicrolitres: null } as const;

describe('the amount of a use told afterwards', () => {
  it('is one piece unless more are told', () => {
    expect(lateAmount({}, liner)).toEqual({ pieces: 1, drops: null, microlitres: 0 });
    expect(lateAmount({ pieces: 3 }, liner)).toEqual({ pieces: 3, drops: null, microlitres: 0 });
  });

  it('is a volume, or is reckoned from drops, or is not known', () => {
    expect(lateAmount({ drops: 3 }, umber)).toEqual({ pieces: 0, drops: 3, microlitres: 120 });
    expect(lateAmount({ microlitres: 70 }, umber)).toEqual({ pieces: 0, drops: null, microlitres: 70 });
    expect(lateAmount({ drops: 3, microlitres: 70 }, umber)).toEqual({
      pieces: 0,
      drops: 3,
      microlitres: 70,
    });
    expect(lateAmount({}, umber)).toEqual({ pieces: 0, drops: null, microlitres: 0 });
  });

  it('is not told in a unit the product is not counted in', () => {
    expect(lateAmount({ drops: 1 }, liner)).toMatchObject({ fault: { field: null } });
    expect(lateAmount({ microlitres: 1 }, liner)).toMatchObject({ fault: { field: null } });
    expect(lateAmount({ pieces: 1 }, umber)).toMatchObject({ fault: { field: 'pieces' } });
  });
});
