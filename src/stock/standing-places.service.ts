import { Injectable } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound, Problem } from '../platform/problem.js';

/** Checks where stock is put and whose it becomes. */
@Injectable()
export class StandingPlaces {
  /** @throws Problem not-found, or wrong-state when a place is no longer used */
  async checkPlaces(transaction: Transaction, placeIds: readonly string[]): Promise<void> {
    const ids = [...new Set(placeIds)];
    if (ids.length === 0) return;
    const places = await transaction.query<{ id: string; name: string; archived_at: string | null }>(
      `SELECT id, name, archived_at FROM place WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    const missing = ids.find((id) => !places.some((place) => place.id === id));
    if (missing !== undefined) throw notFound('place', missing);
    const archived = places.find((place) => place.archived_at !== null);
    if (archived === undefined) return;
    throw new Problem(
      409,
      'wrong-state',
      `The place "${archived.name}" is no longer used. Name another place.`,
    );
  }

  /** @throws Problem not-found, or wrong-state when a person has left */
  async checkOwners(transaction: Transaction, personIds: readonly string[]): Promise<void> {
    const ids = [...new Set(personIds)];
    if (ids.length === 0) return;
    const people = await transaction.query<{ id: string; state: string }>(
      `SELECT id, state FROM person WHERE studio_id = $1 AND id IN (${placeholders(ids)})`,
      [transaction.studioId, ...ids],
    );
    const missing = ids.find((id) => !people.some((person) => person.id === id));
    if (missing !== undefined) throw notFound('person', missing);
    const left = people.find((person) => person.state !== 'active');
    if (left === undefined) return;
    throw new Problem(
      409,
      'wrong-state',
      `The person ${left.id} does not work here any more and can own no stock.`,
    );
  }
}
