import { Injectable } from '@nestjs/common';
import { Config } from '../../platform/config.js';
import { Database } from '../../platform/database/database.js';
import type { AlertSeverity } from '../open-condition.js';
import type { OutboxRow } from '../outbox/outbox-row.entity.js';
import type { SummaryContent } from '../summaries/summary-choice.js';
import { summaryText } from '../summaries/summary-words.js';
import { alertPath } from './alert-path.js';
import { alertText } from './alert-text.js';
import type { ChannelMessage } from './channel-message.js';
import { plainLine } from './plain-line.js';
import { SendFailure } from './send-failure.js';

const longestStudioName = 100;

interface AlertRow {
  kind: string;
  subjectKind: string;
  subjectId: string;
  severity: AlertSeverity;
  facts: string;
  closedAt: string | null;
}

/** Puts into words what an outbox row tells of, as the record stands now. Reads only. */
@Injectable()
export class MessageWriter {
  constructor(
    private readonly database: Database,
    private readonly config: Config,
  ) {}

  /** @throws SendFailure lasting, when what the row tells of is not there */
  async write(row: OutboxRow): Promise<ChannelMessage> {
    const { studioId, id, event, createdAt } = row;
    const [studio] = await this.database.read<{ name: string; timeZone: string }>(
      'SELECT name, time_zone AS "timeZone" FROM studio WHERE id = $1',
      [studioId],
    );
    if (!studio) throw new SendFailure('Its studio is not in the record.', true);
    const head = {
      deliveryId: id,
      event,
      studio: { id: studioId, name: plainLine(studio.name, longestStudioName) },
      occurredAt: createdAt,
    };
    if (event === 'test') return { ...head, ...this.test(studioId) };
    if (event === 'summary') return { ...head, ...(await this.summary(row)) };
    return { ...head, ...(await this.alert(row, studio.timeZone)) };
  }

  private test(studioId: string) {
    const lines = [
      'Somebody asked whether messages arrive here. They do; nothing is wrong and nothing is to be done.',
    ];
    return {
      severity: null,
      title: 'A test from Lotward',
      parts: [{ heading: null, lines }],
      link: this.link(studioId),
      alert: null,
    };
  }

  /** As it was written in the morning, however late it is sent. */
  private async summary({ studioId, summaryId }: OutboxRow) {
    const [row] = await this.database.read<{ content: string }>(
      'SELECT content FROM morning_summary WHERE studio_id = $1 AND id = $2',
      [studioId, summaryId],
    );
    if (!row) throw new SendFailure('Its summary is not in the record.', true);
    return {
      severity: null,
      ...summaryText(JSON.parse(row.content) as SummaryContent),
      link: this.link(studioId, `/studios/${studioId}/alerts/morning`),
      alert: null,
    };
  }

  private async alert({ studioId, alertId, event }: OutboxRow, timeZone: string) {
    const [row] = await this.database.read<AlertRow>(
      `SELECT kind, subject_kind AS "subjectKind", subject_id AS "subjectId", severity, facts,
         closed_at AS "closedAt" FROM alert
       WHERE studio_id = $1 AND id = $2`,
      [studioId, alertId],
    );
    if (!row || alertId === null) throw new SendFailure('Its alert is not in the record.', true);
    const { kind, subjectKind, subjectId, severity, closedAt } = row;
    const facts = JSON.parse(row.facts) as Record<string, unknown>;
    return {
      severity,
      ...alertText({ event, kind, severity, subjectKind, facts, isClosed: closedAt !== null, timeZone }),
      link: this.link(studioId, alertPath(studioId, { kind, subjectKind, subjectId, facts })),
      alert: { id: alertId, kind, subjectKind, subjectId, facts, closedAt },
    };
  }

  /** To a page of the app; to the day's, where there is none of its own. */
  private link(studioId: string, path = `/studios/${studioId}/today`): string {
    return this.config.publicUrl + path;
  }
}
