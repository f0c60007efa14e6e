import type { DrillStep } from '../../../recalls/drills/drill-steps.js';
import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';

export type NewDrill = BodyOf<'POST', '/studios/{studioId}/recalls/drills'>;
/** The closing notes itself. */
export type NotedStep = Exclude<DrillStep, 'closed'>;
export type DrillRhythm = { everyMonths: number | null; nextOn: string | null };

export const listDrills = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls/drills', { studioId, ...(after !== undefined && { after }) });

export const startDrill = (studioId: string, drill: NewDrill) =>
  request('POST', '/studios/{studioId}/recalls/drills', { studioId }, drill);

export const noteStep = (studioId: string, recallId: string, noted: { id: string; step: NotedStep }) =>
  request('POST', '/studios/{studioId}/recalls/{recallId}/steps', { studioId, recallId }, noted);

export const useDrillSchedule = (studioId: string) =>
  useAnswer(['drill schedule', studioId], () =>
    request('GET', '/studios/{studioId}/drill-schedule', { studioId }),
  );

export const setDrillSchedule = (studioId: string, rhythm: DrillRhythm & { id: string; version?: number }) =>
  request('PUT', '/studios/{studioId}/drill-schedule', { studioId }, rhythm);

export const setDrillScheduleOfChain = (studioId: string, rhythm: DrillRhythm & { id: string }) =>
  request('PUT', '/studios/{studioId}/chain/drill-schedule', { studioId }, rhythm);
