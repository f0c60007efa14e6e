import type { NoticeFileKind } from '../../recalls/notice-files/notice-record.js';
import type { LotDecision, RecallState } from '../../recalls/vocabulary.js';
import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import type { Event } from '../service/events.js';
import type { BodyOf } from '../service/operations.js';
import { request } from '../service/request.js';
import { useAnswer } from '../service/use-answer.js';
import { bodyOf } from './scope/scope-body.js';

export type OpenedRecall = BodyOf<'POST', '/studios/{studioId}/recalls'>;
export type AmendedRecall = BodyOf<'POST', '/studios/{studioId}/recalls/{recallId}/scopes'>;

const afterOf = (after: string | undefined) => (after === undefined ? {} : { after });

/** Nothing is written by reading; a megabyte takes its time on its way. */
export const readNotice = (studioId: string, text: string) =>
  request('POST', '/studios/{studioId}/recalls/readings', { studioId }, { text });

export const readNoticeFile = (
  studioId: string,
  kind: NoticeFileKind,
  text: string,
  after: number | undefined,
) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/files',
    { studioId },
    { kind, text, ...(after !== undefined && { after }) },
  );

export const matchScope = (studioId: string, scope: LotScope) =>
  request('POST', '/studios/{studioId}/recalls/matches', { studioId }, { scope: bodyOf(scope) });

export const listRecalls = (studioId: string, state: RecallState | undefined, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls', {
    studioId,
    ...(state !== undefined && { state }),
    ...afterOf(after),
  });

export const openRecall = (studioId: string, recall: OpenedRecall) =>
  request('POST', '/studios/{studioId}/recalls', { studioId }, recall);

export const amendRecall = (studioId: string, recallId: string, amended: AmendedRecall) =>
  request('POST', '/studios/{studioId}/recalls/{recallId}/scopes', { studioId, recallId }, amended);

export const listRecallLots = (studioId: string, recallId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/lots', { studioId, recallId, ...afterOf(after) });

export const decideLot = (
  studioId: string,
  recallId: string,
  lotId: string,
  decided: Event & { decision: LotDecision; reason: string },
) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/{recallId}/lots/{lotId}/decisions',
    { studioId, recallId, lotId },
    decided,
  );

export const withdrawRecall = (studioId: string, recallId: string, event: Event & { reason: string }) =>
  request('POST', '/studios/{studioId}/recalls/{recallId}/withdrawal', { studioId, recallId }, event);

export const listNotices = (studioId: string, after: string | undefined) =>
  request('GET', '/studios/{studioId}/recalls/notices', { studioId, ...afterOf(after) });

export const showNotice = (studioId: string, noticeId: string) =>
  request('GET', '/studios/{studioId}/recalls/notices/{noticeId}', { studioId, noticeId });

export const dismissNotice = (studioId: string, noticeId: string, event: Event & { reason: string }) =>
  request('POST', '/studios/{studioId}/recalls/notices/{noticeId}/dismissal', { studioId, noticeId }, event);

/** What all pages of a recall ask; each question has one key. */
export const useRecall = (studioId: string, recallId: string) =>
  useAnswer(['recall', studioId, recallId], () =>
    request('GET', '/studios/{studioId}/recalls/{recallId}', { studioId, recallId }),
  );

/** What is done and what is outstanding, in numbers. */
export const useReadiness = (studioId: string, recallId: string) =>
  useAnswer(['readiness of recall', studioId, recallId], () =>
    request('GET', '/studios/{studioId}/recalls/{recallId}/readiness', { studioId, recallId }),
  );

export const useRecallSteps = (studioId: string, recallId: string) =>
  useAnswer(['steps of recall', studioId, recallId], () =>
    request('GET', '/studios/{studioId}/recalls/{recallId}/steps', { studioId, recallId }),
  );
