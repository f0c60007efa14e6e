import { describe, expect, it } from 'vitest';
import { draftOfPlanning, planningOfDraft } from './item-planning-draft.js';

describe('how an item is planned', () => {
  it('is empty where nothing differs from the studio', () => {
    const draft = draftOfPlanning(null, 'EUR', 'de');
    expect(draft).toEqual({ serviceTarget: '', shortageCost: '', rangeChoice: '' });
    expect(planningOfDraft(draft, 'EUR')).toEqual({
      serviceTargetPerMille: null,
      shortageCostMinor: null,
      rangeChoice: null,
    });
  });

  it('comes back as it was written', () => {
    const planning = {
      serviceTargetPerMille: 975,
      shortageCostMinor: 12_050,
      rangeChoice: 'let run out' as const,
    };
    const draft = draftOfPlanning(planning, 'EUR', 'de');
    expect(draft).toEqual({ serviceTarget: '97.5', shortageCost: '120,50', rangeChoice: 'let run out' });
    expect(planningOfDraft(draft, 'EUR')).toEqual(planning);
  });

  it.each([
    ['101', ''],
    ['-1', ''],
    ['many', ''],
    ['', '12.345'],
    ['', '-1'],
  ])('is not saved with a target of %j and a cost of %j', (serviceTarget, shortageCost) => {
    expect(planningOfDraft({ serviceTarget, shortageCost, rangeChoice: '' }, 'EUR')).toBeUndefined();
  });

  it('takes money in the decimals of its currency, with a comma too', () => {
    const written = (shortageCost: string, currency: string) =>
      planningOfDraft({ serviceTarget: '', shortageCost, rangeChoice: '' }, currency)?.shortageCostMinor;
    expect([written('12,5', 'EUR'), written('1250', 'JPY'), written('12.5', 'JPY')]).toEqual([
      1250,
      1250,
      undefined,
    ]);
  });
});
