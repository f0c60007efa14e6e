import { expect, it } from 'vitest';
import { isReversible } from './is-reversible.js';
import { asPrinted, lotCorrection } from './lot-correction.js';

const code = { id: 'c', recordedAt: '2026-01-01T00:00:00Z', supersededAt: null };
const lot: Parameters<typeof asPrinted>[0] = {
  codeState: 'printed',
  codes: [
    { ...code, kind: 'lot', code: 'HU-118' },
    { ...code, kind: 'lot', code: 'HU-811', supersededAt: '2026-02-01T00:00:00Z' },
  ],
  useBy: '2027-02-28',
  useByPrecision: 'month',
  manufacturedOn: null,
};

it('shows the record as it is printed', () => {
  expect(asPrinted(lot)).toEqual({
    ...{ codeState: 'printed', useBy: '2027-02', manufacturedOn: '', reason: '' },
    codes: [{ kind: 'lot', code: 'HU-118' }],
  });
});

it.each([
  ['nothing but the reason when nothing was touched', {}, {}],
  ['a date', { useBy: '2027-03-01' }, { useBy: '2027-03-01' }],
  ['that no date is printed', { useBy: ' ' }, { useBy: null }],
  ['a manufacture date', { manufacturedOn: '2026-01-05' }, { manufacturedOn: '2026-01-05' }],
  [
    'all codes when one differs',
    {
      codes: [
        { kind: 'lot' as const, code: ' HU-119 ' },
        { kind: 'batch' as const, code: '' },
      ],
    },
    { codes: [{ kind: 'lot', code: 'HU-119' }] },
  ],
  ['why there is no code', { codeState: 'unreadable' as const }, { codeState: 'unreadable' }],
])('sends %s', (_, changes, sent) => {
  expect(lotCorrection(lot, { ...asPrinted(lot), ...changes, reason: 'misread' })).toEqual({
    ...sent,
    reason: 'misread',
  });
});

it('offers to take back what stands by itself only', () => {
  const movement = { kind: 'wasted', reversesId: null, reversedById: null, sessionId: null };
  expect(isReversible(movement)).toBe(true);
  for (const other of [{ kind: 'blended' }, { reversesId: 'm' }, { reversedById: 'm' }, { sessionId: 's' }]) {
    expect(isReversible({ ...movement, ...other })).toBe(false);
  }
});
