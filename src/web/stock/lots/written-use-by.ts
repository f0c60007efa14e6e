import type { LotSummaryView } from '../../../stock/lot-list.views.js';
import type { Texts } from '../../texts/en/english.js';
import { writtenDay } from '../../texts/written-dates.js';

/** Until when a lot may be used, and how exactly its label says it. */
export function writtenUseBy(
  { useBy, useByPrecision }: Pick<LotSummaryView, 'useBy' | 'useByPrecision'>,
  texts: Texts,
): string {
  if (useBy === null || useByPrecision === 'none printed') return texts.lot.noUseBy;
  const day = writtenDay(useBy, texts.language);
  return useByPrecision === 'day' ? texts.lot.lastDay(day) : texts.lot.endOf[useByPrecision](day);
}
