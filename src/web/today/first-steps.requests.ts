import { request } from '../service/request.js';
import type { FoundAtStart } from './first-steps-of.js';

/** Asks for one of each; once a session was completed, for nothing more. */
export async function lookAtFirstSteps(studioId: string): Promise<FoundAtStart> {
  const completed = await request('GET', '/studios/{studioId}/sessions', {
    studioId,
    state: 'completed',
    limit: 1,
  });
  if (completed.items.length > 0) {
    return {
      hasPlace: true,
      hasProduct: true,
      hasLot: true,
      hasProcedure: true,
      hasSession: true,
      hasCompleted: true,
    };
  }
  const [places, products, lots, procedures, sessions] = await Promise.all([
    request('GET', '/studios/{studioId}/places', { studioId }),
    request('GET', '/studios/{studioId}/products', { studioId, limit: 1 }),
    request('GET', '/studios/{studioId}/lots', { studioId, limit: 1 }),
    request('GET', '/studios/{studioId}/procedures', { studioId }),
    request('GET', '/studios/{studioId}/sessions', { studioId, limit: 1 }),
  ]);
  return {
    hasPlace: places.length > 0,
    hasProduct: products.items.length > 0,
    hasLot: lots.items.length > 0,
    hasProcedure: procedures.length > 0,
    hasSession: sessions.items.length > 0,
    hasCompleted: false,
  };
}
