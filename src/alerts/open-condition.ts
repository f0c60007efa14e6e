/** The mildest first. */
export const severities = ['notice', 'warning', 'urgent'] as const;
export type AlertSeverity = (typeof severities)[number];

/** What a room found to be standing now. At most one of a kind is open for one subject. */
export interface OpenCondition {
  /** Words of the room that found it, such as `low stock`. */
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: AlertSeverity;
  /** What a reader needs: names of products, lot codes, dates, quantities; never a client. */
  facts: Record<string, unknown>;
  /**
   * The name of a fact that counts from 1 on, such as the versions of what a recall says: whenever it has grown, the
   * alert counts as worse, though its severity is the same. A fact that is not there counts as 1.
   */
  toldAnew?: string;
}

/** What was looked at: only conditions of these kinds, on these subjects, may be found closed. */
export interface ConditionScope {
  kinds: readonly string[];
  subjects: readonly { kind: string; id: string }[] | 'all';
}

/** An alert whose condition stood when it was last looked at. */
export interface StandingAlert extends OpenCondition {
  id: string;
  /** Somebody closed it while its condition stood. */
  closedByHand: boolean;
}

export interface AlertChanges<Alert extends StandingAlert> {
  open: OpenCondition[];
  /** Still standing, but with another severity or other facts. */
  refresh: {
    alert: Alert;
    severity: AlertSeverity;
    facts: Record<string, unknown>;
    change: 'worse' | 'milder' | null;
  }[];
  close: Alert[];
  /** Closed by hand before, and found over now. */
  end: Alert[];
}

/**
 * Compares what is known of what stood with what was found standing. A condition outside the scope is neither opened nor
 * closed, so that a look at one product says nothing of another; one found twice is opened once, as it was first found.
 * What somebody closed by hand does not open anew while it stands no worse than it was; once it was found over, or is
 * worse, it does.
 */
export function alertChanges<Alert extends StandingAlert>(
  known: readonly Alert[],
  standing: readonly OpenCondition[],
  scope: ConditionScope,
): AlertChanges<Alert> {
  const looksAt = inScope(scope);
  const found = new Map<string, OpenCondition>();
  for (const condition of standing) {
    if (!looksAt(condition)) continue;
    const key = keyOf(condition);
    if (!found.has(key)) found.set(key, condition);
  }
  const changes: AlertChanges<Alert> = { open: [], refresh: [], close: [], end: [] };
  const answered = new Set<string>();
  for (const alert of known) {
    if (!looksAt(alert)) continue;
    const key = keyOf(alert);
    const condition = found.get(key);
    if (condition === undefined) (alert.closedByHand ? changes.end : changes.close).push(alert);
    else if (!alert.closedByHand || changeOf(alert, condition) !== 'worse') answered.add(key);
    if (condition === undefined || alert.closedByHand) continue;
    if (condition.severity === alert.severity && sameValue(condition.facts, alert.facts)) continue;
    const { severity, facts } = condition;
    changes.refresh.push({ alert, severity, facts, change: changeOf(alert, condition) });
  }
  for (const [key, condition] of found) if (!answered.has(key)) changes.open.push(condition);
  return changes;
}

function changeOf(known: OpenCondition, found: OpenCondition): 'worse' | 'milder' | null {
  if (isWorse(found.severity, known.severity) || hasGrown(known, found)) return 'worse';
  return found.severity === known.severity ? null : 'milder';
}

function isWorse(severity: AlertSeverity, than: AlertSeverity): boolean {
  return severities.indexOf(severity) > severities.indexOf(than);
}

function hasGrown(known: OpenCondition, { facts, toldAnew }: OpenCondition): boolean {
  if (toldAnew === undefined) return false;
  const countOf = (count: unknown) => (typeof count === 'number' ? count : 1);
  return countOf(facts[toldAnew]) > countOf(known.facts[toldAnew]);
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
