import { expect, it } from 'vitest';
import { choiceOf, filtersOf, searchOf } from './alert-choice.js';

it('is, without a word in the address, what is open and not put off, the worst first', () => {
  const choice = choiceOf(new URLSearchParams());
  expect(choice).toEqual({ state: 'open', isMine: false, kind: null, severity: null, order: 'worst' });
  expect(searchOf(choice)).toEqual({});
  expect(filtersOf(choice)).toEqual({ state: 'open', putOff: 'no' });
});

it.each([
  ['state=put+off&mine=', { state: 'open', putOff: 'yes', givenTo: 'me' }],
  ['state=closed&kind=low+stock&order=latest', { state: 'closed', kind: 'low stock' }],
  ['state=all&severity=urgent', { state: 'all', severity: 'urgent' }],
])('asks for %s, and writes it as it was', (address, filters) => {
  const choice = choiceOf(new URLSearchParams(address));
  expect(filtersOf(choice)).toEqual(filters);
  expect(new URLSearchParams(searchOf(choice)).toString()).toBe(address);
});

it('takes no notice of words it does not know', () => {
  const choice = choiceOf(new URLSearchParams('state=x&severity=toString&order=&kind='));
  expect(choice).toEqual(choiceOf(new URLSearchParams()));
});
