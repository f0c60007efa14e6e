import { Injectable, Logger, type OnApplicationBootstrap } from '@nestjs/common';
import { systemActor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { Transactions } from '../platform/database/transactions.js';
import { ServiceKey } from '../platform/encryption/service-key.service.js';
import { ProcessRole } from '../platform/process-role.js';
import { StudioFounding } from './studio-founding.service.js';

/** Founds the first studio when the database is empty; its owner comes in by a one-time link. */
@Injectable()
export class FirstStart implements OnApplicationBootstrap {
  private readonly logger = new Logger('first start');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly serviceKey: ServiceKey,
    private readonly founding: StudioFounding,
    private readonly role: ProcessRole,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    if (!this.role.serving) return;
    const [existing] = await this.database.read<{ id: string; chainId: string; timeZone: string }>(
      `SELECT id, chain_id AS "chainId", time_zone AS "timeZone" FROM studio ORDER BY created_at, id LIMIT 1`,
    );
    if (existing) return this.ensureServiceKey(existing);
    const { studioId } = await this.founding.found({
      name: 'My studio',
      timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      houseBlends: 'off',
      owner: { name: 'Owner', accountId: null },
    });
    this.logger.log(`An empty studio was made: ${studioId}`);
  }

  /** A database of before there was signing in has no key of the service yet. */
  private async ensureServiceKey(studio: { id: string; chainId: string; timeZone: string }): Promise<void> {
    if (await this.serviceKey.exists()) return;
    await this.transactions.write(
      systemActor(studio),
      {
        id: null,
        action: 'identity.make-service-key',
        subject: { kind: 'studio', id: studio.id },
        content: null,
      },
      (transaction) => this.serviceKey.ensure(transaction),
    );
  }
}
