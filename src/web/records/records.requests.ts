import type { BodyPlace, SessionState, VisitKind } from '../../sessions/vocabulary.js';
import type { Event } from '../service/events.js';
import type { BodyOf } from '../service/operations.js';
import { request, requestFile } from '../service/request.js';

export interface SessionFilters {
  /** Local days of the studio, both included. */
  from?: string | undefined;
  to?: string | undefined;
  state?: SessionState | undefined;
  artistId?: string | undefined;
  clientId?: string | undefined;
}

export interface Plan {
  artistId: string;
  procedureId: string;
  visitKind: VisitKind;
  bodyPlace?: BodyPlace;
  bodyPlaceDetail?: string | null;
  plannedStart: string;
  /** Left out: found by itself, or left as it is. */
  followsSessionId?: string | null;
}

export type LateUse = BodyOf<'POST', '/studios/{studioId}/sessions/{sessionId}/uses'>['uses'][number];

export const listSessions = (
  studioId: string,
  filters: SessionFilters,
  after: string | undefined,
  limit?: number,
) => request('GET', '/studios/{studioId}/sessions', { studioId, ...filters, after, limit });
export const showSession = (studioId: string, sessionId: string) =>
  request('GET', '/studios/{studioId}/sessions/{sessionId}', { studioId, sessionId });
export const showRecord = (studioId: string, sessionId: string) =>
  request('GET', '/studios/{studioId}/sessions/{sessionId}/record', { studioId, sessionId });

export const planSession = (studioId: string, plan: Plan & { id: string; clientId: string }) =>
  request('POST', '/studios/{studioId}/sessions', { studioId }, plan);
export type LateVisit = BodyOf<'POST', '/studios/{studioId}/sessions/late'>;
export const recordLateVisit = (studioId: string, visit: LateVisit) =>
  request('POST', '/studios/{studioId}/sessions/late', { studioId }, visit);
export const changePlan = (
  studioId: string,
  sessionId: string,
  change: Partial<Plan> & { id: string; version: number },
) => request('PATCH', '/studios/{studioId}/sessions/{sessionId}', { studioId, sessionId }, change);
export const cancelSession = (studioId: string, sessionId: string, step: Event) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/cancellation', { studioId, sessionId }, step);
export const recordNonAttendance = (studioId: string, sessionId: string, step: Event) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/non-attendance', { studioId, sessionId }, step);

export const listLotsOf = (studioId: string, productId: string) =>
  request('GET', '/studios/{studioId}/lots', { studioId, productId, limit: 200 });

export const addUse = (studioId: string, sessionId: string, id: string, use: LateUse) =>
  request(
    'POST',
    '/studios/{studioId}/sessions/{sessionId}/uses',
    { studioId, sessionId },
    { id, uses: [use] },
  );
export const reverseUse = (
  studioId: string,
  sessionId: string,
  useId: string,
  reversal: Event & { reason?: string },
) =>
  request(
    'POST',
    '/studios/{studioId}/sessions/{sessionId}/uses/{useId}/reversal',
    { studioId, sessionId, useId },
    reversal,
  );
export const addComplications = (
  studioId: string,
  sessionId: string,
  added: Event & { complications: string; version: number },
) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/complications', { studioId, sessionId }, added);
export const recordHealedResult = (
  studioId: string,
  sessionId: string,
  result: Event & {
    retainedColourPercent: number;
    note: string | null;
    seenAtSessionId: string | null;
    version?: number;
  },
) =>
  request('POST', '/studios/{studioId}/sessions/{sessionId}/healed-result', { studioId, sessionId }, result);

export interface AuditFilters {
  order?: 'newest' | 'oldest';
  action?: string | undefined;
  subjectKind?: string | undefined;
  subjectId?: string | undefined;
  personId?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
}

/** A page of the log; what leads to the next one is written as text, as in every other list. */
export async function listAuditEntries(studioId: string, filters: AuditFilters, after: string | undefined) {
  const page = await request('GET', '/studios/{studioId}/audit-log', {
    studioId,
    ...filters,
    after: after === undefined ? undefined : Number(after),
  });
  return { items: page.items, next: page.next === null ? null : String(page.next) };
}
export const verifyRecord = (studioId: string) =>
  request('GET', '/studios/{studioId}/audit-log/verification', { studioId });
export const exportAuditLog = (studioId: string, id: string) =>
  requestFile('POST', '/studios/{studioId}/audit-log/exports', { studioId }, { id });

export const showBackups = (studioId: string) => request('GET', '/studios/{studioId}/backups', { studioId });
export const listRetention = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/retention', { studioId, after });
export const carryOutRetention = (studioId: string, id: string, clientIds: string[]) =>
  request('POST', '/studios/{studioId}/retention', { studioId }, { id, clientIds });
