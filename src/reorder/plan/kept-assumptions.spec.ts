import { expect, it } from 'vitest';
import type { ItemDecision } from '../decision/item-decision-result.js';
import { keptAssumptions } from './kept-assumptions.js';

it('keeps each once, whoever supposed it', () => {
  const decision = {
    assumptions: [{ code: 'unit cost unknown' }, { code: 'unit cost unknown' }],
  } as ItemDecision;
  const demandAssumptions = [{ code: 'no history' as const, figures: {} }];
  expect(
    keptAssumptions({ decision, demandAssumptions }, [{ code: 'opened life unlimited', figures: {} }]),
  ).toEqual([
    { code: 'opened life unlimited', figures: {} },
    { code: 'no history', figures: {} },
    { code: 'unit cost unknown', figures: {} },
  ]);
});
