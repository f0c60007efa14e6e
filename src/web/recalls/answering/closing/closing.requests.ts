import type { ClosingOverride } from '../../../../recalls/vocabulary.js';
import type { Event } from '../../../service/events.js';
import { request, requestFile } from '../../../service/request.js';
import { useAnswer } from '../../../service/use-answer.js';

export interface Closing {
  signedBy: string;
  secondSignedBy?: string;
  overrides: ClosingOverride[];
}

export const closeRecall = (studioId: string, recallId: string, closing: Closing, event: Event) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/{recallId}/closing',
    { studioId, recallId },
    { ...event, ...closing },
  );

export const useReport = (studioId: string, recallId: string) =>
  useAnswer(['report of recall', studioId, recallId], () =>
    request('GET', '/studios/{studioId}/recalls/{recallId}/report.json', { studioId, recallId }),
  );

export const reportAsDocument = (studioId: string, recallId: string) =>
  requestFile('GET', '/studios/{studioId}/recalls/{recallId}/report.pdf', { studioId, recallId });

export const reportAsData = (studioId: string, recallId: string) =>
  requestFile('GET', '/studios/{studioId}/recalls/{recallId}/report.json', { studioId, recallId });
