import type { AlertView } from '../../../alerts/alerts.views.js';

/** Whether the page of a path is about an alert, or about what the alert is about: whoever looks at it knows. */
export function isShownAt(
  path: string,
  { id, subjectKind, subjectId }: Pick<AlertView, 'id' | 'subjectKind' | 'subjectId'>,
): boolean {
  const parts = path.split('/');
  // Every page is one of the studio.
  return parts.includes(id) || (subjectKind !== 'studio' && parts.includes(subjectId));
}
