import { request } from '../service/request.js';

export const showStudio = (studioId: string) => request('GET', '/studios/{studioId}', { studioId });
export const listPlaces = (studioId: string) => request('GET', '/studios/{studioId}/places', { studioId });
export const listPeople = (studioId: string) => request('GET', '/studios/{studioId}/people', { studioId });
