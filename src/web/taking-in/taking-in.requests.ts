import type { VisitKind } from '../../sessions/vocabulary.js';
import { request } from '../service/request.js';

export interface BookingDefaults {
  artistId?: string;
  procedureId?: string;
  visitKind?: VisitKind;
}

export const previewOpeningStock = (studioId: string, text: string) =>
  request('POST', '/studios/{studioId}/opening-stock/preview', { studioId }, { text });
export const takeInOpeningStock = (studioId: string, file: { id: string; text: string }) =>
  request('POST', '/studios/{studioId}/opening-stock', { studioId }, file);
export const previewBookings = (studioId: string, list: BookingDefaults & { text: string }) =>
  request('POST', '/studios/{studioId}/bookings/preview', { studioId }, list);
export const takeInBookings = (studioId: string, list: BookingDefaults & { id: string; text: string }) =>
  request('POST', '/studios/{studioId}/bookings', { studioId }, list);
