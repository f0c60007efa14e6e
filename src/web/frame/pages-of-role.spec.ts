import { expect, it } from 'vitest';
import { permissionsOf, type Role } from '../../identity/permissions.js';
import { pagesOf, pathOf, pathOfTray, placeOf } from './pages-of-role.js';

it.each<[Role, string[]]>([
  ['owner', ['sessions', 'people', 'tablets', 'programs']],
  ['manager', ['sessions', 'tablets', 'programs']],
  ['artist', ['sessions']],
  ['auditor', ['sessions']],
  ['chain manager', ['sessions', 'people', 'programs']],
])('offers to the %s: %j', (role, pages) => {
  expect(pagesOf(permissionsOf(role))).toEqual(pages);
});

it('finds the studio and page of a path it made', () => {
  const place = { studioId: '0192f0c1-2d3e-7a4b-8c5d-6e7f80910111', page: 'people' } as const;
  expect(placeOf(pathOf(place))).toEqual(place);
});

it('takes the tray of a session for a part of the page of sessions', () => {
  const ids = {
    studioId: '0192f0c1-2d3e-7a4b-8c5d-6e7f80910111',
    sessionId: '0192f0c1-2d3e-7a4b-8c5d-6e7f80910112',
  };
  expect(placeOf(pathOfTray(ids))).toEqual({ studioId: ids.studioId, page: 'sessions' });
});

it.each(['/', '/studios', '/studios/1/people', `/studios/${'0'.repeat(36)}/toString`])(
  'finds no place in %s',
  (path) => {
    expect(placeOf(path)).toBeUndefined();
  },
);
