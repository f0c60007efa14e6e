import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decideErasure,
  type ErasureFacts,
  type ErasureGround,
  type ErasureOverride,
  erasureGrounds,
  erasureOverrides,
} from './erasure-decision.js';

const law = 'ARSD 44:12:01:15';
const facts = (given: Partial<ErasureFacts> = {}): ErasureFacts => ({
  today: '2026-03-10',
  policy: { years: 2, law },
  lastRecordOn: '2025-01-15',
  addedOn: '2025-01-10',
  heldLotIds: [],
  openClaims: 0,
  ...given,
});
const over = { lastRecordOn: '2020-01-15', addedOn: '2020-01-10' };
const kinds = (ground: ErasureGround, given: Partial<ErasureFacts>, overrides: ErasureOverride[] = []) =>
  decideErasure(ground, overrides, facts(given)).obstacles.map(({ kind }) => kind);
const answer = (ground: ErasureGround, given: Partial<ErasureFacts>, overrides: ErasureOverride[] = []) =>
  decideErasure(ground, overrides, facts(given)).answer;

const anyFacts: fc.Arbitrary<ErasureFacts> = fc.record({
  today: fc.constant('2026-03-10'),
  policy: fc.option(fc.record({ years: fc.integer({ min: 0, max: 10 }), law: fc.option(fc.constant(law)) })),
  lastRecordOn: fc.option(
    fc.constantFrom('2010-02-28', '2020-02-29', '2024-03-09', '2024-03-10', '2026-03-10'),
  ),
  addedOn: fc.constantFrom('2009-01-01', '2025-01-01'),
  heldLotIds: fc.uniqueArray(fc.constantFrom('lot 1', 'lot 2'), { maxLength: 2 }),
  openClaims: fc.integer({ min: 0, max: 2 }),
});
const anyOverrides = fc.subarray([...erasureOverrides]);

describe('whether a client is erased', () => {
  // GDPR Art. 17(1) [P]: the right to obtain erasure without undue delay.
  it.each(erasureGrounds)('says yes to "%s" when nothing has to be kept', (ground) => {
    expect(decideErasure(ground, [], facts(over))).toMatchObject({ answer: 'erased', obstacles: [] });
  });

  // GDPR Art. 17(3)(b) [P]: not where the processing is necessary for compliance with a legal obligation.
  it('refuses while a law asks for the record, and names the law, the day and the article', () => {
    const decision = decideErasure('consent withdrawn', [...erasureOverrides], facts());
    expect(decision.answer).toBe('refused');
    expect(decision.obstacles).toEqual([
      {
        kind: 'legal obligation',
        article: 'GDPR Art. 17(3)(b)',
        message:
          'The record of the last visit, on 2025-01-15, must be kept for 2 years, through 2027-01-15 (ARSD 44:12:01:15). Ask again from 2027-01-16; if that rule does not bind this studio, correct its settings first.',
        keptThrough: '2027-01-15',
        lotIds: [],
        overriddenBy: null,
      },
    ]);
  });

  it('refuses through the last day of the floor and no longer', () => {
    const record = { lastRecordOn: '2024-03-10' };
    expect(answer('objection', { ...record, today: '2026-03-10' })).toBe('refused');
    expect(answer('objection', { ...record, today: '2026-03-11' })).toBe('erased');
  });

  it('lets a floor that no law asks for go when the studio says that no law applies', () => {
    const own = { policy: { years: 2, law: null } };
    expect(decideErasure('objection', [], facts(own))).toMatchObject({
      answer: 'refused',
      obstacles: [{ kind: 'own retention', article: null, overriddenBy: null }],
    });
    expect(decideErasure('objection', ['no legal obligation applies'], facts(own))).toMatchObject({
      answer: 'erased',
      obstacles: [{ kind: 'own retention', overriddenBy: 'no legal obligation applies' }],
    });
  });

  // GDPR Art. 17(3)(c) [P]: for reasons of public interest in the area of public health.
  it('refuses while a lot that touched the client is on hold, until it is said that they were told', () => {
    const held = { ...over, heldLotIds: ['lot 7'] };
    expect(decideErasure('objection', [], facts(held))).toMatchObject({
      answer: 'refused',
      obstacles: [{ kind: 'held lot', article: 'GDPR Art. 17(3)(c)', lotIds: ['lot 7'] }],
    });
    expect(answer('objection', held, ['the client was told of it'])).toBe('erased');
    expect(answer('objection', held, ['no legal obligation applies'])).toBe('refused');
  });

  // GDPR Art. 17(3)(e) [P]: for the establishment, exercise or defence of legal claims.
  it('refuses while a legal claim stands, whatever is said', () => {
    const claimed = { ...over, openClaims: 1 };
    expect(decideErasure('objection', [...erasureOverrides], facts(claimed))).toMatchObject({
      answer: 'refused',
      obstacles: [{ kind: 'legal claim', article: 'GDPR Art. 17(3)(e)', overriddenBy: null }],
    });
  });

  it('keeps somebody who was never treated for no law', () => {
    const never = { lastRecordOn: null };
    expect(answer('objection', never)).toBe('erased');
    expect(answer('objection', { ...never, policy: null })).toBe('erased');
    // On the studio's own motion they are kept as long as everyone else.
    expect(kinds('retention over', never)).toEqual(['own retention']);
    expect(answer('retention over', { ...never, addedOn: '2024-03-09' })).toBe('erased');
  });

  it('cannot say anything while the studio has not said how long it keeps records', () => {
    expect(kinds('objection', { policy: null })).toEqual(['retention not chosen']);
    expect(kinds('retention over', { policy: null, lastRecordOn: null })).toEqual(['retention not chosen']);
  });

  it('names every obstacle at once', () => {
    expect(kinds('objection', { heldLotIds: ['lot 7', 'lot 8'], openClaims: 2 })).toEqual([
      'legal obligation',
      'held lot',
      'legal claim',
    ]);
  });

  it('is yes exactly when every obstacle was overridden', () => {
    fc.assert(
      fc.property(fc.constantFrom(...erasureGrounds), anyOverrides, anyFacts, (ground, overrides, given) => {
        const { answer: said, obstacles } = decideErasure(ground, overrides, given);
        expect(said === 'erased').toBe(obstacles.every(({ overriddenBy }) => overriddenBy !== null));
        for (const { overriddenBy } of obstacles) {
          if (overriddenBy !== null) expect(overrides).toContain(overriddenBy);
        }
      }),
    );
  });

  it('never gives up what a law, a claim or an undecided floor asks for, nor anything on its own motion', () => {
    fc.assert(
      fc.property(fc.constantFrom(...erasureGrounds), anyFacts, (ground, given) => {
        const all = decideErasure(ground, [...erasureOverrides], given);
        const lawRuns = all.obstacles.some(({ kind }) => kind === 'legal obligation');
        if (lawRuns || given.openClaims > 0) expect(all.answer).toBe('refused');
        if (given.policy === null && given.lastRecordOn !== null) expect(all.answer).toBe('refused');
        if (ground === 'retention over') expect(all).toEqual(decideErasure(ground, [], given));
      }),
    );
  });
});
