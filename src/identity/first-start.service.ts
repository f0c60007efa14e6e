import { Injectable, Logger, type OnApplicationBootstrap } from '@nestjs/common';
import { Database } from '../platform/database/database.js';
import { ProcessRole } from '../platform/process-role.js';
import { StudioFounding } from './studio-founding.service.js';

/** Founds the first studio with its owner when the database is empty. */
@Injectable()
export class FirstStart implements OnApplicationBootstrap {
  private readonly logger = new Logger('first start');

  constructor(
    private readonly database: Database,
    private readonly founding: StudioFounding,
    private readonly role: ProcessRole,
  ) {}

  async onApplicationBootstrap(): Promise<void> {
    if (!this.role.serving) return;
    const existing = await this.database.read('SELECT id FROM studio LIMIT 1');
    if (existing.length > 0) return;
    const { studioId } = await this.founding.found({
      name: 'My studio',
      ownerName: 'Owner',
      timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
      houseBlends: 'off',
    });
    this.logger.log(`An empty studio was made: ${studioId}`);
  }
}
