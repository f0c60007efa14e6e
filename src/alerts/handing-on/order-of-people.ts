/** Somebody who may be told of an urgent alert. */
export interface PersonInOrder {
  personId: string;
  role: 'owner' | 'manager' | 'artist' | 'auditor' | 'chain manager';
}

/**
 * In which order people are told of an urgent alert. Whoever it was given to comes first; then those the studio named,
 * in its order; where it named nobody who still works here, managers, then owners, as they came.
 *
 * @param people those who work in the studio just now, in the order in which they came
 * @param named ids the studio put in order; whoever left is passed over
 * @param givenTo id of the person who sees to the alert, or null
 */
export function orderOfPeople<Person extends PersonInOrder>(
  people: readonly Person[],
  named: readonly string[],
  givenTo: string | null,
): Person[] {
  const byId = new Map(people.map((person) => [person.personId, person]));
  const chosen = named.flatMap((id) => byId.get(id) ?? []);
  const ofRole = (role: PersonInOrder['role']) => people.filter((person) => person.role === role);
  const order = chosen.length > 0 ? chosen : [...ofRole('manager'), ...ofRole('owner')];
  const first = givenTo === null ? undefined : byId.get(givenTo);
  return [...new Set(first === undefined ? order : [first, ...order])];
}
