import type { LotSummaryView } from '../../../stock/lot-list.views.js';
import type { LotCodeKind } from '../../../stock/vocabulary.js';
import type { Event } from '../../service/events.js';
import { request } from '../../service/request.js';

export const lotStates = ['usable', 'ending soon', 'held', 'expired', 'empty'] as const;
export type LotState = (typeof lotStates)[number];

export interface LotChoice {
  productId?: string;
  code?: string;
  state?: LotState;
}

export const listLots = (studioId: string, choice: LotChoice, after: string | undefined) =>
  request('GET', '/studios/{studioId}/lots', { studioId, ...choice, ...(after !== undefined && { after }) });

export const showLot = (
  studioId: string,
  lotId: string,
  page: { limit?: number; after?: string; containersAfter?: string } = {},
) => request('GET', '/studios/{studioId}/lots/{lotId}', { studioId, lotId, ...page });

export const showProduct = (studioId: string, productId: string) =>
  request('GET', '/studios/{studioId}/products/{productId}', { studioId, productId });

/** What is corrected of a lot; what is left out stays. */
export interface LotCorrection {
  codes?: { kind: LotCodeKind; code: string }[];
  codeState?: 'none printed' | 'unreadable';
  useBy?: string | null;
  manufacturedOn?: string | null;
  sameCodeDecision?: 'separate lot';
  reason: string;
}

export const correctLot = (
  studioId: string,
  lot: Pick<LotSummaryView, 'id' | 'version'>,
  id: string,
  correction: LotCorrection,
) =>
  request(
    'PATCH',
    '/studios/{studioId}/lots/{lotId}',
    { studioId, lotId: lot.id },
    { id, version: lot.version, ...correction },
  );

export const reverseMovement = (studioId: string, movementId: string, reason: string, event: Event) =>
  request(
    'POST',
    '/studios/{studioId}/movements/{movementId}/reversal',
    { studioId, movementId },
    { ...event, reason },
  );
