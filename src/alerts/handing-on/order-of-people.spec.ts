import { describe, expect, it } from 'vitest';
import { orderOfPeople, type PersonInOrder } from './order-of-people.js';

const people: PersonInOrder[] = [
  { personId: 'first owner', role: 'owner' },
  { personId: 'artist', role: 'artist' },
  { personId: 'first manager', role: 'manager' },
  { personId: 'second owner', role: 'owner' },
  { personId: 'second manager', role: 'manager' },
];
const ids = (order: PersonInOrder[]) => order.map(({ personId }) => personId);

describe('orderOfPeople', () => {
  it('is managers, then owners, as they came, where the studio named nobody', () => {
    expect(ids(orderOfPeople(people, [], null))).toEqual([
      'first manager',
      'second manager',
      'first owner',
      'second owner',
    ]);
  });

  it('is the order the studio named, and nobody else', () => {
    expect(ids(orderOfPeople(people, ['artist', 'first owner'], null))).toEqual(['artist', 'first owner']);
  });

  it('passes over who left', () => {
    expect(ids(orderOfPeople(people, ['gone', 'artist'], 'gone too'))).toEqual(['artist']);
  });

  it('is managers, then owners, once all whom the studio named have left', () => {
    expect(orderOfPeople(people, ['gone', 'gone too'], null)).toEqual(orderOfPeople(people, [], null));
  });

  it('begins with whoever it was given to, once', () => {
    expect(ids(orderOfPeople(people, ['first owner', 'artist'], 'artist'))).toEqual([
      'artist',
      'first owner',
    ]);
    expect(ids(orderOfPeople(people, ['first owner'], 'artist'))).toEqual(['artist', 'first owner']);
  });
});
