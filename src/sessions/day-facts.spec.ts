import { describe, expect, it } from 'vitest';
import { type DayFacts, type DeviceJudgement, judgeOnDevice, type ShownToTray } from './day-facts.js';

const gtin = '09506000134352';

const facts: DayFacts = {
  studioId: 'studio',
  asOf: '2026-03-10T07:00:00.000Z',
  day: '2026-03-10',
  timeZone: 'Europe/Vienna',
  assumedOpenedLife: null,
  sessions: [
    {
      id: 'here',
      state: 'in setup',
      clientReference: 'C7K2',
      procedureName: 'Powder brows',
      artistId: 'mira',
      visitKind: 'refresh',
      plannedStart: null,
      touchUpFromDays: 30,
      touchUpToDays: 40,
      kitItems: null,
    },
  ],
  containers: [
    {
      containerId: 'box-1',
      lotId: 'lot-1',
      productId: 'liner',
      form: 'box',
      labelCode: 'A00000000000',
      state: 'sealed',
      ownerId: null,
      openedAt: null,
      receivedAt: '2026-01-05T08:00:00.000Z',
      pieces: 2,
      code: 'N-1',
      useBy: '2027-12-31',
      kind: 'cartridge',
      makerName: 'Corvin',
      productName: '1207RL',
      shade: null,
      stockForm: 'pieces',
      openedLife: null,
      usableThrough: null,
      holds: [],
    },
  ],
  labels: [],
  gtins: [{ gtin, productId: 'liner', contentCount: 1 }],
  lotCodes: [{ code: 'N-1', lotId: 'lot-1', productId: 'liner', useBy: '2027-12-31' }],
  lines: [],
  usedSerials: [{ productId: 'liner', serial: 'S1' }],
  pools: [],
};

const judge = (shown: ShownToTray, known = facts, sessionId = 'here') =>
  judgeOnDevice(known, sessionId, shown, { id: 'scan', at: '2026-03-10T09:00:00.000Z' });
const verdictOf = (judgement: DeviceJudgement) =>
  judgement.kind === 'judged'
    ? [judgement.outcome.verdict, ...judgement.outcome.reasons.map(({ code }) => code)]
    : [judgement.kind];

describe('judging on a device by the facts of the day', () => {
  it('puts what is admitted on the tray as a line of its own', () => {
    const judgement = judge({ symbol: 'N-1' });
    expect(judgement).toMatchObject({
      knownBy: 'typed',
      line: {
        id: 'scan',
        sessionId: 'here',
        containerId: 'box-1',
        pieces: 1,
        admittedAt: '2026-03-10T09:00:00.000Z',
      },
    });
  });

  it('asks before a second piece, and counts what other trays hold', () => {
    const first = judge({ symbol: 'N-1' });
    if (first.kind !== 'judged' || !first.line) throw new Error('It was not admitted.');
    const lines = [first.line];
    expect(verdictOf(judge({ symbol: 'N-1' }, { ...facts, lines }))).toEqual(['question', 'another one?']);
    expect(verdictOf(judge({ symbol: 'N-1', another: true }, { ...facts, lines }))).toEqual(['admitted']);
    const elsewhere = [1, 2].map((each) => ({ ...first.line, id: `line-${each}`, sessionId: 'elsewhere' }));
    expect(verdictOf(judge({ symbol: 'N-1' }, { ...facts, lines: elsewhere as typeof lines }))).toEqual([
      'refused',
      'none left',
    ]);
  });

  it('uses a serial once, whether it was used or lies on a tray', () => {
    const symbol = `(01)${gtin}(10)N-1(21)`;
    expect(verdictOf(judge({ symbol: `${symbol}S1` }))).toEqual(['refused', 'already used']);
    const first = judge({ symbol: `${symbol}S2` });
    if (first.kind !== 'judged' || !first.line) throw new Error('It was not admitted.');
    expect(first.line.serial).toBe('S2');
    expect(verdictOf(judge({ symbol: `${symbol}S2` }, { ...facts, lines: [first.line] }))).toEqual([
      'refused',
      'already used',
    ]);
  });

  it.each<ShownToTray>([
    { symbol: 'unheard of' },
    { symbol: '(01)09506000134353' },
    { containerId: 'box-9' },
    { productId: 'round' },
    { symbol: 'N-1', containerId: 'box-9' },
    { symbol: 'N-1', lotId: 'lot-9' },
  ])('leaves to the service what it does not know: %j', (shown) => {
    expect(verdictOf(judge(shown))).toEqual(['not known']);
  });

  it('knows no session but those of the day', () => {
    expect(verdictOf(judge({ symbol: 'N-1' }, facts, 'elsewhere'))).toEqual(['not known']);
  });

  it.each<ShownToTray>([{ containerId: 'box-1' }, { lotId: 'lot-1' }, { symbol: 'N-1', lotId: 'lot-1' }])(
    'admits what was picked: %j',
    (shown) => {
      expect(verdictOf(judge(shown))).toEqual(['admitted']);
    },
  );

  it('asks for the lot of a picked product', () => {
    expect(verdictOf(judge({ productId: 'liner' }))).toEqual(['question', 'which lot?']);
  });
});
