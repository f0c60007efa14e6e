import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alertChanges, type OpenCondition, type StandingAlert, severities } from './open-condition.js';

const lowStock: OpenCondition = {
  kind: 'low stock',
  subjectKind: 'product',
  subjectId: 'umber',
  severity: 'warning',
  facts: { usable: 2, minimum: 3 },
};
const everything = { kinds: ['low stock', 'use-by near'], subjects: 'all' } as const;

const asAlert = (condition: OpenCondition, id = 'alert'): StandingAlert => ({
  ...condition,
  id,
  closedByHand: false,
});
const closedByHand = (condition: OpenCondition, id = 'alert'): StandingAlert => ({
  ...condition,
  id,
  closedByHand: true,
});
const nothing = { open: [], refresh: [], close: [], end: [] };

describe('alertChanges', () => {
  it('opens what is standing and not yet open', () => {
    expect(alertChanges([], [lowStock], everything)).toEqual({ ...nothing, open: [lowStock] });
  });

  it('leaves an open alert alone whose facts are the same in another order', () => {
    const found = { ...lowStock, facts: { minimum: 3, usable: 2, unknown: undefined } };
    expect(alertChanges([asAlert(lowStock)], [found], everything)).toEqual(nothing);
  });

  it('refreshes an open alert whose facts or severity changed, without opening another', () => {
    const found: OpenCondition = { ...lowStock, severity: 'urgent', facts: { usable: 0, minimum: 3 } };
    const alert = asAlert(lowStock);
    expect(alertChanges([alert], [found], everything)).toEqual({
      ...nothing,
      refresh: [{ alert, severity: 'urgent', facts: { usable: 0, minimum: 3 }, change: 'worse' }],
    });
  });

  it('tells worse from milder, and other facts from both', () => {
    const changeTo = (more: Partial<OpenCondition>) =>
      alertChanges([asAlert(lowStock)], [{ ...lowStock, ...more }], everything).refresh.map(
        ({ change }) => change,
      );
    expect(changeTo({ severity: 'urgent' })).toEqual(['worse']);
    expect(changeTo({ severity: 'notice' })).toEqual(['milder']);
    expect(changeTo({ facts: { usable: 1, minimum: 3 } })).toEqual([null]);
  });

  const wider = (scopeNumber: number, more: Partial<OpenCondition> = {}): OpenCondition => ({
    kind: 'low stock',
    subjectKind: 'recall',
    subjectId: 'umber',
    severity: 'urgent',
    facts: { scopeNumber },
    toldAnew: 'scopeNumber',
    ...more,
  });
  const changesTo = (known: OpenCondition, found: OpenCondition) =>
    alertChanges([asAlert(known)], [found], everything).refresh.map(({ change }) => change);

  it('tells as worse what has grown by its mark, though as grave as before or milder', () => {
    expect(changesTo(wider(1), wider(2))).toEqual(['worse']);
    expect(changesTo(wider(1), wider(2, { severity: 'warning' }))).toEqual(['worse']);
    expect(changesTo(wider(2), wider(2))).toEqual([]);
    expect(changesTo(wider(2), wider(1))).toEqual([null]);
  });

  it('takes a mark that was not kept for the first, and facts that are no mark for no news', () => {
    expect(changesTo(wider(1, { facts: {} }), wider(1))).toEqual([null]);
    expect(changesTo(wider(1, { facts: {} }), wider(2))).toEqual(['worse']);
    const { toldAnew: _, ...unmarked } = wider(2);
    expect(changesTo(wider(1), unmarked)).toEqual([null]);
  });

  it('opens anew what somebody closed once its mark has grown, and once only', () => {
    const closed = closedByHand(wider(1));
    expect(alertChanges([closed], [wider(2)], everything)).toEqual({ ...nothing, open: [wider(2)] });
    expect(alertChanges([closed, closedByHand(wider(2), 'second')], [wider(2)], everything)).toEqual(nothing);
  });

  it('leaves closed what somebody closed while it stands on, or is milder or has other facts', () => {
    const closed = [closedByHand(lowStock)];
    expect(alertChanges(closed, [lowStock], everything)).toEqual(nothing);
    expect(alertChanges(closed, [{ ...lowStock, severity: 'notice' }], everything)).toEqual(nothing);
    expect(alertChanges(closed, [{ ...lowStock, facts: { usable: 1 } }], everything)).toEqual(nothing);
  });

  it('opens anew what somebody closed when it is worse than it was then', () => {
    const worse: OpenCondition = { ...lowStock, severity: 'urgent' };
    expect(alertChanges([closedByHand(lowStock)], [worse], everything)).toEqual({
      ...nothing,
      open: [worse],
    });
  });

  it('goes by the worst that somebody closed, when it was closed twice', () => {
    const urgent: OpenCondition = { ...lowStock, severity: 'urgent' };
    const closed = [closedByHand(lowStock, 'first'), closedByHand(urgent, 'second')];
    expect(alertChanges(closed, [urgent], everything)).toEqual(nothing);
    expect(alertChanges([...closed].reverse(), [urgent], everything)).toEqual(nothing);
  });

  it('notes when what somebody closed is over, so that it opens when it comes back', () => {
    const alert = closedByHand(lowStock);
    expect(alertChanges([alert], [], everything)).toEqual({ ...nothing, end: [alert] });
    expect(alertChanges([alert], [], { kinds: ['use-by near'], subjects: 'all' })).toEqual(nothing);
  });

  it('closes the one that got worse and ends the one that was closed before it, both at once', () => {
    const [closed, open] = [closedByHand(lowStock, 'first'), asAlert(lowStock, 'second')];
    expect(alertChanges([closed, open], [], everything)).toEqual({
      ...nothing,
      close: [open],
      end: [closed],
    });
    expect(alertChanges([closed, open], [lowStock], everything)).toEqual(nothing);
  });

  it('tells a list from an object with the same members', () => {
    const listed = { ...lowStock, facts: { codes: ['A'] } };
    const found = { ...lowStock, facts: { codes: { 0: 'A' } } };
    expect(alertChanges([asAlert(listed)], [found], everything).refresh).toHaveLength(1);
  });

  it('closes what no longer stands', () => {
    const alert = asAlert(lowStock);
    expect(alertChanges([alert], [], everything)).toEqual({ ...nothing, close: [alert] });
  });

  it('does not close what was not looked at', () => {
    const alert = asAlert(lowStock);
    expect(alertChanges([alert], [], { kinds: ['use-by near'], subjects: 'all' })).toEqual(nothing);
    const elsewhere = { kinds: ['low stock'], subjects: [{ kind: 'product', id: 'sand' }] };
    expect(alertChanges([alert], [], elsewhere)).toEqual(nothing);
    const otherKind = { kinds: ['low stock'], subjects: [{ kind: 'lot', id: 'umber' }] };
    expect(alertChanges([alert], [], otherKind)).toEqual(nothing);
  });

  it('does not open what lies outside its scope, which it could never close again', () => {
    const scope = { kinds: ['low stock'], subjects: [{ kind: 'product', id: 'sand' }] };
    expect(alertChanges([], [lowStock], scope).open).toEqual([]);
  });

  const key = ({ kind, subjectKind, subjectId }: OpenCondition) => `${kind}/${subjectKind}/${subjectId}`;
  const condition = fc.record({
    kind: fc.constantFrom('low stock', 'use-by near'),
    subjectKind: fc.constantFrom('product', 'lot'),
    subjectId: fc.constantFrom('a', 'b'),
    severity: fc.constantFrom(...severities),
    facts: fc.record({ quantity: fc.integer({ min: 0, max: 3 }) }),
    toldAnew: fc.constantFrom(undefined, 'quantity'),
  });
  const distinct = fc.uniqueArray(condition, { selector: key });
  /** As they are kept: by which fact they are told anew is asked of what is found. */
  const sorted = (all: readonly OpenCondition[]) =>
    all.map(({ toldAnew: _, ...kept }) => kept).sort((a, b) => (key(a) < key(b) ? -1 : 1));

  it('leaves exactly what stands open once its changes are made, whatever was open before', () => {
    fc.assert(
      fc.property(distinct, distinct, (before, standing) => {
        const record = new KnownAlerts(before.map((each, index) => asAlert(each, String(index))));
        record.reconcile(standing);
        expect(sorted(record.open())).toEqual(sorted(standing));
      }),
    );
  });

  it('opens nothing twice, nothing closed by hand while it stands no worse, and ends all that is over', () => {
    const step = fc.oneof(
      distinct.map((standing) => ({ standing })),
      fc.nat(7).map((close) => ({ close })),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        const record = new KnownAlerts([]);
        // What somebody closed of a condition that has stood ever since.
        const closed = new Map<string, StandingAlert[]>();
        const rank = ({ severity }: OpenCondition) => severities.indexOf(severity);
        const isWorse = (found: OpenCondition, than: OpenCondition) =>
          rank(found) > rank(than) ||
          (found.toldAnew !== undefined && Number(found.facts.quantity) > Number(than.facts.quantity));
        for (const each of steps) {
          if ('close' in each) {
            const alert = record.closeByHand(each.close);
            if (alert) closed.set(key(alert), [...(closed.get(key(alert)) ?? []), alert]);
            continue;
          }
          const { standing } = each;
          const openBefore = new Set(record.open().map(key));
          record.reconcile(standing);
          const stands = new Set(standing.map(key));
          for (const name of [...closed.keys()]) if (!stands.has(name)) closed.delete(name);
          const expected = standing.filter(
            (found) =>
              openBefore.has(key(found)) ||
              (closed.get(key(found)) ?? []).every((one) => isWorse(found, one)),
          );
          expect(sorted(record.open())).toEqual(sorted(expected));
          expect(new Set(record.open().map(key)).size).toBe(record.open().length);
          expect(record.standing.every((alert) => stands.has(key(alert)))).toBe(true);
          const again = alertChanges(record.standing, standing, everything);
          expect(again).toEqual(nothing);
        }
      }),
    );
  });
});

/** What stands in the record, changed as the changes say. */
class KnownAlerts {
  private made = 0;

  constructor(public standing: StandingAlert[]) {}

  open(): OpenCondition[] {
    return this.standing
      .filter((alert) => !alert.closedByHand)
      .map(({ id: _, closedByHand: __, ...condition }) => condition);
  }

  reconcile(found: readonly OpenCondition[]): void {
    const { open, refresh, close, end } = alertChanges(this.standing, found, everything);
    const over = new Set([...close, ...end]);
    const refreshed = new Map(refresh.map(({ alert, severity, facts }) => [alert, { severity, facts }]));
    this.standing = [
      ...this.standing
        .filter((alert) => !over.has(alert))
        .map((alert) => ({ ...alert, ...refreshed.get(alert) })),
      ...open.map((condition) => asAlert(condition, `new ${this.made++}`)),
    ];
  }

  closeByHand(which: number): StandingAlert | undefined {
    const open = this.standing.filter((alert) => !alert.closedByHand);
    const alert = open[which % Math.max(open.length, 1)];
    this.standing = this.standing.map((each) => (each === alert ? { ...each, closedByHand: true } : each));
    return alert;
  }
}
