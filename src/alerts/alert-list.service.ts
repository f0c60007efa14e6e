import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import { maximumPageSize } from '../platform/request.dto.js';
import { Alert } from './alert.entity.js';
import type { AlertPageDto } from './alerts.dto.js';
import type { AlertDeliveryView, AlertPageView, AlertView } from './alerts.views.js';
import { ConditionEvaluators } from './condition-evaluators.service.js';
import { deliveryView } from './outbox/delivery-list.service.js';
import { OutboxRow } from './outbox/outbox-row.entity.js';

type AlertRow = Omit<AlertView, 'facts' | 'endsWhenAcknowledged'> & { facts: string };

const columns = `id, kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts,
  opened_at AS "openedAt", acknowledged_at AS "acknowledgedAt", acknowledged_by AS "acknowledgedBy",
  closed_at AS "closedAt", put_off_until AS "putOffUntil", given_to AS "givenTo", closed_by AS "closedBy"`;

/** Shows alerts and how they were told. */
@Injectable()
export class AlertList {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly evaluators: ConditionEvaluators,
  ) {}

  async page(
    actor: Actor,
    { state = 'open', putOff, givenTo, severity, kind, limit = defaultPageSize, after }: AlertPageDto,
  ): Promise<AlertPageView> {
    await refuseUnknownStart(this.database.read, 'alert', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    const conditions = ['studio_id = $1'];
    if (state !== 'all') conditions.push(`closed_at IS ${state === 'open' ? '' : 'NOT '}NULL`);
    const put = (value: SqlValue) => `$${parameters.push(value)}`;
    if (putOff !== undefined) {
      const isPutOff = `put_off_until > ${put(this.clock.now())}`;
      conditions.push(putOff === 'yes' ? isPutOff : `(put_off_until IS NULL OR NOT ${isPutOff})`);
    }
    if (givenTo !== undefined) conditions.push(`given_to = ${put(actor.personId)}`);
    if (severity !== undefined) conditions.push(`severity = ${put(severity)}`);
    if (kind !== undefined) conditions.push(`kind = ${put(kind)}`);
    if (after !== undefined) {
      conditions.push(
        `(opened_at, id) < (SELECT opened_at, id FROM alert WHERE studio_id = $1 AND id = ${put(after)})`,
      );
    }
    const rows = await this.database.read<AlertRow>(
      `SELECT ${columns} FROM alert WHERE ${conditions.join(' AND ')}
       ORDER BY opened_at DESC, id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const items = shown.map((row) => ({
      ...row,
      facts: JSON.parse(row.facts),
      endsWhenAcknowledged: !this.evaluators.finds(row.kind),
    }));
    return { items, next };
  }

  async deliveries(actor: Actor, alertId: string): Promise<AlertDeliveryView[]> {
    const key = { studioId: actor.studioId, id: alertId };
    if (!(await this.database.reader.manager.existsBy(Alert, key))) throw notFound('alert', alertId);
    // Few steps, each to few destinations; of more than that the latest are shown.
    const rows = await this.database.reader.manager.find(OutboxRow, {
      where: { studioId: actor.studioId, alertId },
      order: { createdAt: 'DESC', id: 'DESC' },
      take: maximumPageSize,
    });
    return rows.reverse().map(deliveryView);
  }
}
