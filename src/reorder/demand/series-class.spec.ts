import { describe, expect, it } from 'vitest';
import { seriesA, seriesB } from '../../../tests/support/reference-series.js';
import { classifySeries } from './series-class.js';

describe('the class of a series', () => {
  it('is that of the reference series, with their intervals and sizes (R 4.2.2)', () => {
    const a = classifySeries(seriesA);
    expect(a.class).toBe('lumpy');
    expect(a.adi).toBeCloseTo(3.2727, 4);
    expect(a.cv2).toBeCloseTo(0.87756, 5);
    const b = classifySeries(seriesB);
    expect(b.class).toBe('intermittent');
    expect(b.adi).toBeCloseTo(3.4286, 4);
    expect(b.cv2).toBeCloseTo(0.33849, 5);
  });

  it('is smooth or erratic when something is needed nearly always', () => {
    expect(classifySeries([3, 4, 3, 3]).class).toBe('smooth');
    expect(classifySeries([1, 9, 1, 1]).class).toBe('erratic');
  });

  it('does not vary with one size, and is none without demand', () => {
    expect(classifySeries([0, 0, 5])).toEqual({ class: 'intermittent', adi: 3, cv2: null });
    expect(classifySeries([0, 0])).toEqual({ class: 'no demand', adi: null, cv2: null });
    expect(classifySeries([])).toEqual({ class: 'no demand', adi: null, cv2: null });
  });
});
