export type AlertSeverity = 'notice' | 'warning' | 'urgent';

/** What a room found to be standing now. At most one of a kind is open for one subject. */
export interface OpenCondition {
  /** Words of the room that found it, such as `low stock`. */
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: AlertSeverity;
  /** What a reader needs: names of products, lot codes, dates, quantities; never a client. */
  facts: Record<string, unknown>;
}

/** What was looked at: only conditions of these kinds, on these subjects, may be found closed. */
export interface ConditionScope {
  kinds: readonly string[];
  subjects: readonly { kind: string; id: string }[] | 'all';
}

/** An alert that stands open in the record. */
export interface OpenAlert extends OpenCondition {
  id: string;
}

export interface AlertChanges {
  open: OpenCondition[];
  /** Still standing, but with another severity or other facts. */
  refresh: { id: string; severity: AlertSeverity; facts: Record<string, unknown> }[];
  close: OpenAlert[];
}

/**
 * Compares what stands open in the record with what was found standing. A condition outside the scope is neither opened
 * nor closed, so that a look at one product says nothing of another; one found twice is opened once, as it was first
 * found.
 */
export function alertChanges(
  openAlerts: readonly OpenAlert[],
  standing: readonly OpenCondition[],
  scope: ConditionScope,
): AlertChanges {
  const looksAt = inScope(scope);
  const found = new Map<string, OpenCondition>();
  for (const condition of standing) {
    if (!looksAt(condition)) continue;
    const key = keyOf(condition);
    if (!found.has(key)) found.set(key, condition);
  }
  const changes: AlertChanges = { open: [], refresh: [], close: [] };
  for (const alert of openAlerts) {
    if (!looksAt(alert)) continue;
    const key = keyOf(alert);
    const condition = found.get(key);
    found.delete(key);
    if (condition === undefined) changes.close.push(alert);
    else if (condition.severity !== alert.severity || !sameValue(condition.facts, alert.facts)) {
      changes.refresh.push({ id: alert.id, severity: condition.severity, facts: condition.facts });
    }
  }
  changes.open.push(...found.values());
  return changes;
}

function keyOf({ kind, subjectKind, subjectId }: OpenCondition): string {
  return JSON.stringify([kind, subjectKind, subjectId]);
}

function inScope(scope: ConditionScope): (condition: OpenCondition) => boolean {
  const kinds = new Set(scope.kinds);
  if (scope.subjects === 'all') return ({ kind }) => kinds.has(kind);
  const subjects = new Set(scope.subjects.map(({ kind, id }) => JSON.stringify([kind, id])));
  return ({ kind, subjectKind, subjectId }) =>
    kinds.has(kind) && subjects.has(JSON.stringify([subjectKind, subjectId]));
}

/** Equal as JSON: members in any order, a member that is undefined counts as left out. */
function sameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const oneMembers = membersOf(one);
  const otherMembers = membersOf(other);
  return (
    oneMembers.size === otherMembers.size &&
    [...oneMembers].every(
      ([name, value]) => otherMembers.has(name) && sameValue(value, otherMembers.get(name)),
    )
  );
}

function membersOf(value: object): Map<string, unknown> {
  return new Map(Object.entries(value).filter(([, member]) => member !== undefined));
}
