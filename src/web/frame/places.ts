import type { Permission } from '../../identity/permissions.js';

/** The areas of a studio, in the order of the menu; a menu offers one to whoever may do any of this. */
const areas = {
  today: ['read sessions'],
  alerts: ['see alerts'],
  stock: ['read stock'],
  ordering: ['read plans'],
  recalls: ['read recalls'],
  records: ['trace'],
  settings: [
    'change the studio',
    'manage people',
    'enrol tablets',
    'issue tokens',
    'change the register',
    'change procedures',
    'set levels',
  ],
} as const satisfies Record<string, readonly Permission[]>;

export type StudioArea = keyof typeof areas;

/** The areas a menu offers to somebody who may do this. */
export function areasOf(may: readonly Permission[]): StudioArea[] {
  return (Object.keys(areas) as StudioArea[]).filter((area) =>
    areas[area].some((permission) => may.includes(permission)),
  );
}

export interface StudioPlace {
  studioId: string;
  area: StudioArea;
}

/** The first page of an area, or the one below it: `pathOf(place, 'lots', lotId)`. */
export function pathOf({ studioId, area }: StudioPlace, ...below: string[]): string {
  return ['/studios', studioId, area, ...below].join('/');
}

/** Where the tray of a session is laid. */
export function pathOfTray({ studioId, sessionId }: { studioId: string; sessionId: string }): string {
  return pathOf({ studioId, area: 'today' }, 'trays', sessionId);
}

/** The studio and area of a path; undefined when it names none. */
export function placeOf(path: string): StudioPlace | undefined {
  const [, studioId, area] = /^\/studios\/([0-9a-f-]{36})\/([a-z]+)(?:\/.*)?$/.exec(path) ?? [];
  if (studioId === undefined || area === undefined || !Object.hasOwn(areas, area)) return undefined;
  return { studioId, area: area as StudioArea };
}
