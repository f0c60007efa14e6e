import { describe, expect, it } from 'vitest';
import type { DemandFacts, ItemDemandFacts } from '../demand/demand-facts.js';
import { pastNeeds } from './past-needs.js';

const session = (day: number, amount: number | null, refused = false) => ({
  ...{ id: `${day}`, procedureId: 'brows', visitKind: 'first session' as const, artistId: 'ines', day },
  ...{ bookedOn: null, followsSessionId: null, uses: [{ item: 'umber', amount, refused }] },
});
const facts = {
  sessions: [session(-3, 300), session(-3, 100), session(-9, null, true)],
  unmetWants: [],
} as Partial<DemandFacts>;
const item = (more: Partial<ItemDemandFacts> = {}): ItemDemandFacts => ({
  ...{ item: 'umber', unitsOfKitQuantity: null, availableFrom: null, replaces: null, otherUses: [] },
  ...more,
});

describe('what was needed', () => {
  it('counts what there was none left of as a usual need, adds up a day, and takes in other uses', () => {
    const umber = pastNeeds(facts as DemandFacts, [item({ otherUses: [{ day: -3, amount: 50 }] })]).get(
      'umber',
    );
    expect(umber).toEqual({
      needs: [
        { day: -9, units: 200 },
        { day: -3, units: 450 },
      ],
      usualUnits: 200,
      amountsAssumed: 1,
    });
  });

  it('is nothing for what nobody used, and one piece where pieces are used without a number', () => {
    expect(
      pastNeeds(facts as DemandFacts, [item({ item: 'cups', unitsOfKitQuantity: 1 })]).get('cups'),
    ).toEqual({ needs: [], usualUnits: 1, amountsAssumed: 0 });
  });
});
