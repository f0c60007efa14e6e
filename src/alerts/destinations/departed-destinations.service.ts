import { Injectable, type OnModuleInit } from '@nestjs/common';
import { Departures } from '../../identity/departures.service.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { AlertDestination } from './alert-destination.entity.js';

/** Stops the destinations of a person who leaves, in the transaction in which they leave. */
@Injectable()
export class DepartedDestinations implements OnModuleInit {
  constructor(private readonly departures: Departures) {}

  onModuleInit(): void {
    this.departures.register((transaction, personId) => this.stop(transaction, personId));
  }

  private async stop(transaction: Transaction, personId: string): Promise<void> {
    const { studioId } = transaction;
    const rows = await transaction.query<{ id: string; version: number }>(
      `SELECT id, version FROM alert_destination
       WHERE studio_id = $1 AND person_id = $2 AND state IN ('active', 'paused') ORDER BY id`,
      [studioId, personId],
    );
    for (const { id, version } of rows) {
      await transaction.update(
        AlertDestination,
        { studioId, id },
        { state: 'stopped', stateReason: 'Its person works in the studio no more.', version: version + 1 },
      );
    }
  }
}
