import { expect, it } from 'vitest';
import { type ClaimForSupplier, claimText } from './claim-text.js';
import { claimReasons } from './vocabulary.js';

const claim: ClaimForSupplier = {
  studioName: 'Studio Lerche',
  studioContact: null,
  supplierName: 'Pellworm Supply',
  customerNumber: null,
  orderNumber: null,
  deliveryReference: null,
  deliveredOn: null,
  product: null,
  orderCode: null,
  lotCode: null,
  useBy: null,
  reason: 'other',
  pieces: 2,
  amount: null,
  note: null,
};

it('leaves out what is not known, and leaves no hole', () => {
  const text = claimText(claim);
  expect(text).not.toMatch(/null|undefined|\n\n\n/);
  expect(text).toBe(
    'To Pellworm Supply\n\n2 pieces are claimed.\n\nPlease tell us how you make this good: by a replacement or a credit.\n\nStudio Lerche\n',
  );
});

it('says all that is known', () => {
  const text = claimText({
    ...claim,
    ...{ customerNumber: 'K-1', orderNumber: 12, deliveryReference: 'LS 88', deliveredOn: '2026-03-01' },
    ...{ product: 'Halden Ink Umber', orderCode: 'PW-7', lotCode: 'L 77', useBy: '2026-05-31' },
    ...{ reason: 'short date', pieces: 1, amount: 'EUR 24.90', note: 'Wanted for May.' },
  });
  for (const said of [
    '1 piece ',
    'K-1',
    '12',
    'LS 88',
    '2026-03-01',
    'PW-7',
    'L 77',
    'EUR 24.90',
    'Wanted for May.',
  ]) {
    expect(text).toContain(said);
  }
});

it('has words for every reason', () => {
  for (const reason of claimReasons) expect(claimText({ ...claim, reason })).toContain('2 pieces');
});
