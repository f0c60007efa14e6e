import type { ReportElement } from '../notice-files/safety-gate-report.js';

/** So many of the latest reports that a list names are read: four weeks, whoever was off meanwhile. */
export const readReports = 4;

const reportName = /^report-(\d{4})-(\d{1,2})$/i;

/**
 * The addresses of the latest weekly reports that a list names (EU Safety Gate publishes one: entries with a `reference`
 * such as Report-2026-27 and a `URL` [S]), the latest first. None when it is no such list, or names another host than its
 * own: nobody agreed to ask there.
 * @param listUrl where the list was found
 */
export function latestReports(root: ReportElement, listUrl: string): string[] {
  const { host, protocol } = new URL(listUrl);
  const found = entriesIn(root).flatMap(({ week, address }) => {
    if (!URL.canParse(address, listUrl)) return [];
    const url = new URL(address, listUrl);
    return url.host === host && url.protocol === protocol ? [{ week, url: url.href }] : [];
  });
  const latest = found.sort((one, other) => other.week - one.week).map(({ url }) => url);
  return [...new Set(latest)].slice(0, readReports);
}

function entriesIn(element: ReportElement): { week: number; address: string }[] {
  const said = (name: string) => {
    const child = element.elements.find((each) => each.name.toLowerCase() === name);
    return (
      child?.text ??
      [...element.attributes].find(([key]) => key.toLowerCase() === name)?.[1] ??
      ''
    ).trim();
  };
  const [, year, week] = reportName.exec(said('reference')) ?? [];
  const address = said('url');
  if (year !== undefined && week !== undefined && address !== '') {
    return [{ week: Number(year) * 100 + Number(week), address }];
  }
  return element.elements.flatMap(entriesIn);
}
