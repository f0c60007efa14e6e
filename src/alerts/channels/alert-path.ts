/** What an alert is about, and of which kind it is. */
export interface AlertSubject {
  kind: string;
  subjectKind: string;
  subjectId: string;
  facts: Readonly<Record<string, unknown>>;
}

/**
 * The page of the app on which something can be done about an alert, from the root; the day's page when there is none.
 * `src/web/today/path-of-alert.ts` says the same to the pages; `src/web/today/path-of-alert.spec.ts` compares them.
 */
export function alertPath(studioId: string, { kind, subjectKind, subjectId, facts }: AlertSubject): string {
  const studio = `/studios/${studioId}`;
  switch (subjectKind) {
    case 'lot':
      return `${studio}/stock/lots/${subjectId}`;
    case 'container':
      return `${studio}/stock/containers/${subjectId}`;
    case 'product':
    case 'configuration pool':
      return `${studio}/stock/levels`;
    case 'use':
      return typeof facts.sessionId === 'string'
        ? `${studio}/records/sessions/${facts.sessionId}`
        : `${studio}/today`;
    case 'session':
      return `${studio}/records/sessions/${subjectId}`;
    case 'recall':
      return `${studio}/recalls/${subjectId}`;
    case 'recall notice':
      return `${studio}/recalls/notices`;
    case 'studio':
      if (kind === 'drill due') return `${studio}/recalls/drills`;
      return kind.startsWith('backup') ? `${studio}/records/backups` : `${studio}/today`;
    default:
      return `${studio}/today`;
  }
}
