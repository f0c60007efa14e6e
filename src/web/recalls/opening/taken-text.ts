import type { NoticeReadingView } from '../../../recalls/recalls.views.js';
import type { LotScope } from '../../../stock/lot-matching/lot-scope.js';
import { type NoticeOrigin, saidOf, type TakenNotice } from './taken-notice.js';

/** A text that was read, with what was read in it. */
export function takenText(text: string, reading: NoticeReadingView, origin: NoticeOrigin): TakenNotice {
  return {
    origin,
    text,
    parts: reading.parts,
    remarks: reading.remarks,
    // The description of the API has one shape for all kinds of lots.
    scope: reading.scope as LotScope,
    matches: reading.matches,
    said: saidOf(reading),
  };
}
