import { type OpenedLifeUnit, readOpenedLife } from '../../identity/opened-life-duration.js';
import type { Texts } from '../texts/en/english.js';

/** An opened life as it is filled in; without a unit none is assumed. */
export interface AssumedLife {
  amount: string;
  unit: OpenedLifeUnit | '';
}

/** @param duration ISO 8601, as the service keeps it: `P12M`; null: none */
export function assumedLifeOf(duration: string | null): AssumedLife {
  const life = duration === null ? undefined : readOpenedLife(duration);
  return life === undefined || 'error' in life
    ? { amount: '', unit: '' }
    : { amount: String(life.amount), unit: life.unit };
}

export function durationOf({ amount, unit }: AssumedLife): string | null {
  if (unit === '') return null;
  return { months: `P${amount}M`, days: `P${amount}D`, hours: `PT${amount}H` }[unit];
}

export function writtenLife({ amount, unit }: AssumedLife, texts: Texts): string {
  return unit === '' ? texts.thresholds.noLife : texts.products.openedLifeOf(Number(amount), unit);
}
