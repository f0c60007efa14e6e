import type { Permission } from '../../identity/permissions.js';

/** The pages of a studio, and the permission without which there is nothing to do on them. */
const pages = {
  sessions: 'read sessions',
  people: 'manage people',
  tablets: 'enrol tablets',
  programs: 'issue tokens',
} as const satisfies Record<string, Permission>;

export type StudioPage = keyof typeof pages;

/** The pages a menu offers to somebody who may do this. */
export function pagesOf(may: readonly Permission[]): StudioPage[] {
  return (Object.keys(pages) as StudioPage[]).filter((page) => may.includes(pages[page]));
}

export interface StudioPlace {
  studioId: string;
  page: StudioPage;
}

export function pathOf({ studioId, page }: StudioPlace): string {
  return `/studios/${studioId}/${page}`;
}

/** Where the tray of a session is laid. */
export function pathOfTray({ studioId, sessionId }: { studioId: string; sessionId: string }): string {
  return `/studios/${studioId}/sessions/${sessionId}`;
}

/** The studio and page of a path; undefined when it names none. */
export function placeOf(path: string): StudioPlace | undefined {
  const [, studioId, page] = /^\/studios\/([0-9a-f-]{36})\/([a-z]+)(?:\/[0-9a-f-]{36})?$/.exec(path) ?? [];
  if (studioId === undefined || page === undefined || !Object.hasOwn(pages, page)) return undefined;
  return { studioId, page: page as StudioPage };
}
