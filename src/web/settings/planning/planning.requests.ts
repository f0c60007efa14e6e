import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

export type PlanningContent = Omit<BodyOf<'PUT', '/studios/{studioId}/planning-settings'>, 'id'>;

export const showPlanning = (studioId: string) =>
  request('GET', '/studios/{studioId}/planning-settings', { studioId });
export const setPlanning = (studioId: string, id: string, content: PlanningContent) =>
  request('PUT', '/studios/{studioId}/planning-settings', { studioId }, { id, ...content });
export const listItemPlannings = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/planning-settings/items', {
    studioId,
    ...(after !== undefined && { after }),
  });
export const listArtistPlannings = (studioId: string) =>
  request('GET', '/studios/{studioId}/planning-settings/artists', { studioId });
export const setArtistPlanning = (
  studioId: string,
  personId: string,
  body: BodyOf<'PUT', '/studios/{studioId}/planning-settings/artists/{personId}'>,
) => request('PUT', '/studios/{studioId}/planning-settings/artists/{personId}', { studioId, personId }, body);
