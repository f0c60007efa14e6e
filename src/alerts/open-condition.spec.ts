import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alertChanges, type OpenAlert, type OpenCondition } from './open-condition.js';

const lowStock: OpenCondition = {
  kind: 'low stock',
  subjectKind: 'product',
  subjectId: 'umber',
  severity: 'warning',
  facts: { usable: 2, minimum: 3 },
};
const everything = { kinds: ['low stock', 'use-by near'], subjects: 'all' } as const;

const asAlert = (condition: OpenCondition, id = 'alert'): OpenAlert => ({ ...condition, id });

describe('alertChanges', () => {
  it('opens what is standing and not yet open', () => {
    expect(alertChanges([], [lowStock], everything)).toEqual({ open: [lowStock], refresh: [], close: [] });
  });

  it('leaves an open alert alone whose facts are the same in another order', () => {
    const found = { ...lowStock, facts: { minimum: 3, usable: 2, unknown: undefined } };
    expect(alertChanges([asAlert(lowStock)], [found], everything)).toEqual({
      open: [],
      refresh: [],
      close: [],
    });
  });

  it('refreshes an open alert whose facts or severity changed, without opening another', () => {
    const found: OpenCondition = { ...lowStock, severity: 'urgent', facts: { usable: 0, minimum: 3 } };
    expect(alertChanges([asAlert(lowStock)], [found], everything)).toEqual({
      open: [],
      refresh: [{ id: 'alert', severity: 'urgent', facts: { usable: 0, minimum: 3 } }],
      close: [],
    });
  });

  it('tells a list from an object with the same members', () => {
    const listed = { ...lowStock, facts: { codes: ['A'] } };
    const found = { ...lowStock, facts: { codes: { 0: 'A' } } };
    expect(alertChanges([asAlert(listed)], [found], everything).refresh).toHaveLength(1);
  });

  it('closes what no longer stands', () => {
    const alert = asAlert(lowStock);
    expect(alertChanges([alert], [], everything)).toEqual({ open: [], refresh: [], close: [alert] });
  });

  it('does not close what was not looked at', () => {
    const alert = asAlert(lowStock);
    const nothing = { open: [], refresh: [], close: [] };
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

  it('leaves exactly what stands open once its changes are made, whatever was open before', () => {
    const condition = fc.record({
      kind: fc.constantFrom('low stock', 'use-by near'),
      subjectKind: fc.constantFrom('product', 'lot'),
      subjectId: fc.constantFrom('a', 'b', 'c'),
      severity: fc.constantFrom('notice' as const, 'warning' as const, 'urgent' as const),
      facts: fc.record({ quantity: fc.integer({ min: 0, max: 3 }) }),
    });
    const key = ({ kind, subjectKind, subjectId }: OpenCondition) => `${kind}/${subjectKind}/${subjectId}`;
    const distinct = fc.uniqueArray(condition, { selector: key });
    fc.assert(
      fc.property(distinct, distinct, (before, standing) => {
        const openAlerts = before.map((each, index) => asAlert(each, String(index)));
        const { open, refresh, close } = alertChanges(openAlerts, standing, everything);
        const closed = new Set(close.map(({ id }) => id));
        const refreshed = new Map(refresh.map((change) => [change.id, change]));
        const after = [
          ...openAlerts
            .filter(({ id }) => !closed.has(id))
            .map(({ id, ...each }) => ({
              ...each,
              severity: refreshed.get(id)?.severity ?? each.severity,
              facts: refreshed.get(id)?.facts ?? each.facts,
            })),
          ...open,
        ];
        const sorted = (all: OpenCondition[]) => [...all].sort((a, b) => (key(a) < key(b) ? -1 : 1));
        expect(sorted(after)).toEqual(sorted(standing));
      }),
    );
  });
});
