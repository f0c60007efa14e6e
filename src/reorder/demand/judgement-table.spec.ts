import { describe, expect, it } from 'vitest';
import { judgementTable } from './judgement-table.js';

describe('the table of a comparison', () => {
  it('has the mixture first, then the single methods from the best on, and the classes there are', () => {
    const judged = (name: string, all: number) => ({
      name,
      losses: new Map([['all', all] as const, ['lumpy', all] as const]),
      enough: 0.95,
    });
    expect(
      judgementTable({
        series: new Map([['all', 12] as const, ['lumpy', 12] as const]),
        tooShort: 0,
        forecasts: [
          judged('Croston, Poisson', 0.7),
          judged('mixture, each alone', 0.5),
          judged('Croston, normal', 0.6),
        ],
      }),
    ).toEqual([
      'mean pinball loss       all   lumpy  enough',
      'series                   12      12',
      'mixture, each alone  0.5000  0.5000  95.0 %',
      'Croston, normal      0.6000  0.6000  95.0 %',
      'Croston, Poisson     0.7000  0.7000  95.0 %',
    ]);
  });
});
