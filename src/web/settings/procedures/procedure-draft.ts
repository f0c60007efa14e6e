import type { ProcedureView } from '../../../sessions/procedures.views.js';
import { DEFAULT_TOUCH_UP_DAYS } from '../../../sessions/touch-up-window.js';
import type { BodyPlace } from '../../../sessions/vocabulary.js';

/** A procedure as it is filled in; numbers are kept as they were typed. */
export interface ProcedureDraft {
  name: string;
  bodyPlace: BodyPlace;
  touchUpFromDays: string;
  touchUpToDays: string;
}

export const newProcedure: ProcedureDraft = {
  name: '',
  bodyPlace: 'brows',
  touchUpFromDays: String(DEFAULT_TOUCH_UP_DAYS.fromDays),
  touchUpToDays: String(DEFAULT_TOUCH_UP_DAYS.toDays),
};

export function draftOf({
  name,
  bodyPlace,
  touchUpFromDays,
  touchUpToDays,
}: Pick<ProcedureView, keyof ProcedureDraft>): ProcedureDraft {
  return {
    name,
    bodyPlace,
    touchUpFromDays: String(touchUpFromDays),
    touchUpToDays: String(touchUpToDays),
  };
}

/** What of a procedure is sent. */
export function contentOf({ touchUpFromDays: from, touchUpToDays: to, ...words }: Partial<ProcedureDraft>) {
  return {
    ...words,
    ...(from !== undefined && { touchUpFromDays: Number(from) }),
    ...(to !== undefined && { touchUpToDays: Number(to) }),
  };
}
