import { Injectable } from '@nestjs/common';
import type { StudioActor } from '../../identity/actor.guard.js';
import { Config } from '../../platform/config.js';
import { Database, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { notFound } from '../../platform/problem.js';
import type { AlertDeliveryView } from '../alerts.views.js';
import { deliveryView } from '../outbox/delivery-list.service.js';
import { OutboxRow } from '../outbox/outbox-row.entity.js';
import { AlertDestination } from './alert-destination.entity.js';
import type { AlertDestinationPageDto } from './alert-destinations.dto.js';
import type { AlertDestinationPageView } from './alert-destinations.views.js';
import { DestinationViews } from './destination-views.service.js';
import { refuseAnothers } from './destinations.service.js';

const deliveriesShown = 50;

const columns = `studio_id AS "studioId", id, kind, person_id AS "personId", data_key_id AS "dataKeyId",
  settings_sealed AS "settingsSealed", minimum_severity AS "minimumSeverity", state, state_reason AS "stateReason",
  version, created_at AS "createdAt"`;

/** Shows where alerts go, and what came of it. */
@Injectable()
export class DestinationList {
  constructor(
    private readonly database: Database,
    private readonly config: Config,
    private readonly views: DestinationViews,
  ) {}

  async page(
    actor: StudioActor,
    { whose, limit = defaultPageSize, after }: AlertDestinationPageDto,
  ): Promise<AlertDestinationPageView> {
    const { studioId, personId, may } = actor;
    await refuseUnknownStart(this.database.read, 'alert_destination', studioId, after);
    const parameters: SqlValue[] = [studioId];
    const conditions = ['studio_id = $1', "state <> 'removed'"];
    if (whose === 'own' || !may.has('change alert channels')) {
      conditions.push(`person_id = $${parameters.push(personId)}`);
    }
    if (after !== undefined) {
      conditions.push(
        `(created_at, id) > (SELECT created_at, id FROM alert_destination WHERE studio_id = $1 AND id = $${parameters.push(after)})`,
      );
    }
    const rows = await this.database.read<AlertDestination>(
      `SELECT ${columns} FROM alert_destination WHERE ${conditions.join(' AND ')}
       ORDER BY created_at, id LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const items = await this.views.opened(studioId, shown);
    return { items, next, mailServerSet: this.config.mailServer !== undefined };
  }

  async deliveries(actor: StudioActor, destinationId: string): Promise<AlertDeliveryView[]> {
    const { studioId } = actor;
    const { manager } = this.database.reader;
    const destination = await manager.findOneBy(AlertDestination, { studioId, id: destinationId });
    if (!destination) throw notFound('alert destination', destinationId);
    refuseAnothers(actor, destination);
    const rows = await manager.find(OutboxRow, {
      where: { studioId, destinationId },
      order: { createdAt: 'DESC', id: 'DESC' },
      take: deliveriesShown,
    });
    return rows.map(deliveryView);
  }
}
