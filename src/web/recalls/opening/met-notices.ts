import type { FileNoticeView } from '../../../recalls/notice-files/notice-files.views.js';

/** How many lots here a notice meets. */
export interface Met {
  certainLots: number;
  possibleLots: number;
}

/** Undefined: that was not asked. */
export function metOf(notice: FileNoticeView & Partial<Met>): Met | undefined {
  const { certainLots, possibleLots } = notice;
  return certainLots === undefined || possibleLots === undefined ? undefined : { certainLots, possibleLots };
}

/** What surely meets something here first, then what possibly does; else in the order of the file. */
export function sortByMet<Notice extends FileNoticeView & Partial<Met>>(
  notices: readonly Notice[],
): Notice[] {
  const rank = (notice: Notice) => {
    const met = metOf(notice);
    return met === undefined ? 0 : met.certainLots > 0 ? 2 : met.possibleLots > 0 ? 1 : 0;
  };
  return [...notices].sort((one, other) => rank(other) - rank(one));
}
