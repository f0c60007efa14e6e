import { describe, expect, it } from 'vitest';
import { drillSteps, timedSteps } from './drill-steps.js';

const at = (minute: number) => new Date(Date.UTC(2026, 2, 1, 9, minute)).toISOString();
const done = (step: string, minute: number) => ({ step, doneAt: at(minute), personId: 'p' });

describe('the steps of a drill', () => {
  it('are each timed from what was done before, whatever the order, and add up to the whole', () => {
    const steps = timedSteps(at(0), [
      done('notice read', 2),
      done('exposures listed', 5),
      done('scope settled', 9),
      done('closed', 30),
    ]);
    expect(steps.map(({ step }) => step)).toEqual([...drillSteps]);
    const minutes = Object.fromEntries(steps.map(({ step, minutes: taken }) => [step, taken]));
    expect(minutes).toMatchObject({
      'notice read': 2,
      'exposures listed': 3,
      'scope settled': 4,
      'stock found': null,
      closed: 21,
    });
    expect(steps.reduce((sum, { minutes: taken }) => sum + (taken ?? 0), 0)).toBe(30);
  });

  it('count from when they were noted first', () => {
    const [first] = timedSteps(at(0), [done('notice read', 7), done('notice read', 3)]);
    expect(first).toMatchObject({ doneAt: at(3), minutes: 3 });
  });

  it('that are noted at one instant take their time once, in the order of the way', () => {
    const steps = timedSteps(at(0), [done('scope settled', 4), done('notice read', 4)]);
    expect(steps.slice(0, 2).map(({ minutes }) => minutes)).toEqual([4, 0]);
  });
});
