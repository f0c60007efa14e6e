import { expect, it } from 'vitest';
import { german } from '../texts/de/german.js';
import { english } from '../texts/en/english.js';
import { nextStep } from './next-step.js';

it.each([english, german])('says of every kind that has a name what to do next (%#)', (texts) => {
  const silent = Object.keys(texts.alerts.kinds).filter(
    (kind) => nextStep(kind, texts) === texts.alertPages.nextStepElse,
  );
  expect(silent).toEqual([]);
  expect(nextStep('something new', texts)).toBe(texts.alertPages.nextStepElse);
});
