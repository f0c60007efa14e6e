import { describe, expect, it } from 'vitest';
import { readNotice } from './notice-reading.js';

describe('a reading', () => {
  it('proposes the lots of a plain list', () => {
    const { scope } = readNotice('Lot # 467061, 487551 and 507521', { today: '2026-11-26' });
    expect(scope.items[0]?.lots).toEqual(
      ['467061', '487551', '507521'].map((code) => ({ kind: 'code', code, useBy: null })),
    );
  });
});
