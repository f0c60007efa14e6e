import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { madeStudio } from '../../../tests/support/made-studio.js';
import type { DemandFacts, ItemDemandFacts } from './demand-facts.js';
import type { DemandModel } from './demand-model.js';
import { demandOfItem, studioDemand } from './demand-of-item.js';

const facts = madeStudio(5);
const item = (name: string, more: Partial<ItemDemandFacts> = {}): ItemDemandFacts => ({
  item: name,
  unitsOfKitQuantity: null,
  availableFrom: null,
  replaces: null,
  otherUses: [],
  ...more,
});
const needle = item('needle', { unitsOfKitQuantity: 1 });
const demand = (changed: Partial<DemandFacts>, of = needle) =>
  demandOfItem(studioDemand({ ...facts, ...changed }), of, 120);
const codes = ({ assumptions }: ReturnType<typeof demandOfItem>) => assumptions.map(({ code }) => code);
const unitsOf = ({ description }: ReturnType<typeof demandOfItem>, from = 0, to = 16) =>
  description.weeks
    .slice(from, to)
    .reduce((sum, { known, halfKnown, unforeseen }) => sum + known + halfKnown + unforeseen, 0);
const source = (model: DemandModel, wanted: string) => model.expected.filter((use) => use.source === wanted);
const unitsBefore = (name: string, weeks: number) =>
  facts.sessions
    .filter(({ day }) => day >= -7 * weeks)
    .flatMap(({ uses }) => uses.filter((use) => use.item === name))
    .reduce((sum, { amount }) => sum + (amount ?? 0), 0);

describe('the demand of an item', () => {
  it('goes on as before when the studio does, known things no matter how much of it is known', () => {
    for (const name of ['needle', 'shade 0']) {
      const told = demand({}, item(name, { unitsOfKitQuantity: name === 'needle' ? 1 : null }));
      const past = unitsBefore(name, 26) / 26;
      const next = unitsOf(told, 0, 8) / 8;
      expect(next / past).toBeGreaterThan(0.75);
      expect(next / past).toBeLessThan(1.3);
    }
    // The known part fades out with the days ahead, and what nobody knows takes its place.
    const weeks = demand({}).description.weeks;
    expect(weeks[0]?.unforeseen).toBeLessThan((weeks[0]?.known ?? 0) + (weeks[0]?.halfKnown ?? 0));
    expect(weeks[12]?.unforeseen).toBeGreaterThan((weeks[12]?.known ?? 0) + (weeks[12]?.halfKnown ?? 0));
  });

  it('takes for a booked or owed touch-up what the visit before took', () => {
    const before = facts.sessions.find(
      ({ visitKind, uses }) => visitKind === 'first session' && uses.some((use) => use.item === 'shade 20'),
    );
    if (!before) throw new Error('No session takes the shade.');
    const amount = before.uses.find((use) => use.item === 'shade 20')?.amount;
    const { id, procedureId, artistId } = before;
    const touchUp = { procedureId, artistId, visitKind: 'touch-up' as const, day: 3 };
    const shade = item('shade 20');
    const booked = (followsSessionId: string) =>
      demand({ bookings: [{ ...touchUp, followsSessionId }], owedTouchUps: [] }, shade).model.expected;
    expect(booked(id)).toHaveLength(1);
    expect(booked(id)[0]).toMatchObject({ firstDay: 3, amount: { amounts: [amount], weights: [1] } });
    expect(booked(id)[0]?.chance).toBeGreaterThan(0.6);
    const other = facts.sessions.find(({ uses }) => uses.every((use) => use.item !== 'shade 20'));
    expect(booked(other?.id ?? '')).toEqual([]);

    const young = { ...before, id: 'young', day: -20 };
    const owed = demand(
      { sessions: [...facts.sessions, young], bookings: [], owedTouchUps: [{ sessionId: 'young' }] },
      shade,
    );
    const [use] = source(owed.model, 'touch-up');
    expect(use?.amount.amounts).toEqual([amount]);
    // The window opens 30 days after, that is in 10.
    expect(use?.dayWeights.slice(0, 5).every((weight) => weight === 0)).toBe(true);
    expect(use?.dayWeights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 9);
  });

  it('has a course take the kit list once for each trainee', () => {
    const kitLists = [{ procedureId: 'lips', artistId: null, items: [{ item: 'needle', quantity: 2 }] }];
    const courses = [{ procedureId: 'lips', day: 9, trainees: 6 }];
    const [use] = source(demand({ kitLists, courses }).model, 'course');
    expect(use).toMatchObject({ chance: 1, firstDay: 9, amount: { amounts: [12], weights: [1] } });
  });

  it('has the trainees of a course without a kit list use what first sessions do, and says so', () => {
    const courses = [{ procedureId: 'brows', day: 9, trainees: 12 }];
    const told = demand({ kitLists: [], courses });
    const uses = source(told.model, 'course');
    const units = uses.reduce(
      (sum, { chance, amount }) =>
        sum + chance * amount.amounts.reduce((mean, each, at) => mean + each * (amount.weights[at] ?? 0), 0),
      0,
    );
    // Each session takes at least one needle.
    expect(units).toBeGreaterThan(11);
    expect(codes(told)).toContain('course without kit list');
    const listed = [{ procedureId: 'brows', artistId: null, items: [] }];
    const none = demand({ kitLists: listed, courses });
    expect(source(none.model, 'course')).toEqual([]);
    expect(codes(none)).not.toContain('course without kit list');
  });

  it('counts what was refused because none was left', () => {
    const sessions = facts.sessions.map((session) => ({
      ...session,
      uses: session.uses.map((use) =>
        use.item === 'shade 3' ? { item: use.item, amount: null, refused: true } : use,
      ),
    }));
    const refused = demand({ sessions }, item('shade 3'));
    expect(unitsOf(refused)).toBeGreaterThan(0);
    expect(codes(refused)).toContain('amount assumed');
  });

  it('counts what sessions wanted that were never completed, and does not learn from them what a session takes', () => {
    const wants = Array.from({ length: 80 }, (_, index) => ({
      ...{ procedureId: 'brows', visitKind: 'first session' as const, artistId: 'ada' },
      ...{ sessionId: `lapsed ${index}`, day: -1 - 4 * index, followsSessionId: null, item: 'needle' },
    }));
    const usual = demand({});
    const more = demand({ unmetWants: wants });
    const unforeseen = (told: typeof more) =>
      told.description.weeks.reduce((sum, week) => sum + week.unforeseen, 0);
    expect(unforeseen(more)).toBeGreaterThan(1.03 * unforeseen(usual));
    expect(more.model.expected).toEqual(usual.model.expected);
    const rare = demand(
      { unmetWants: wants.map((want) => ({ ...want, item: 'wanted only' })) },
      item('wanted only'),
    );
    expect(unitsOf(rare)).toBeGreaterThan(0);
    expect(codes(rare)).not.toContain('no history');
  });

  it('tells how its methods did in foretelling the past, and that nothing was scored of a new item', () => {
    const { methods, origins } = demand({}).description;
    expect(origins).toBeGreaterThan(0);
    expect(methods.length).toBeGreaterThan(0);
    for (const { score, weight } of methods) {
      expect(weight).toBeGreaterThan(0);
      expect(score).toBeGreaterThan(0);
    }
    const kitLists = [{ procedureId: 'brows', artistId: null, items: [{ item: 'film', quantity: 1 }] }];
    const fresh = demand({ kitLists }, item('film', { unitsOfKitQuantity: 1, availableFrom: -3 }));
    expect(fresh.description.methods).toMatchObject([{ method: 'level assumed', score: null }]);
  });

  it('follows the item it replaces, and only when it is linked', () => {
    const linked = demand({}, item('shade 0 new', { replaces: 'shade 0', availableFrom: -5 }));
    expect(codes(linked)).toContain('history of predecessor');
    expect(unitsOf(linked) / unitsOf(demand({}, item('shade 0')))).toBeCloseTo(1, 6);
    const alone = demand({}, item('shade 0 new', { availableFrom: -5 }));
    expect(unitsOf(alone)).toBe(0);
    expect(codes(alone)).toContain('no history');
  });

  it('ends with the last day of an artist who leaves', () => {
    const everybody = new Map(['ada', 'ben', 'cleo'].map((artist) => [artist, 20]));
    const ends = demand({ lastDays: everybody });
    expect(unitsOf(ends, 0, 2)).toBeGreaterThan(0);
    expect(unitsOf(ends, 3)).toBe(0);
    expect(codes(ends)).toContain('artist leaves');
    expect(codes(ends)).toContain('bookings after the last day');
    const oneLeaves = demand({ lastDays: new Map([['ada', 20]]) });
    expect(unitsOf(oneLeaves, 6) / unitsOf(demand({}), 6)).toBeGreaterThan(0.5);
    expect(unitsOf(oneLeaves, 6) / unitsOf(demand({}), 6)).toBeLessThan(0.85);
  });

  it('is assumed by the kit list for a new item, and says so', () => {
    const kitLists = ['brows', 'lips', 'eyeliner'].map((procedureId) => ({
      procedureId,
      artistId: null,
      items: [{ item: 'film', quantity: 1 }],
    }));
    const told = demand({ kitLists }, item('film', { unitsOfKitQuantity: 1, availableFrom: -3 }));
    expect(codes(told)).toEqual(
      expect.arrayContaining(['no history', 'level assumed', 'amount from kit list']),
    );
    expect(unitsOf(told, 0, 1)).toBeGreaterThan(unitsBefore('needle', 10) / 10 / 4);
  });

  it('says what is assumed of a studio without a record, and foretells nothing', () => {
    const told = demand({
      recordedFrom: 0,
      sessions: [],
      bookings: [],
      lapsedBookings: [],
      owedTouchUps: [],
    });
    expect(unitsOf(told)).toBe(0);
    expect(told.model).toMatchObject({ expected: [], unforeseen: [] });
    expect(codes(told)).toEqual(['no history']);
  });

  it('knows no booking twice: more bookings are more known and no less unknown', () => {
    const [first] = facts.bookings;
    if (!first) throw new Error('Nothing is booked.');
    const more = demand({
      bookings: [...facts.bookings, { ...first, day: 5, visitKind: 'first session', followsSessionId: null }],
    });
    const unforeseen = (told: typeof more) =>
      told.description.weeks.reduce((sum, week) => sum + week.unforeseen, 0);
    expect(unforeseen(more)).toBeCloseTo(unforeseen(demand({})), 9);
    expect(unitsOf(more)).toBeGreaterThan(unitsOf(demand({})));
  });

  it('is made of chances, shares and weights whatever the facts are', () => {
    const changes = fc.record({
      seed: fc.nat(1000),
      kept: fc.double({ min: 0, max: 1, noNaN: true }),
      days: fc.integer({ min: 1, max: 200 }),
      lastDay: fc.option(fc.integer({ min: -30, max: 200 })),
      name: fc.constantFrom('needle', 'shade 0', 'shade 25', 'nothing'),
      horizon: fc.integer({ min: 1, max: 200 }),
    });
    fc.assert(
      fc.property(changes, ({ seed, kept, days, lastDay, name, horizon }) => {
        const made = madeStudio(seed, { days });
        const sessions = made.sessions.slice(0, Math.round(kept * made.sessions.length));
        const lastDays = new Map(lastDay === null ? [] : [['ada', lastDay] as const]);
        const studio = studioDemand({ ...made, sessions, lastDays });
        const { model, description } = demandOfItem(studio, item(name), horizon);
        checkModel(model);
        const all = description.weeks.flatMap(Object.values) as number[];
        expect(all.every((units) => Number.isFinite(units) && units >= 0)).toBe(true);
      }),
      { numRuns: 12 },
    );
  });
});

function checkModel({ days, expected, unforeseen }: DemandModel): void {
  const sum = (weights: ArrayLike<number>) =>
    Array.from(weights).reduce((total, weight) => total + weight, 0);
  for (const { chance, firstDay, dayWeights, amount } of expected) {
    expect(chance > 0 && chance <= 1 && firstDay >= 0).toBe(true);
    expect(sum(dayWeights)).toBeCloseTo(1, 6);
    expect(sum(amount.weights)).toBeCloseTo(1, 6);
  }
  for (const { components, dayShares, unknownShares, periodDays, amount } of unforeseen) {
    expect(sum(components.map(({ weight }) => weight))).toBeCloseTo(1, 6);
    expect(sum(amount.weights)).toBeCloseTo(1, 6);
    expect([dayShares.length, unknownShares.length]).toEqual([days, days]);
    if (days >= periodDays) expect(sum(dayShares.slice(0, periodDays))).toBeCloseTo(1, 6);
    expect(unknownShares.every((share) => share >= 0 && share <= 1 + 1e-9)).toBe(true);
  }
}
