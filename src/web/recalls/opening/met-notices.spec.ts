import { expect, it } from 'vitest';
import { sortByMet } from './met-notices.js';

it('puts first what surely meets something here, then what possibly does, each in the order of the file', () => {
  const notices = [
    { number: 1, certainLots: 0, possibleLots: 0 },
    { number: 2, certainLots: 0, possibleLots: 3 },
    { number: 3, certainLots: 1, possibleLots: 0 },
    { number: 4, certainLots: 0, possibleLots: 1 },
    { number: 5, certainLots: 2, possibleLots: 9 },
  ];
  expect(sortByMet(notices).map(({ number }) => number)).toEqual([3, 5, 2, 4, 1]);
});
