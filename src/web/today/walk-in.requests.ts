import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export const beginWalkIn = (
  studioId: string,
  walkIn: BodyOf<'POST', '/studios/{studioId}/sessions/walk-in'>,
) => request('POST', '/studios/{studioId}/sessions/walk-in', { studioId }, walkIn);
