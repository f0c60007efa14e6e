import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';

export type StudioChange = BodyOf<'PATCH', '/studios/{studioId}'>;
export type NewStudio = BodyOf<'POST', '/studios/{studioId}/chain/studios'>;
export type NewProcedure = BodyOf<'POST', '/studios/{studioId}/procedures'>;
export type ProcedureChange = BodyOf<'PATCH', '/studios/{studioId}/procedures/{procedureId}'>;
export type KitListContent = BodyOf<'PUT', '/studios/{studioId}/procedures/{procedureId}/kit-list'>;

export const changeStudio = (studioId: string, change: StudioChange) =>
  request('PATCH', '/studios/{studioId}', { studioId }, change);
export const listRetentionPresets = (studioId: string) =>
  request('GET', '/studios/{studioId}/retention-presets', { studioId });
/** Adds a studio to the chain of the one named. */
export const addStudio = (studioId: string, studio: NewStudio) =>
  request('POST', '/studios/{studioId}/chain/studios', { studioId }, studio);

export const listProcedures = (studioId: string) =>
  request('GET', '/studios/{studioId}/procedures', { studioId, archived: 'shown' });
export const addProcedure = (studioId: string, procedure: NewProcedure) =>
  request('POST', '/studios/{studioId}/procedures', { studioId }, procedure);
export const changeProcedure = (studioId: string, procedureId: string, change: ProcedureChange) =>
  request('PATCH', '/studios/{studioId}/procedures/{procedureId}', { studioId, procedureId }, change);

export const showKitList = (studioId: string, procedureId: string, artistId: string | undefined) =>
  request('GET', '/studios/{studioId}/procedures/{procedureId}/kit-list', {
    studioId,
    procedureId,
    artistId,
  });
export const putKitList = (studioId: string, procedureId: string, content: KitListContent) =>
  request('PUT', '/studios/{studioId}/procedures/{procedureId}/kit-list', { studioId, procedureId }, content);
