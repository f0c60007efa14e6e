import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { admit, refusalCodes, safetyRefusals, type TrayFacts, warningCodes } from './tray-rules.js';
import type { TrayThing } from './tray-thing.js';

const timeZone = 'Europe/Vienna';
const at = '2026-03-10T10:00:00.000Z';

function bottle(given: Partial<TrayThing> = {}): TrayThing {
  return {
    containerId: 'bottle-1',
    lotId: 'lot-1',
    productId: 'umber',
    label: 'Halden Umber',
    labelCode: 'A00000000000',
    lotCode: 'U12',
    stockForm: 'container',
    isPigment: true,
    state: 'opened',
    receivedAt: '2026-01-05T08:00:00.000Z',
    ownerId: null,
    pieces: 1,
    reservedPieces: 0,
    holds: [],
    useByLastDay: '2027-12-31',
    openedAt: '2026-03-01T09:00:00.000Z',
    openedLife: 'P12M',
    assumedOpenedLife: 'P6M',
    usableThrough: null,
    ...given,
  };
}

function box(given: Partial<TrayThing> = {}): TrayThing {
  return bottle({
    containerId: 'box-1',
    productId: 'liner',
    label: 'Corvin 1207RL',
    lotCode: 'C7',
    stockForm: 'pieces',
    isPigment: false,
    state: 'sealed',
    openedAt: null,
    openedLife: null,
    pieces: 10,
    ...given,
  });
}

function facts(thing: TrayThing, given: Partial<TrayFacts> = {}): TrayFacts {
  return {
    thing,
    others: [],
    symbolUseBy: null,
    symbolIsOwnLabel: false,
    serialTaken: false,
    linesOnTray: 0,
    another: false,
    hasSerial: false,
    onKitList: 'there is no kit list',
    artistId: 'mira',
    touchUpBy: null,
    ...given,
  };
}

const judge = (given: TrayFacts) => admit(given, at, timeZone);
const codes = (given: TrayFacts) => judge(given).reasons.map((reason) => reason.code);

describe('admission to a tray', () => {
  it('admits an opened bottle within its dates, which stays on the shelf’s book', () => {
    const decision = judge(facts(bottle()));
    expect(decision).toMatchObject({
      verdict: 'admitted',
      reasons: [],
      piecesAdded: 0,
      addsLine: true,
      offers: [],
    });
  });

  it('admits a cartridge and reserves one piece', () => {
    expect(judge(facts(box()))).toMatchObject({ verdict: 'admitted', piecesAdded: 1, addsLine: true });
  });

  it('offers to open a sealed bottle', () => {
    expect(judge(facts(bottle({ state: 'sealed', openedAt: null }))).offers).toEqual(['open']);
  });

  // Use-by: usable through the end of the day shown (ISO 15223-1:2021, 5.1.4 [S]).
  it('admits a bottle on the last minute of its use-by day in the studio, and refuses it on the next', () => {
    const thing = bottle({ useByLastDay: '2026-03-10' });
    expect(admit(facts(thing), '2026-03-10T22:59:00.000Z', timeZone).verdict).toBe('admitted');
    const refused = admit(facts(thing), '2026-03-10T23:00:00.000Z', timeZone);
    expect(refused.verdict).toBe('refused');
    expect(refused.reasons[0]).toMatchObject({ code: 'expired', facts: { lastDay: '2026-03-10' } });
  });

  it('refuses a bottle opened longer ago than its shelf life and says whose life was counted', () => {
    const ofLabel = judge(facts(bottle({ openedAt: '2025-01-10T10:00:00.000Z' })));
    expect(ofLabel.reasons[0]).toMatchObject({
      code: 'open too long',
      message: expect.stringContaining("the label's opened life"),
      facts: { lastDay: '2026-01-10', openedLifeFrom: 'label' },
    });
    const assumed = judge(facts(bottle({ openedAt: '2025-08-31T10:00:00.000Z', openedLife: null })));
    expect(assumed.reasons[0]).toMatchObject({
      code: 'open too long',
      message: expect.stringContaining("the studio's assumed opened life"),
      facts: { lastDay: '2026-02-28', openedLifeFrom: 'assumed' },
    });
    const told = { openedAt: '2026-01-10T10:00:00.000Z', usableThrough: '2026-02-01' };
    expect(judge(facts(bottle(told))).reasons[0]).toMatchObject({
      code: 'open too long',
      message: expect.stringContaining('as counted in the studio it came from'),
      facts: { lastDay: '2026-02-01', openedLifeFrom: 'sending studio' },
    });
  });

  it('lists refusals with the worst first, whatever the order of the facts', () => {
    const thing = bottle({
      state: 'practice only',
      useByLastDay: '2026-01-31',
      holds: [
        { kind: 'quarantine', reason: 'doubt', on: 'container' },
        { kind: 'recall', reason: 'recall notice', on: 'parent lot' },
      ],
    });
    const decision = judge(facts(thing));
    expect(decision.reasons.map((reason) => reason.code)).toEqual([
      'recalled',
      'on hold',
      'expired',
      'practice only',
    ]);
    expect(decision.reasons[0]?.message).toContain('because a lot that was blended into it is');
    expect(decision).toMatchObject({ verdict: 'refused', addsLine: false, piecesAdded: 0, offers: [] });
  });

  it('refuses a piece whose serial was used, and asks nothing about one whose serial is new', () => {
    expect(codes(facts(box(), { serialTaken: true, hasSerial: true }))).toEqual(['already used']);
    expect(judge(facts(box(), { linesOnTray: 2, hasSerial: true })).verdict).toBe('admitted');
  });

  it('refuses the piece after the last one that no tray holds', () => {
    expect(judge(facts(box({ pieces: 2, reservedPieces: 1 }))).verdict).toBe('admitted');
    expect(codes(facts(box({ pieces: 2, reservedPieces: 2 }), { another: true }))).toEqual(['none left']);
    expect(codes(facts(bottle({ state: 'finished', pieces: 0 })))).toEqual(['none left']);
  });

  it('names what to take instead: opened first, then the first-expiring, never what is held', () => {
    const others = [
      bottle({
        containerId: 'held',
        useByLastDay: '2026-03-11',
        holds: [{ kind: 'quarantine', reason: 'doubt', on: 'lot' }],
      }),
      bottle({ containerId: 'late', state: 'sealed', openedAt: null, useByLastDay: '2027-06-30' }),
      bottle({ containerId: 'soon', state: 'sealed', openedAt: null, useByLastDay: '2026-06-30' }),
    ];
    const decision = judge(facts(bottle({ useByLastDay: '2026-01-31' }), { others }));
    expect(decision.instead?.containerId).toBe('soon');
    expect(decision.reasons[0]?.message).toContain('Take Halden Umber, lot U12 instead.');
  });

  it('asks "another one?" when the same symbol is shown again, and takes "another" for one piece more', () => {
    expect(judge(facts(box(), { linesOnTray: 1 }))).toMatchObject({
      verdict: 'question',
      offers: ['another'],
      addsLine: false,
      piecesAdded: 0,
    });
    expect(judge(facts(box(), { linesOnTray: 1, another: true }))).toMatchObject({
      verdict: 'admitted',
      piecesAdded: 1,
    });
  });

  it('takes a bottle shown again for the same bottle', () => {
    expect(judge(facts(bottle(), { linesOnTray: 1 }))).toMatchObject({
      verdict: 'admitted',
      addsLine: false,
    });
  });

  it('judges by the earlier of the recorded date and the date in the symbol', () => {
    expect(codes(facts(bottle(), { symbolUseBy: '2026-02-28' }))).toEqual(['expired']);
    const misread = judge(facts(bottle(), { symbolUseBy: '2026-02-28' }));
    expect(misread.reasons[0]?.message).toContain('The record says 2027-12-31, but the earlier date counts');
    const warned = judge(facts(bottle(), { symbolUseBy: '2028-01-31' }));
    expect(warned).toMatchObject({ verdict: 'warned', reasons: [{ code: 'date differs from the record' }] });
    expect(codes(facts(bottle({ useByLastDay: '2026-01-31' }), { symbolUseBy: '2028-01-31' }))).toEqual([
      'expired',
    ]);
  });

  it('judges an own label by the record, and has it printed anew when its date differs', () => {
    const printed = (symbolUseBy: string, useByLastDay: string) =>
      judge(facts(bottle({ useByLastDay }), { symbolUseBy, symbolIsOwnLabel: true }));
    const corrected = printed('2026-02-28', '2027-12-31');
    expect(corrected).toMatchObject({
      verdict: 'warned',
      reasons: [{ code: 'date differs from the record' }],
    });
    expect(corrected.reasons[0]?.message).toContain('Print the label anew');
    const expired = printed('2026-01-15', '2026-01-31');
    expect(expired.reasons.map(({ code }) => code)).toEqual(['expired']);
    expect(expired.reasons[0]?.message).not.toContain('scan');
  });

  it('warns of a pigment that ends before the touch-up window does, but not of a needle', () => {
    const thing = bottle({ useByLastDay: '2026-04-18' });
    expect(codes(facts(thing, { touchUpBy: '2026-04-19' }))).toEqual(['out of date before the touch-up']);
    expect(codes(facts(thing, { touchUpBy: '2026-04-18' }))).toEqual([]);
    expect(codes(facts(box({ useByLastDay: '2026-04-18' }), { touchUpBy: '2026-04-19' }))).toEqual([]);
  });

  it('warns of an earlier-expiring one, of another open bottle, of another artist’s and of the kit list', () => {
    const sealed = bottle({ state: 'sealed', openedAt: null, ownerId: 'ana' });
    const open = bottle({ containerId: 'open', openedAt: '2026-03-01T09:00:00.000Z' });
    const decision = judge(facts(sealed, { others: [open], onKitList: 'no' }));
    expect(decision.verdict).toBe('warned');
    expect(decision.reasons.map((reason) => reason.code)).toEqual([
      'an earlier-expiring one is here',
      'another bottle is open',
      "another artist's",
      'not on the kit list',
    ]);
    expect(decision.instead?.containerId).toBe('open');
    expect(codes(facts(bottle({ ownerId: 'mira' }), { onKitList: 'yes' }))).toEqual([]);
  });

  it('warns when no date is known at all', () => {
    const thing = bottle({ state: 'sealed', openedAt: null, useByLastDay: null });
    expect(codes(facts(thing))).toContain('no date known');
  });

  it('names no refusal of the book among the refusals that a use is recorded against', () => {
    const gone = box({ pieces: 0, useByLastDay: '2026-01-31' });
    expect(safetyRefusals(gone, at, timeZone)).toEqual(['expired']);
    expect(safetyRefusals(bottle(), at, timeZone)).toEqual([]);
    expect(
      safetyRefusals(
        bottle({ state: 'practice only', holds: [{ kind: 'recall', reason: 'recall notice', on: 'lot' }] }),
        at,
        timeZone,
      ),
    ).toEqual(['recalled', 'practice only']);
  });

  const anyFacts = fc.record({
    stockForm: fc.constantFrom('container' as const, 'pieces' as const),
    state: fc.constantFrom(
      'sealed' as const,
      'opened' as const,
      'finished' as const,
      'discarded' as const,
      'practice only' as const,
    ),
    useByLastDay: fc.option(fc.constantFrom('2026-01-31', '2026-03-10', '2027-12-31')),
    openedAt: fc.option(fc.constantFrom('2024-01-01T00:00:00.000Z', '2026-03-01T00:00:00.000Z')),
    holds: fc.subarray([
      { kind: 'recall' as const, reason: 'recall notice', on: 'lot' as const },
      { kind: 'quarantine' as const, reason: 'doubt', on: 'container' as const },
    ]),
    pieces: fc.integer({ min: 0, max: 3 }),
    reservedPieces: fc.integer({ min: 0, max: 3 }),
  });

  // A box is opened to take pieces out; the pieces in it are not.
  const anyThing = anyFacts.map((given) =>
    given.stockForm === 'pieces' ? { ...given, openedAt: null } : given,
  );
  type Given = typeof anyThing extends fc.Arbitrary<infer Value> ? Value : never;

  /** Written out by hand for the few dates above, `at` being 10 March 2026 in Vienna and every opened life a year. */
  function mayBeUsed(given: Given): boolean {
    if (given.holds.length > 0) return false;
    if (given.useByLastDay === '2026-01-31') return false;
    if (given.openedAt === '2024-01-01T00:00:00.000Z') return false;
    if (given.state !== 'sealed' && given.state !== 'opened') return false;
    return given.stockForm === 'pieces' ? given.pieces > given.reservedPieces : given.pieces > 0;
  }

  it('refuses just what is held, out of date, kept for practice, or not there; and always says why', () => {
    fc.assert(
      fc.property(
        anyThing,
        fc.array(anyThing, { maxLength: 4 }),
        fc.boolean(),
        (given, others, serialTaken) => {
          const thing = bottle(given);
          const decision = judge(
            facts(thing, {
              others: others.map((other, index) => bottle({ ...other, containerId: `other-${index}` })),
              serialTaken,
            }),
          );
          const admitted = decision.verdict === 'admitted' || decision.verdict === 'warned';
          expect(admitted).toBe(mayBeUsed(given) && !serialTaken);
          expect(decision.addsLine).toBe(admitted);
          expect(decision.piecesAdded).toBe(admitted && given.stockForm === 'pieces' ? 1 : 0);
          if (!admitted) expect(decision.reasons.length).toBeGreaterThan(0);
          const order: readonly string[] = [...refusalCodes, 'another one?', ...warningCodes];
          const ranks = decision.reasons.map((reason) => order.indexOf(reason.code));
          expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
          const insteadOf = decision.instead?.containerId;
          const instead = others.find((_, index) => insteadOf === `other-${index}`);
          if (insteadOf !== undefined) expect(instead && mayBeUsed(instead)).toBe(true);
          if (!admitted) expect(insteadOf !== undefined).toBe(others.some(mayBeUsed));
        },
      ),
    );
  });
});
