import type { MessageLanguage } from '../../../../recalls/messages/message-facts.js';
import type { ContactAudience, ContactChannel, ContactOutcome } from '../../../../recalls/vocabulary.js';
import type { Event } from '../../../service/events.js';
import { request, requestFile } from '../../../service/request.js';
import type { Addressee } from './addressee.js';

export const listRecipients = (
  studioId: string,
  recallId: string,
  audience: ContactAudience,
  outstanding: boolean,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/recipients', {
    studioId,
    recallId,
    audience,
    ...(outstanding && { outstanding }),
    ...(after !== undefined && { after }),
  });

export const prepareMessage = (
  studioId: string,
  recallId: string,
  addressee: Addressee,
  language: MessageLanguage,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/messages', {
    studioId,
    recallId,
    ...addressee,
    language,
  });

export interface Attempt {
  channel: ContactChannel;
  outcome: ContactOutcome;
  note?: string;
}

export const recordAttempt = (
  studioId: string,
  recallId: string,
  attempt: Addressee & Attempt,
  event: Event,
) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/{recallId}/contacts',
    { studioId, recallId },
    { ...event, ...attempt },
  );

export const listAttempts = (
  studioId: string,
  recallId: string,
  audience: ContactAudience,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/contacts', {
    studioId,
    recallId,
    audience,
    ...(after !== undefined && { after }),
  });

export const showEffectiveness = (studioId: string, recallId: string) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/effectiveness', { studioId, recallId });

/** Names and contacts of all: each is noted as looked at. */
export const contactListAsCsv = (studioId: string, recallId: string) =>
  requestFile('GET', '/studios/{studioId}/recalls/{recallId}/contact-list.csv', { studioId, recallId });
