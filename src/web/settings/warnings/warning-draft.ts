import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import type { WarningDays } from './warnings.requests.js';

/** Days of warning of a product while they are edited: numbers as they are typed, empty where there are none. */
export interface WarningDraft {
  useByNearDays: string;
  openedLifeEndingDays: string;
}

/** @param present undefined: nothing is set */
export function draftOf(
  present: Pick<DateThresholdView, 'useByNearDays' | 'openedLifeEndingDays'> | undefined,
): WarningDraft {
  return {
    useByNearDays: written(present?.useByNearDays),
    openedLifeEndingDays: written(present?.openedLifeEndingDays),
  };
}

/** @param version of what was read; undefined: nothing was set */
export function daysOf(
  { useByNearDays, openedLifeEndingDays }: WarningDraft,
  version: number | undefined,
): WarningDays {
  return {
    useByNearDays: numberOf(useByNearDays),
    openedLifeEndingDays: numberOf(openedLifeEndingDays),
    ...(version !== undefined && { version }),
  };
}

function written(count: number | null | undefined): string {
  return count == null ? '' : String(count);
}

function numberOf(text: string): number | null {
  return text === '' ? null : Number(text);
}
