import { expect, it } from 'vitest';
import { trayLacking } from './tray-lacking.js';

const pools = [{ productIds: ['liner', 'round'], poolKeys: ['7 round'] }];
const umber = { productId: 'umber', configuration: null, quantity: 1, label: 'Umber' };
const sevens = { productId: null, configuration: '7 round', quantity: 2, label: '7 round' };

it('lacks everything on an empty tray, in the order of the list', () => {
  expect(trayLacking([umber, sevens], [], pools)).toEqual([
    { productId: 'umber', configuration: null, label: 'Umber', quantityPieces: 1 },
    { productId: null, configuration: '7 round', label: '7 round', quantityPieces: 2 },
  ]);
});

it('is served by a bottle without pieces, and by any product of the pool', () => {
  const lines = [
    { productId: 'umber', label: 'Umber', pieces: 0 },
    { productId: 'round', label: 'Round', pieces: 1 },
  ];
  expect(trayLacking([umber, sevens], lines, pools)).toEqual([
    { productId: null, configuration: '7 round', label: '7 round', quantityPieces: 1 },
  ]);
});

it('is not served by what stands in no pool, when the configuration is in none either', () => {
  const gone = { productId: null, configuration: '9 magnum', quantity: 1, label: '9 magnum' };
  const gel = { productId: 'gel', label: 'Gel', pieces: 1 };
  expect(trayLacking([gone], [gel], pools)).toMatchObject([{ configuration: '9 magnum', quantityPieces: 1 }]);
});
