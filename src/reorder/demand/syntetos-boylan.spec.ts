import { describe, expect, it } from 'vitest';
import { seriesA, seriesB } from '../../../tests/support/reference-series.js';
import { syntetosBoylanLevels } from './syntetos-boylan.js';

describe('the forecast of Syntetos and Boylan', () => {
  it('is that of R 4.2.2 with alpha 0.1', () => {
    expect(syntetosBoylanLevels(seriesA, 0.1).at(-1)).toBeCloseTo(0.9353666953, 10);
    expect(syntetosBoylanLevels(seriesB, 0.1).at(-1)).toBeCloseTo(1.3627880221, 10);
  });

  it('is 0 without demand', () => {
    expect([...syntetosBoylanLevels([0, 0, 0], 0.1)]).toEqual([0, 0, 0, 0]);
  });
});
