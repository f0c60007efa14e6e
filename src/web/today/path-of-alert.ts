import type { AlertView } from '../../alerts/alerts.views.js';
import { pathOf } from '../frame/places.js';

/** The page on which something can be done about an alert; undefined when there is none. */
export function pathOfAlert(
  studioId: string,
  { kind, subjectKind, subjectId, facts }: Pick<AlertView, 'kind' | 'subjectKind' | 'subjectId' | 'facts'>,
): string | undefined {
  const stock = { studioId, area: 'stock' } as const;
  const records = { studioId, area: 'records' } as const;
  const recalls = { studioId, area: 'recalls' } as const;
  switch (subjectKind) {
    case 'lot':
      return pathOf(stock, 'lots', subjectId);
    case 'container':
      return pathOf(stock, 'containers', subjectId);
    case 'product':
    case 'configuration pool':
      return pathOf(stock, 'levels');
    case 'use':
      return typeof facts.sessionId === 'string' ? pathOf(records, 'sessions', facts.sessionId) : undefined;
    case 'recall':
      return pathOf(recalls, subjectId);
    case 'recall notice':
      return pathOf(recalls, 'notices');
    case 'studio':
      return kind === 'drill due' ? pathOf(recalls, 'drills') : pathOf(records, 'backups');
    default:
      return undefined;
  }
}
