import { expect, it } from 'vitest';
import { permissionsOf, type Role } from '../../identity/permissions.js';
import { areasOf, pathOf, pathOfTray, placeOf } from './places.js';

it.each<[Role, string[]]>([
  ['owner', ['today', 'alerts', 'stock', 'ordering', 'recalls', 'records', 'settings']],
  ['manager', ['today', 'alerts', 'stock', 'ordering', 'recalls', 'records', 'settings']],
  ['artist', ['today', 'alerts', 'stock', 'ordering', 'recalls', 'records']],
  ['auditor', ['today', 'alerts', 'stock', 'ordering', 'recalls', 'records']],
  ['chain manager', ['today', 'alerts', 'stock', 'ordering', 'recalls', 'records', 'settings']],
])('offers to the %s: %j', (role, offered) => {
  expect(areasOf(permissionsOf(role))).toEqual(offered);
});

const studioId = '0192f0c1-2d3e-7a4b-8c5d-6e7f80910111';
const sessionId = '0192f0c1-2d3e-7a4b-8c5d-6e7f80910112';

it('finds the studio and area of a path it made', () => {
  const place = { studioId, area: 'settings' } as const;
  expect(placeOf(pathOf(place))).toEqual(place);
  expect(placeOf(pathOf(place, 'people'))).toEqual(place);
});

it('takes the tray of a session for a part of today', () => {
  expect(placeOf(pathOfTray({ studioId, sessionId }))).toEqual({ studioId, area: 'today' });
});

it.each(['/', '/studios', '/studios/1/stock', `/studios/${'0'.repeat(36)}/toString`])(
  'finds no place in %s',
  (path) => {
    expect(placeOf(path)).toBeUndefined();
  },
);
