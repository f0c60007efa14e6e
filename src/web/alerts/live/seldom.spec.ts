import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { seldom } from './seldom.js';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

it('calls at once, and once more for all that was asked meanwhile', () => {
  const call = vi.fn();
  const { ask } = seldom(call, 1_000);
  for (let count = 0; count < 10_000; count += 1) ask();
  expect(call).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(1_000);
  expect(call).toHaveBeenCalledTimes(2);
  vi.advanceTimersByTime(10_000);
  expect(call).toHaveBeenCalledTimes(2);
  ask();
  expect(call).toHaveBeenCalledTimes(3);
});

it('calls no more once it is ended', () => {
  const call = vi.fn();
  const { ask, end } = seldom(call, 1_000);
  ask();
  ask();
  end();
  vi.advanceTimersByTime(10_000);
  expect(call).toHaveBeenCalledTimes(1);
});
