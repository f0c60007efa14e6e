import type { LevelView } from '../../../stock/levels.views.js';
import { request } from '../../service/request.js';

export const showLevels = (studioId: string) =>
  request('GET', '/studios/{studioId}/stock/levels', { studioId });

/** What a minimum is set for, and the one that stands. */
export interface LevelSubject {
  subjectKind: LevelView['subjectKind'];
  subjectId: string;
  level: LevelView | null;
}

export const setLevel = (
  studioId: string,
  id: string,
  { subjectKind, subjectId, level }: LevelSubject,
  minimumPieces: number,
) =>
  request(
    'PUT',
    '/studios/{studioId}/stock/levels',
    { studioId },
    { id, subjectKind, subjectId, minimumPieces, ...(level && { version: level.version }) },
  );

export const removeLevel = (studioId: string, id: string, level: LevelView) =>
  request(
    'DELETE',
    '/studios/{studioId}/stock/levels/{levelId}',
    { studioId, levelId: level.id },
    { id, version: level.version },
  );
