import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { Transactions } from '../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound } from '../platform/problem.js';
import { maximumPageSize, type WriteDto } from '../platform/request.dto.js';
import { Alert } from './alert.entity.js';
import type { AlertPageDto } from './alerts.dto.js';
import { Alerts } from './alerts.service.js';
import type { AlertDeliveryView, AlertPageView, AlertView } from './alerts.views.js';
import { OutboxRow } from './outbox/outbox-row.entity.js';

type AlertRow = Omit<AlertView, 'facts'> & { facts: string };

const columns = `id, kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts,
  opened_at AS "openedAt", acknowledged_at AS "acknowledgedAt", acknowledged_by AS "acknowledgedBy",
  closed_at AS "closedAt", put_off_until AS "putOffUntil", given_to AS "givenTo", closed_by AS "closedBy"`;

/** Shows alerts, and notes that somebody has seen to one. */
@Injectable()
export class AlertList {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly alerts: Alerts,
  ) {}

  async page(
    actor: Actor,
    { state = 'open', limit = defaultPageSize, after }: AlertPageDto,
  ): Promise<AlertPageView> {
    await refuseUnknownStart(this.database.read, 'alert', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    const conditions = ['studio_id = $1'];
    if (state !== 'all') conditions.push(`closed_at IS ${state === 'open' ? '' : 'NOT '}NULL`);
    if (after !== undefined) {
      parameters.push(after);
      conditions.push('(opened_at, id) < (SELECT opened_at, id FROM alert WHERE studio_id = $1 AND id = $2)');
    }
    const rows = await this.database.read<AlertRow>(
      `SELECT ${columns} FROM alert WHERE ${conditions.join(' AND ')}
       ORDER BY opened_at DESC, id DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown.map((row) => ({ ...row, facts: JSON.parse(row.facts) })), next };
  }

  /** Notes who has seen to an alert. */
  acknowledge(actor: Actor, alertId: string, dto: WriteDto): Promise<AlertView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'alerts.acknowledge',
        subject: { kind: 'alert', id: alertId },
        content: { ...dto, alertId },
      },
      async (transaction) => viewOf(await this.alerts.acknowledge(transaction, alertId)),
    );
  }

  async deliveries(actor: Actor, alertId: string): Promise<AlertDeliveryView[]> {
    const key = { studioId: actor.studioId, id: alertId };
    if (!(await this.database.reader.manager.existsBy(Alert, key))) throw notFound('alert', alertId);
    // One for its opening and one for its closing.
    const rows = await this.database.reader.manager.find(OutboxRow, {
      where: { studioId: actor.studioId, alertId },
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumPageSize,
    });
    return rows.map(({ studioId: _, alertId: __, summaryId: ___, notBefore: ____, begun, ...view }) => ({
      ...view,
      unknownAttempts: (begun ?? 0) - view.attempts,
    }));
  }
}

function viewOf({ studioId: _, endedAt: __, turn: ___, turnAt: ____, ...view }: Alert): AlertView {
  return view;
}
