import { expect, it } from 'vitest';
import { costStanding } from './cost-standing.js';

it('says of a choice that it costs least only where nothing shown costs less', () => {
  expect(costStanding(120, 50)).toBe('least');
  expect(costStanding(-0.3, 0)).toBe('least');
  expect(costStanding(-80, 50)).toBe('within the error');
  expect(costStanding(-686, 50)).toBe('not least');
});
