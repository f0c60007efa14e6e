import { expect, it } from 'vitest';
import { nightlyStep } from './nightly-step.js';

it('asks for the plan of a day until one is done, a person ends one, or three have failed', () => {
  expect(nightlyStep([])).toBe('ask');
  expect(nightlyStep(['running'])).toBe('wait');
  expect(nightlyStep(['failed'])).toBe('ask');
  expect(nightlyStep(['failed', 'waiting'])).toBe('wait');
  expect(nightlyStep(['failed', 'failed', 'done'])).toBe('rest');
  expect(nightlyStep(['failed', 'failed', 'failed'])).toBe('rest');
  expect(nightlyStep(['cancelled'])).toBe('rest');
});
