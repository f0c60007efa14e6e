import type { Texts } from '../texts/en/english.js';

/** What to do next about an alert of a kind. */
export function nextStep(kind: string, texts: Texts): string {
  return texts.alertPages.nextSteps[kind] ?? texts.alertPages.nextStepElse;
}
