import { describe, expect, it } from 'vitest';
import type { ReasonFacts } from '../../sessions/reason-facts.js';
import { german } from './de/german.js';
import { english } from './en/english.js';
import { reasonText, refusedSinceText } from './reason-text.js';

const message =
  'Halden Umber, lot A12 expired: its use-by was 2026-03-10. No other one that may be used is here.';
const facts: ReasonFacts = {
  label: 'Halden Umber',
  lotCode: 'A12',
  lastDay: '2026-03-10',
  laterRecordedUseBy: null,
  insteadLabel: null,
  insteadLotCode: null,
};

describe('why something is refused', () => {
  it('is said in English as the service says it', () => {
    expect(reasonText(english, { code: 'expired', message, facts })).toBe(message);
  });

  it('is said in German from its facts, with dates as they are written there', () => {
    expect(reasonText(german, { code: 'expired', message, facts })).toBe(
      'Halden Umber, Charge A12 ist abgelaufen: verwendbar bis 10.03.2026. Ein anderes, das verwendet werden darf, ist nicht da.',
    );
    expect(
      reasonText(german, { code: 'expired', message, facts: { ...facts, insteadLabel: 'Halden Umber' } }),
    ).toContain('Nehmen Sie stattdessen Halden Umber, ohne Chargencode.');
  });

  it('stays readable where the answer was recorded before there were facts, or before there was that code', () => {
    expect(reasonText(german, { code: 'expired', message })).toBe(message);
    expect(reasonText(german, { code: 'expired', message, facts: {} })).toBe(message);
    expect(reasonText(german, { code: 'something new', message, facts })).toBe(message);
    expect(refusedSinceText(german, { code: 'something new', message })).toBe(message);
  });
});
