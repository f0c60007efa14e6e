import { expect, it } from 'vitest';
import { permissionsOf } from '../../identity/permissions.js';
import { firstSteps } from './first-steps-of.js';

const nothing = {
  hasPlace: false,
  hasProduct: false,
  hasLot: false,
  hasProcedure: false,
  hasSession: false,
  hasCompleted: false,
};

it('leads an owner from a place to a finished tray', () => {
  const steps = firstSteps({ ...nothing, hasPlace: true }, 's', permissionsOf('owner'));
  expect(steps.map(({ name, isDone }) => `${name} ${isDone}`)).toEqual([
    'place true',
    'product false',
    'receive false',
    'procedure false',
    'session false',
    'finish false',
  ]);
  expect(steps.map(({ path }) => path)).toEqual([
    '/studios/s/settings/places',
    '/studios/s/settings/products',
    '/studios/s/stock/receive',
    '/studios/s/settings/procedures',
    undefined,
    undefined,
  ]);
});

it('sends nobody to a page that is not theirs', () => {
  const paths = firstSteps(nothing, 's', permissionsOf('artist')).map(({ path }) => path);
  expect(paths).toEqual([undefined, undefined, '/studios/s/stock/receive', undefined, undefined, undefined]);
});
