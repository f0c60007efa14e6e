import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type JoinedLot,
  type LotReceiptReason,
  lotReasonsAtReceipt,
  lotReasonsOnJoining,
  pieceFaults,
  plannedContainers,
} from './receipt-rules.js';

describe('what is put aside at receipt', () => {
  const sound = { codeState: 'printed', useBy: '2026-11-25' } as const;

  it('is nothing of a lot that is printed and in date, the last day included', () => {
    // Usable through the end of the day shown (ISO 15223-1:2021, 5.1.4 [S]).
    expect(lotReasonsAtReceipt(sound, '2026-11-25')).toEqual([]);
  });

  it('is a lot whose last day was yesterday', () => {
    expect(lotReasonsAtReceipt(sound, '2026-11-26')).toEqual(['already past']);
  });

  it('is a lot without code or date, for each reason apart', () => {
    expect(lotReasonsAtReceipt({ codeState: 'none printed', useBy: null }, '2026-11-25')).toEqual([
      'no lot printed',
      'no use-by printed',
    ]);
    expect(lotReasonsAtReceipt({ codeState: 'unreadable', useBy: '2026-01-31' }, '2026-11-25')).toEqual([
      'lot unreadable',
      'already past',
    ]);
  });
});

describe('what is put aside when goods join a lot', () => {
  const joining = (reason: LotReceiptReason, more: Partial<JoinedLot> = {}) =>
    lotReasonsOnJoining({ reasons: [reason], reasonsBefore: [reason], open: [], released: [], ...more });

  it('is the lot for what its label lacks, until a person decided', () => {
    const missing = 'no use-by printed';
    expect(joining(missing)).toEqual({ onLot: [missing], onArrivals: [] });
    expect(joining(missing, { open: [missing] })).toEqual({ onLot: [], onArrivals: [] });
    expect(joining(missing, { released: [missing] })).toEqual({ onLot: [], onArrivals: [] });
    expect(joining(missing, { released: ['doubt'] }).onLot).toEqual([missing]);
  });

  it('is what arrived when the date has passed, again and again', () => {
    const past = 'already past';
    expect(joining(past)).toEqual({ onLot: [], onArrivals: [past] });
    expect(joining(past, { released: [past] })).toEqual({ onLot: [], onArrivals: [past] });
    expect(joining(past, { open: [past] })).toEqual({ onLot: [], onArrivals: [] });
  });

  it('is the lot for what a correction of its date brings up, whatever was decided before', () => {
    for (const reason of ['no use-by printed', 'already past'] as const) {
      const corrected = { reasonsBefore: [], released: [reason] };
      expect(joining(reason, corrected)).toEqual({ onLot: [reason], onArrivals: [] });
    }
  });
});

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
