import { describe, expect, it } from 'vitest';
import { type GoodsToSend, refusalToSend } from './transfer-admission.js';

function goods(given: Partial<GoodsToSend> = {}): GoodsToSend {
  return {
    form: 'bottle',
    state: 'opened',
    lifeStatus: 'usable',
    holdKinds: [],
    isBlend: false,
    pieces: 1,
    onTrays: { lines: 0, pieces: 0 },
    ...given,
  };
}

function box(given: Partial<GoodsToSend> = {}): GoodsToSend {
  return goods({ form: 'box', state: 'sealed', pieces: 20, ...given });
}

describe('sending goods to another studio', () => {
  it('is allowed for what may be used, sealed or opened, also when no date is known', () => {
    expect(refusalToSend(goods(), 1)).toBeNull();
    expect(refusalToSend(goods({ state: 'sealed', lifeStatus: 'no date known' }), 1)).toBeNull();
    expect(refusalToSend(box(), 20)).toBeNull();
  });

  it.each([
    [{ holdKinds: ['recall'] as const }, 'recalled'],
    [{ holdKinds: ['quarantine'] as const }, 'on hold'],
    [{ holdKinds: ['compliance'] as const }, 'on hold'],
    [{ lifeStatus: 'expired' as const }, 'past its use-by date'],
    [{ lifeStatus: 'open too long' as const }, 'open too long'],
    [{ isBlend: true }, 'house blend'],
    [{ state: 'discarded' as const }, 'call back the transfer'],
    [{ state: 'finished' as const }, 'recorded as finished'],
    [{ onTrays: { lines: 1, pieces: 1 } }, 'lies on a tray'],
  ])('is refused of what is %j, with what to do', (given, words) => {
    expect(refusalToSend(goods(given), 1)).toContain(words);
  });

  it('is allowed for expired stock that is kept for practice, but never for what is recalled', () => {
    const practice = goods({ state: 'practice only', lifeStatus: 'expired' });
    expect(refusalToSend(practice, 1)).toBeNull();
    expect(refusalToSend({ ...practice, holdKinds: ['recall'] }, 1)).toContain('recalled');
  });

  it('leaves pieces that lie on trays where they are', () => {
    const onTrays = { lines: 2, pieces: 3 };
    expect(refusalToSend(box({ onTrays }), 17)).toBeNull();
    expect(refusalToSend(box({ onTrays }), 18)).toContain('At most 17');
    expect(refusalToSend(box(), 21)).toContain('Count the box first');
    expect(refusalToSend(box({ pieces: 0 }), 0)).toContain('nothing is left');
  });
});
