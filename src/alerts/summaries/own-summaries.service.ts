import { Injectable } from '@nestjs/common';
import type { StudioActor } from '../../identity/actor.guard.js';
import { localDay } from '../../identity/local-day.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders, type SqlValue } from '../../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import type { PageDto } from '../../platform/request.dto.js';
import type {
  MorningSummaryPageView,
  MorningSummaryView,
  SummaryDeliveryView,
  SummaryNowView,
} from './morning-summaries.views.js';
import { type SummaryContent, summaryOf } from './summary-choice.js';
import { nextSummary } from './summary-due.js';
import { SummaryLines } from './summary-lines.service.js';
import { type SummaryReader, SummaryReaders } from './summary-readers.service.js';

interface SummaryRow {
  id: string;
  day: string;
  createdAt: string;
  content: string;
}

/** Shows a person their own summaries. */
@Injectable()
export class OwnSummaries {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly readers: SummaryReaders,
    private readonly lines: SummaryLines,
  ) {}

  async now(actor: StudioActor): Promise<SummaryNowView> {
    const { studioId, timeZone, personId } = actor;
    const { read } = this.database;
    const now = this.clock.now();
    const reader = (await this.readers.of(read, actor, now)).find((each) => each.personId === personId);
    const material = await this.lines.material(read, studioId, now);
    const wish = reader?.wish ?? null;
    return {
      ...summaryOf(localDay(now, timeZone), material, reader?.preference.kindsLeftOut ?? []),
      nextAt: wish === null ? null : nextSummary(now, wish, timeZone),
      whyNone: wish === null ? whyNone(reader) : null,
    };
  }

  async page(
    { studioId, personId }: StudioActor,
    { limit = defaultPageSize, after }: PageDto,
  ): Promise<MorningSummaryPageView> {
    const { read } = this.database;
    await refuseUnknownStart(read, 'morning_summary', studioId, after);
    const parameters: SqlValue[] = [studioId, personId];
    let later = '';
    if (after !== undefined) {
      parameters.push(after);
      later =
        'AND day < (SELECT day FROM morning_summary WHERE studio_id = $1 AND person_id = $2 AND id = $3)';
    }
    const rows = await read<SummaryRow>(
      `SELECT id, day, created_at AS "createdAt", content FROM morning_summary
       WHERE studio_id = $1 AND person_id = $2 ${later} ORDER BY day DESC LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const deliveries = await this.deliveriesOf(
      studioId,
      shown.map(({ id }) => id),
    );
    return {
      items: shown.map(({ content, ...row }): MorningSummaryView => {
        const { parts } = JSON.parse(content) as SummaryContent;
        return { ...row, parts, deliveries: deliveries.get(row.id) ?? [] };
      }),
      next,
    };
  }

  private async deliveriesOf(
    studioId: string,
    summaryIds: readonly string[],
  ): Promise<Map<string, SummaryDeliveryView[]>> {
    const found = new Map<string, SummaryDeliveryView[]>();
    if (summaryIds.length === 0) return found;
    const rows = await this.database.read<SummaryDeliveryView & { summaryId: string }>(
      `SELECT summary_id AS "summaryId", id, channel, destination_id AS "destinationId", state,
         last_error AS "lastError", settled_at AS "settledAt" FROM outbox
       WHERE studio_id = $1 AND summary_id IN (${placeholders(summaryIds, 2)}) ORDER BY created_at, id`,
      [studioId, ...summaryIds],
    );
    for (const { summaryId, ...row } of rows) found.set(summaryId, [...(found.get(summaryId) ?? []), row]);
    return found;
  }
}

function whyNone(reader: SummaryReader | undefined): SummaryNowView['whyNone'] {
  return reader?.preference.summary === 'daily'
    ? 'no mail address and no browser that is told'
    : 'not wanted';
}
