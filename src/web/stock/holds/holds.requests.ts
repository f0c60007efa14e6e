import type { HoldKind, HoldReason } from '../../../stock/vocabulary.js';
import type { Event } from '../../service/events.js';
import { request } from '../../service/request.js';

export const listOpenHolds = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/holds', { studioId, ...(after !== undefined && { after }) });

/** The whole lot, or one container of it. */
export type Holdable = { lotId: string } | { containerId: string };

export const placeHold = (
  studioId: string,
  on: Holdable,
  { note, ...hold }: { kind: HoldKind; reason: HoldReason; note: string },
  event: Event,
) =>
  request(
    'POST',
    '/studios/{studioId}/holds',
    { studioId },
    { ...event, ...on, ...hold, ...(note !== '' && { note }) },
  );

export const askRelease = (
  studioId: string,
  holdId: string,
  asked: { reason: string; photoId?: string },
  event: Event,
) =>
  request(
    'POST',
    '/studios/{studioId}/holds/{holdId}/release-requests',
    { studioId, holdId },
    { ...event, ...asked },
  );

export const releaseHold = (studioId: string, holdId: string, reason: string, event: Event) =>
  request('POST', '/studios/{studioId}/holds/{holdId}/release', { studioId, holdId }, { ...event, reason });
