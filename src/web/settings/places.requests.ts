import type { PlaceKind } from '../../stock/vocabulary.js';
import { request } from '../service/request.js';

export const addPlace = (studioId: string, place: { id: string; name: string; kind: PlaceKind }) =>
  request('POST', '/studios/{studioId}/places', { studioId }, place);
export const archivePlace = (studioId: string, placeId: string, write: { id: string }) =>
  request('POST', '/studios/{studioId}/places/{placeId}/archive', { studioId, placeId }, write);
