import { describe, expect, it } from 'vitest';
import { type SaidOfArrival, type SentLine, understandArrival } from './arrived-lines.js';
import { lineBalance } from './transfer-balance.js';

const box: SentLine = { id: 'box', form: 'box', balance: lineBalance({ pieces: 20, microlitres: 0 }, []) };
const bottle: SentLine = {
  id: 'bottle',
  form: 'bottle',
  balance: lineBalance({ pieces: 1, microlitres: 9_000 }, []),
};

function understand(...said: SaidOfArrival[]) {
  return understandArrival([box, bottle], said);
}

describe('what is said of an arrival', () => {
  it('puts faulty pieces into a box of their own and leaves lines that are not named in transit', () => {
    const { arrived, faults, refusals } = understand({
      lineId: 'box',
      pieces: 18,
      faults: [{ kind: 'damaged package', pieces: 2 }],
      placeId: 'shelf',
    });
    expect({ faults, refusals }).toEqual({ faults: [], refusals: [] });
    expect(arrived).toHaveLength(1);
    expect(arrived[0]).toMatchObject({
      lineNumber: 1,
      sent: box,
      became: { arrived: { pieces: 18 }, lost: { pieces: 2 } },
      containers: [
        { form: 'box', pieces: 16, fault: null },
        { form: 'box', pieces: 2, fault: 'damaged package' },
      ],
    });
  });

  it('needs no place when nothing came, and makes nothing of it', () => {
    const { arrived, faults } = understand({ lineId: 'bottle', pieces: 0 });
    expect(faults).toEqual([]);
    expect(arrived).toMatchObject([{ containers: [], became: { lost: { pieces: 1, microlitres: 9_000 } } }]);
  });

  it('tells every fault by its field', () => {
    const { faults, unknownLineIds } = understand(
      { lineId: 'box', pieces: 3 },
      { lineId: 'box', pieces: 3, placeId: 'shelf', faults: [{ kind: 'broken seal', pieces: 4 }] },
      { lineId: 'bottle', pieces: 2, placeId: 'shelf' },
      { lineId: 'elsewhere', pieces: 1, placeId: 'shelf' },
    );
    expect(unknownLineIds).toEqual(['elsewhere']);
    expect(faults.map(({ field, code }) => [field, code])).toEqual([
      ['lines.0.placeId', 'invalid-fields'],
      ['lines.1.lineId', 'invalid-fields'],
      ['lines.1.faults', 'unusable-quantity'],
      ['lines.2.pieces', 'unusable-quantity'],
    ]);
  });

  it('tells what contradicts the record line by line', () => {
    const { refusals, arrived } = understand(
      { lineId: 'box', pieces: 20, placeId: 'shelf' },
      { lineId: 'bottle', pieces: 1, placeId: 'shelf', turnedUp: true },
    );
    expect(arrived).toHaveLength(1);
    expect(refusals).toEqual([
      { lineNumber: 2, lineId: 'bottle', message: expect.stringContaining('recorded as lost') },
    ]);
  });
});
