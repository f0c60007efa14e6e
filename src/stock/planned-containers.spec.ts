import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceFaults, plannedContainers } from './planned-containers.js';

describe('the containers of a received line', () => {
  it('are one bottle for each piece of what is opened and used over time', () => {
    const planned = plannedContainers('container', 3, 1, [{ kind: 'broken seal', pieces: 1 }]);
    expect(planned).toEqual({
      containers: [
        { form: 'bottle', pieces: 1, fault: null },
        { form: 'bottle', pieces: 1, fault: null },
        { form: 'bottle', pieces: 1, fault: 'broken seal' },
      ],
    });
  });

  it('are one box of pieces, with the faulty ones apart', () => {
    const planned = plannedContainers('pieces', 20, 1, [{ kind: 'damaged package', pieces: 2 }]);
    expect(planned).toEqual({
      containers: [
        { form: 'box', pieces: 18, fault: null },
        { form: 'box', pieces: 2, fault: 'damaged package' },
      ],
    });
  });

  it('are a box for each pack that came, one of them with what a broken pack still holds', () => {
    expect(plannedContainers('pieces', 60, 20, [])).toEqual({
      containers: Array.from({ length: 3 }, () => ({ form: 'box', pieces: 20, fault: null })),
    });
    expect(plannedContainers('pieces', 40, 20, [{ kind: 'broken seal', pieces: 25 }])).toEqual({
      containers: [
        { form: 'box', pieces: 15, fault: null },
        { form: 'box', pieces: 20, fault: 'broken seal' },
        { form: 'box', pieces: 5, fault: 'broken seal' },
      ],
    });
  });

  it('leave no empty box when every piece is faulty', () => {
    const planned = plannedContainers('pieces', 5, 1, [{ kind: 'damaged package', pieces: 5 }]);
    expect(planned).toEqual({ containers: [{ form: 'box', pieces: 5, fault: 'damaged package' }] });
  });

  it('hold together exactly the pieces that came, or say how many too many are faulty', () => {
    const faults = fc.array(
      fc.record({ kind: fc.constantFrom(...pieceFaults), pieces: fc.integer({ min: 1, max: 60 }) }),
      { maxLength: 3 },
    );
    fc.assert(
      fc.property(
        fc.constantFrom('container' as const, 'pieces' as const),
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 1, max: 40 }),
        faults,
        (form, pieces, packPieces, given) => {
          const faulty = given.reduce((sum, fault) => sum + fault.pieces, 0);
          const planned = plannedContainers(form, pieces, packPieces, given);
          if ('faultyPieces' in planned) {
            expect(faulty).toBeGreaterThan(pieces);
            expect(planned.faultyPieces).toBe(faulty);
            return;
          }
          const held = (fault: string | null) =>
            planned.containers
              .filter((container) => container.fault === fault)
              .reduce((sum, container) => sum + container.pieces, 0);
          expect(held(null)).toBe(pieces - faulty);
          for (const kind of pieceFaults) {
            const named = given.filter((fault) => fault.kind === kind);
            expect(held(kind)).toBe(named.reduce((sum, fault) => sum + fault.pieces, 0));
          }
          expect(planned.containers.every((container) => container.pieces > 0)).toBe(true);
          const largest = packPieces > 1 ? packPieces : pieces;
          expect(planned.containers.every((container) => container.pieces <= largest)).toBe(true);
        },
      ),
    );
  });
});
