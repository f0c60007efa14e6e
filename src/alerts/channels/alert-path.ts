/** What an alert is about, and of which kind it is. */
export interface AlertSubject {
  kind: string;
  subjectKind: string;
  subjectId: string;
  facts: Readonly<Record<string, unknown>>;
}

/** The page of the app on which something can be done about an alert, from the root; undefined when there is none. */
export function alertPath(
  studioId: string,
  { kind, subjectKind, subjectId, facts }: AlertSubject,
): string | undefined {
  const studio = `/studios/${studioId}`;
  switch (subjectKind) {
    case 'lot':
      return `${studio}/stock/lots/${subjectId}`;
    case 'container':
      return `${studio}/stock/containers/${subjectId}`;
    case 'product':
    case 'configuration pool':
      return `${studio}/stock/levels`;
    case 'session':
      return `${studio}/records/sessions/${subjectId}`;
    case 'use':
      return typeof facts.sessionId === 'string'
        ? `${studio}/records/sessions/${facts.sessionId}`
        : undefined;
    case 'expected delivery':
      return `${studio}/stock/expected`;
    case 'supplier':
      return `${studio}/ordering`;
    case 'purchase order':
      return `${studio}/ordering/orders/${subjectId}`;
    case 'recall':
      return `${studio}/recalls/${subjectId}`;
    case 'recall notice':
      return `${studio}/recalls/notices`;
    case 'studio':
      return ofStudio[kind] === undefined ? undefined : `${studio}/${ofStudio[kind]}`;
    default:
      return undefined;
  }
}

/** What is about the studio as a whole, by its kind. */
const ofStudio: Readonly<Record<string, string | undefined>> = {
  'drill due': 'recalls/drills',
  'backup failed': 'records/backups',
  'backup overdue': 'records/backups',
  'queue unhealthy': 'alerts/not-sent',
  'no plan made': 'ordering',
};
