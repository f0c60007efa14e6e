import { request, requestFile } from '../../service/request.js';

/** What a trace starts from. */
export interface TraceSource {
  kind: 'lot' | 'session';
  id: string;
}

const usesOnPage = 50;

export function showTrace(
  studioId: string,
  { kind, id }: TraceSource,
  after: string | undefined,
  limit = usesOnPage,
) {
  const page = { limit, ...(after !== undefined && { after }) };
  return kind === 'lot'
    ? request('GET', '/studios/{studioId}/lots/{lotId}/trace', { studioId, lotId: id, ...page })
    : request('GET', '/studios/{studioId}/sessions/{sessionId}/trace', { studioId, sessionId: id, ...page });
}

export const traceAsCsv = (studioId: string, lotId: string) =>
  requestFile('GET', '/studios/{studioId}/lots/{lotId}/trace.csv', { studioId, lotId });
