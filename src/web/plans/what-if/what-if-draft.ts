import type { BodyOf } from '../../service/operations.js';

export type WhatIf = NonNullable<BodyOf<'POST', '/studios/{studioId}/plans'>['whatIf']>;

/** What is supposed to be different, as it is written; empty: it is as it is. */
export interface WhatIfDraft {
  /** Per cent. */
  target: string;
  /** Days more or less. */
  leadTimeDays: string;
  /** Per cent more or less. */
  price: string;
  bookings: string;
}

export interface ExtraSessionsDraft {
  procedureId: string;
  on: string;
  sessions: string;
}

/** What is missing or not allowed in one of them, by field. */
export type ExtraSessionsFaults = Partial<Record<keyof ExtraSessionsDraft, true>>;

/** @param today the studio's local day, ISO */
export function extraSessionsFaults(
  { procedureId, on, sessions }: ExtraSessionsDraft,
  today: string,
): ExtraSessionsFaults {
  const number = numberOf(sessions);
  const isNumber =
    number !== undefined && Number.isInteger(number) && number !== 0 && Math.abs(number) <= 100;
  return {
    ...(procedureId === '' && { procedureId: true }),
    ...((on === '' || on < today) && { on: true }),
    ...(!isNumber && { sessions: true }),
  };
}

export const emptyWhatIf: WhatIfDraft = { target: '', leadTimeDays: '', price: '', bookings: '' };

/** What is asked of the service; undefined when nothing is supposed to be different. */
export function whatIfOf(
  draft: WhatIfDraft,
  extra: readonly ExtraSessionsDraft[],
  item: { kind: 'product' | 'configuration'; key: string } | undefined,
): WhatIf | undefined {
  const target = perMilleOf(draft.target);
  const price = perMilleOf(draft.price);
  const bookings = perMilleOf(draft.bookings);
  const days = numberOf(draft.leadTimeDays);
  const extraSessions = extra.flatMap(({ procedureId, on, sessions }) => {
    const number = numberOf(sessions);
    return procedureId === '' || on === '' || number === undefined || number === 0
      ? []
      : [{ procedureId, on, sessions: number }];
  });
  const supposed = {
    ...(target !== undefined && { serviceTargetPerMille: target }),
    ...(days !== undefined && days !== 0 && { leadTimeExtraDays: days }),
    ...(price !== undefined && price !== 0 && { pricePerMille: 1000 + price }),
    ...(bookings !== undefined && bookings !== 0 && { bookingsPerMille: 1000 + bookings }),
    ...(extraSessions.length > 0 && { extraSessions }),
  };
  if (Object.keys(supposed).length === 0) return undefined;
  return { ...supposed, ...(item && { itemKind: item.kind, itemKey: item.key }) };
}

/** Per cent, as written, in thousandths: `97.5` is 975, `-10` is -100. */
function perMilleOf(percent: string): number | undefined {
  const number = numberOf(percent);
  return number === undefined ? undefined : Math.round(number * 10);
}

function numberOf(text: string): number | undefined {
  const written = text.trim().replace(',', '.').replace('−', '-');
  if (written === '') return undefined;
  const number = Number(written);
  return Number.isFinite(number) ? number : undefined;
}
