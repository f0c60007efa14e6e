import { request } from './request.js';
import { useAnswer } from './use-answer.js';

/** What many pages ask of a studio: each question has one key here, so that all of them share its answer. */

export const listPeople = (studioId: string) => request('GET', '/studios/{studioId}/people', { studioId });

export const useStudio = (studioId: string) =>
  useAnswer(['studio', studioId], () => request('GET', '/studios/{studioId}', { studioId }));

/** Also who left. */
export const usePeople = (studioId: string) => useAnswer(['people', studioId], () => listPeople(studioId));

/** Also those that are out of use. */
export const usePlaces = (studioId: string) =>
  useAnswer(['places', studioId], () => request('GET', '/studios/{studioId}/places', { studioId }));

/** Those that are offered. */
export const useProcedures = (studioId: string) =>
  useAnswer(['procedures', studioId], () => request('GET', '/studios/{studioId}/procedures', { studioId }));

/** Which cartridges stand for each other. */
export const useConfigurations = (studioId: string) =>
  useAnswer(['configurations', studioId], () =>
    request('GET', '/studios/{studioId}/configurations', { studioId }),
  );
