import { expect, it } from 'vitest';
import type { SupplierTermsView } from '../../reorder/supply/supplier-terms.views.js';
import { draftOfTerms, termsOfDraft } from './terms-draft.js';

const terms = {
  quotedLeadTimeDays: 0,
  orderWeekdays: [2, 7],
  minimumOrderMinor: 5_000,
  deliveryCostMinor: 590,
  freeDeliveryFromMinor: null,
  currency: 'EUR',
  contact: { mailAddress: 'orders@supplier.example', customerNumber: null },
} as unknown as SupplierTermsView;

it('hands in what was read, and where orders are sent only when it was changed', () => {
  const draft = draftOfTerms(terms, 'EUR', 'de');
  const content = {
    quotedLeadTimeDays: 0,
    orderWeekdays: [2, 7],
    minimumOrderMinor: 5_000,
    deliveryCostMinor: 590,
    freeDeliveryFromMinor: null,
    version: 4,
  };
  expect(termsOfDraft(draft, 'EUR', 4, {})).toEqual(content);
  const changed = { ...draft, mailAddress: ' ', customerNumber: ' C-1 ' };
  expect(termsOfDraft(changed, 'EUR', 4, { customerNumber: ' C-1 ' })).toEqual({
    ...content,
    contact: { mailAddress: null, customerNumber: 'C-1' },
  });
  expect(termsOfDraft(draft, 'EUR', null, {})).not.toHaveProperty('version');
});

it('asks for amounts anew when they were in another currency', () => {
  expect(draftOfTerms(terms, 'CHF', 'de')).toMatchObject({ minimumOrderMinor: '', deliveryCostMinor: '' });
});

it('names the amounts that are none', () => {
  const draft = {
    ...draftOfTerms(terms, 'EUR', 'de'),
    minimumOrderMinor: 'much',
    deliveryCostMinor: '1.234',
  };
  expect(termsOfDraft(draft, 'EUR', 1, {})).toEqual({
    unreadable: ['minimumOrderMinor', 'deliveryCostMinor'],
  });
});
