import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  mostLinesOfPart,
  type SummaryLine,
  type SummaryMaterial,
  summaryOf,
  summaryPartNames,
} from './summary-choice.js';

const day = '2026-06-15';

function line(facts: Partial<SummaryLine> = {}): SummaryLine {
  return {
    alertId: 'alert',
    kind: 'use-by near',
    subjectKind: 'lot',
    subjectId: 'lot',
    severity: 'warning',
    facts: {},
    ...facts,
  };
}

/** Material in which nothing was too much to be read. */
function part(name: SummaryMaterial['name'], lines: SummaryLine[], dayFacts: string[] = []): SummaryMaterial {
  return { name, dayFacts, lines, counts: lines.map(({ kind, severity }) => ({ kind, severity, count: 1 })) };
}

const usableThrough = (lastDay: string, alertId: string) => line({ alertId, facts: { lastDay } });
const ids = (lines: readonly SummaryLine[] = []) => lines.map(({ alertId }) => alertId);

describe('a morning summary', () => {
  it('says nothing where nothing stands open', () => {
    expect(summaryOf(day, [part('order', [])], [])).toEqual({ day, parts: [] });
  });

  it('tells what ends first before what ends later, and what has no day last', () => {
    const lines = [
      usableThrough('2026-07-02', 'later'),
      line({ alertId: 'never' }),
      usableThrough('2026-06-20', 'soon'),
    ];
    const { parts } = summaryOf(day, [part('use first', lines, ['lastDay'])], []);
    expect(ids(parts[0]?.lines)).toEqual(['soon', 'later', 'never']);
  });

  it('tells the worst first where no day decides', () => {
    const lines = [
      line({ alertId: 'notice', severity: 'notice' }),
      line({ alertId: 'one' }),
      line({ alertId: 'other' }),
      line({ alertId: 'urgent', severity: 'urgent' }),
    ];
    const { parts } = summaryOf(day, [part('order', lines)], []);
    expect(ids(parts[0]?.lines)).toEqual(['urgent', 'one', 'other', 'notice']);
  });

  it('leaves out the kinds a person leaves out, unless they are urgent', () => {
    const lines = [line({ alertId: 'urgent', severity: 'urgent' }), line({ alertId: 'warning' })];
    const { parts } = summaryOf(day, [part('use first', lines)], ['use-by near']);
    expect(parts).toMatchObject([{ lines: [{ alertId: 'urgent' }], more: 0 }]);
  });

  it('says how many more there are, also of those that were not read', () => {
    const lines = Array.from({ length: 25 }, (_, index) => line({ alertId: `${index}` }));
    const material = {
      ...part('discard', lines),
      counts: [{ kind: 'use-by near', severity: 'warning' as const, count: 3_000 }],
    };
    const [discard] = summaryOf(day, [material], []).parts;
    expect([discard?.lines.length, discard?.more]).toEqual([mostLinesOfPart, 2_980]);
  });

  const anyLine = fc.record({
    alertId: fc.uuid(),
    kind: fc.constantFrom('a', 'b', 'c'),
    subjectKind: fc.constant('lot'),
    subjectId: fc.uuid(),
    severity: fc.constantFrom('notice' as const, 'warning' as const, 'urgent' as const),
    facts: fc.record({ lastDay: fc.constantFrom('2026-06-15', '2026-06-16', null) }),
  });
  const anyMaterial = fc
    .uniqueArray(fc.constantFrom(...summaryPartNames), { maxLength: 5 })
    .chain((names) =>
      fc.tuple(
        ...names.map((name) =>
          fc.array(anyLine, { maxLength: 40 }).map((lines) => part(name, lines, ['lastDay'])),
        ),
      ),
    );

  it('counts each alert that is told or said to be more exactly once, and orders parts always alike', () => {
    fc.assert(
      fc.property(anyMaterial, fc.subarray(['a', 'b', 'c']), (material, leftOut) => {
        const { parts } = summaryOf(day, material, leftOut);
        const told = material
          .flatMap(({ lines }) => lines)
          .filter(({ kind, severity }) => severity === 'urgent' || !leftOut.includes(kind));
        expect(parts.reduce((sum, { lines, more }) => sum + lines.length + more, 0)).toBe(told.length);
        expect(parts.every(({ lines }) => lines.length > 0 && lines.length <= mostLinesOfPart)).toBe(true);
        const names = parts.map(({ name }) => name);
        expect(names).toEqual(summaryPartNames.filter((name) => names.includes(name)));
      }),
    );
  });
});
