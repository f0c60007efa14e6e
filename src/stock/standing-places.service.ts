import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { notFound, Problem } from '../platform/problem.js';

/** Checks where stock is put and whose it becomes. */
@Injectable()
export class StandingPlaces {
  /** @throws Problem not-found, or wrong-state when the place is no longer used */
  async checkPlace(transaction: Transaction, placeId: string): Promise<void> {
    const [place] = await transaction.query<{ name: string; archived_at: string | null }>(
      'SELECT name, archived_at FROM place WHERE studio_id = $1 AND id = $2',
      [transaction.studioId, placeId],
    );
    if (!place) throw notFound('place', placeId);
    if (place.archived_at !== null) {
      throw new Problem(
        409,
        'wrong-state',
        `The place "${place.name}" is no longer used. Name another place.`,
      );
    }
  }

  /** @throws Problem not-found, or wrong-state when the person has left */
  async checkOwner(transaction: Transaction, personId: string): Promise<void> {
    const [person] = await transaction.query<{ state: string }>(
      'SELECT state FROM person WHERE studio_id = $1 AND id = $2',
      [transaction.studioId, personId],
    );
    if (!person) throw notFound('person', personId);
    if (person.state !== 'active') {
      throw new Problem(409, 'wrong-state', 'This person does not work here any more and can own no stock.');
    }
  }
}
