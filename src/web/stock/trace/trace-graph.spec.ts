import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { traceGraph } from './trace-graph.js';
import { traceNodes, usesOfFirstSessions } from './trace-nodes.js';

type Use = Parameters<typeof traceNodes>[0][number];
const sizes = { nodeWidth: 160, nodeHeight: 48, acrossGap: 60, downGap: 12 };

const lot = (number: number, direct: boolean): Use['lots'][number] => ({
  ...{ lotId: `lot${number}`, direct, makerName: 'Halden', productName: 'Umber', shade: null },
  ...{ lotCode: `L-${number}`, useBy: null, shareMicrolitres: null },
});

const use = (given: {
  lot: number;
  parents?: number[];
  session: number;
  mix?: number;
  reversed?: boolean;
}): Use => ({
  sessionId: `session${given.session}`,
  clientReference: `REF-${given.session}`,
  occurredAt: '2026-11-25T08:42:00Z',
  lotId: `lot${given.lot}`,
  lotCode: `L-${given.lot}`,
  containerId: `container${given.lot}`,
  productName: 'Umber',
  shade: 'Warm 02',
  mixId: given.mix === undefined ? null : `mix${given.session}-${given.mix}`,
  reversedAt: given.reversed === true ? '2026-11-25T09:00:00Z' : null,
  lots: [lot(given.lot, true), ...(given.parents ?? []).map((number) => lot(number, false))],
});

const drawn = (uses: Use[]) => traceGraph(traceNodes(uses), sizes);
const layersOf = (uses: Use[]) => {
  const layers: string[][] = [];
  for (const { layer, kind } of drawn(uses).nodes) layers[layer] = [...(layers[layer] ?? []), kind];
  return layers;
};

describe('the graph of a trace', () => {
  it('leads from a lot by its bottle to a session, and by a mix where there was one', () => {
    expect(layersOf([use({ lot: 1, session: 1 })])).toEqual([['lot'], ['container'], ['session']]);
    expect(layersOf([use({ lot: 1, session: 1, mix: 1 })])).toEqual([
      ['lot'],
      ['container'],
      ['mix'],
      ['session'],
    ]);
  });

  it('leads through a house blend, and through a blend of blends', () => {
    const poured = [use({ lot: 3, parents: [1, 2], session: 1 }), use({ lot: 2, parents: [1], session: 2 })];
    expect(layersOf(poured)).toEqual([
      ['lot'],
      ['blend'],
      ['blend'],
      ['container', 'container'],
      ['session', 'session'],
    ]);
  });

  it('draws a lot once that was taken in hand and was in a blend too', () => {
    const { nodes } = drawn([use({ lot: 1, session: 1 }), use({ lot: 2, parents: [1], session: 2 })]);
    expect(nodes.filter(({ id }) => id === 'lot1')).toHaveLength(1);
  });

  it('marks a way as taken back only when every use behind it was', () => {
    const mistake = use({ lot: 1, session: 1, reversed: true });
    expect(drawn([mistake]).edges.map(({ isReversed }) => isReversed)).toEqual([true, true]);
    const { edges } = drawn([
      mistake,
      use({ lot: 1, session: 1 }),
      use({ lot: 1, session: 2, reversed: true }),
    ]);
    expect(edges.map(({ to, isReversed }) => [to, isReversed])).toEqual([
      ['container container1', false],
      ['session session1', false],
      ['session session2', true],
    ]);
  });

  it('draws the first sessions of many whole', () => {
    const many = [1, 2, 1, 3, 2].map((session) => use({ lot: 1, session }));
    const first = usesOfFirstSessions(many, 2);
    expect(first.sessions).toBe(2);
    expect(first.uses.map(({ sessionId }) => sessionId)).toEqual([
      'session1',
      'session2',
      'session1',
      'session2',
    ]);
    expect(usesOfFirstSessions(many, 9).sessions).toBe(3);
  });

  const arbitraryUse = fc
    .record({
      lot: fc.integer({ min: 0, max: 12 }),
      // A blend is made of lots that were there before it.
      parentOffsets: fc.uniqueArray(fc.integer({ min: 1, max: 5 }), { maxLength: 3 }),
      session: fc.integer({ min: 0, max: 20 }),
      mix: fc.option(fc.integer({ min: 0, max: 1 }), { nil: undefined }),
      reversed: fc.boolean(),
    })
    .map(({ parentOffsets, mix, ...given }) =>
      use({
        ...given,
        ...(mix !== undefined && { mix }),
        parents: parentOffsets.map((offset) => given.lot - offset).filter((number) => number >= 0),
      }),
    );

  it('draws every edge of the answer once, no node twice, from left to right, and nothing on anything', () => {
    fc.assert(
      fc.property(fc.array(arbitraryUse, { maxLength: 60 }), (uses) => {
        const { nodes, edges, width, height } = drawn(uses);
        const byKey = new Map(nodes.map((node) => [node.key, node]));
        expect(byKey.size).toBe(nodes.length);

        // By the answer itself, not by what the graph was made of.
        const expected = new Set(
          uses.flatMap(({ lotId, containerId, mixId, sessionId, lots }) => [
            ...lots.filter((one) => one.lotId !== lotId).map((one) => `lot ${one.lotId}>lot ${lotId}`),
            `lot ${lotId}>container ${containerId}`,
            ...(mixId === null
              ? [`container ${containerId}>session ${sessionId}`]
              : [`container ${containerId}>mix ${mixId}`, `mix ${mixId}>session ${sessionId}`]),
          ]),
        );
        expect(edges.map(({ from, to }) => `${from}>${to}`).sort()).toEqual([...expected].sort());

        for (const edge of edges) {
          const from = byKey.get(edge.from);
          const to = byKey.get(edge.to);
          expect((from?.layer ?? 0) < (to?.layer ?? 0)).toBe(true);
          const xs = edge.points.map(({ x }) => x);
          expect(xs).toEqual([...new Set(xs)].sort((one, other) => one - other));
          expect(xs).toHaveLength(2 * ((to?.layer ?? 0) - (from?.layer ?? 0)));
          // Where it passes a layer it touches no node.
          for (const { x, y } of edge.points.slice(1, -1)) {
            const touched = nodes.filter(
              (node) =>
                x >= node.x && x <= node.x + sizes.nodeWidth && y >= node.y && y <= node.y + sizes.nodeHeight,
            );
            expect(touched).toEqual([]);
          }
        }
        for (const [index, one] of nodes.entries()) {
          expect(one.x >= 0 && one.x + sizes.nodeWidth <= width).toBe(true);
          expect(one.y >= 0 && one.y + sizes.nodeHeight <= height).toBe(true);
          for (const other of nodes.slice(index + 1)) {
            const apart =
              Math.abs(one.x - other.x) >= sizes.nodeWidth || Math.abs(one.y - other.y) >= sizes.nodeHeight;
            expect(apart, `${one.key} lies on ${other.key}`).toBe(true);
          }
        }
      }),
    );
  });
});
