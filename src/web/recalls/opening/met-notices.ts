import type { FileNoticeView } from '../../../recalls/notice-files/notice-files.views.js';

/** What surely meets something here first, then what possibly does; else in the order of the file. */
export function sortByMet<Notice extends Pick<FileNoticeView, 'certainLots' | 'possibleLots'>>(
  notices: readonly Notice[],
): Notice[] {
  const rank = ({ certainLots, possibleLots }: Notice) => (certainLots > 0 ? 2 : possibleLots > 0 ? 1 : 0);
  return [...notices].sort((one, other) => rank(other) - rank(one));
}
