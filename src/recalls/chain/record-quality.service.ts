import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { invalidField } from '../../platform/problem.js';
import { instantsOfDays } from '../../sessions/day-range.js';
import { percent } from '../drills/drill-score.js';
import { ChainHeads } from './chain-heads.service.js';
import type { RecordQualityDto } from './record-quality.dto.js';
import type { ChainRecordQualityView, RecordQualityView } from './record-quality.views.js';

interface Period {
  from: string;
  through: string;
}

interface CountedUses {
  uses: number;
  late: number | null;
  picked: number | null;
  corrected: number | null;
  againstRefusal: number | null;
}

/** How well uses are recorded: what a recall could be answered with today. */
@Injectable()
export class RecordQuality {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly heads: ChainHeads,
  ) {}

  /** @throws Problem invalid-fields when the days run backwards */
  async ofStudio(actor: Actor, dto: RecordQualityDto): Promise<RecordQualityView> {
    const [studio] = await this.database.read<{ name: string }>('SELECT name FROM studio WHERE id = $1', [
      actor.studioId,
    ]);
    const { studioId, timeZone } = actor;
    return this.count({ studioId, name: studio?.name ?? '' }, this.period(dto, timeZone), timeZone);
  }

  /** @throws Problem invalid-fields; not-allowed naming the studios that the person does not lead */
  async ofChain(actor: Actor, dto: RecordQualityDto): Promise<ChainRecordQualityView> {
    const led = await this.heads.require(actor);
    const rows = await this.database.read<{ id: string; timeZone: string }>(
      'SELECT id, time_zone AS "timeZone" FROM studio WHERE chain_id = $1',
      [actor.chainId],
    );
    const timeZones = new Map(rows.map(({ id, timeZone }) => [id, timeZone]));
    const studios: RecordQualityView[] = [];
    for (const studio of led) {
      const timeZone = timeZones.get(studio.studioId) ?? actor.timeZone;
      studios.push(await this.count(studio, this.period(dto, timeZone), timeZone));
    }
    return { studios };
  }

  private period({ from, through }: RecordQualityDto, timeZone: string): Period {
    const last = through ?? localDay(this.clock.now(), timeZone);
    const first = from ?? Temporal.PlainDate.from(last).subtract({ years: 1 }).add({ days: 1 }).toString();
    if (first > last) {
      throw invalidField('from', `The days end, ${last}, before they begin, ${first}. Turn them round.`);
    }
    return { from: first, through: last };
  }

  private async count(
    { studioId, name }: { studioId: string; name: string },
    { from, through }: Period,
    timeZone: string,
  ): Promise<RecordQualityView> {
    const range = instantsOfDays(from, through, timeZone);
    if (range === null) throw invalidField('from', `There is no time from ${from} through ${through}.`);
    // By the start of the session, for which there is an index; few have none.
    const [row] = await this.database.read<CountedUses>(
      `SELECT count(*) AS uses,
         sum(CASE WHEN session.recorded_from <> 'tray' OR session_use.via = 'paper' THEN 1 ELSE 0 END) AS late,
         sum(CASE WHEN session_use.known_by = 'picked from a list' THEN 1 ELSE 0 END) AS picked,
         sum(CASE WHEN session_use.against_refusal IS NULL THEN 0 ELSE 1 END) AS "againstRefusal",
         sum(CASE WHEN reversal.use_id IS NULL THEN 0 ELSE 1 END) AS corrected
       FROM session
         JOIN session_use ON session_use.studio_id = session.studio_id AND session_use.session_id = session.id
         LEFT JOIN session_use_reversal AS reversal
           ON reversal.studio_id = session_use.studio_id AND reversal.use_id = session_use.id
       WHERE session.studio_id = $1 AND (
         session.planned_start >= $2 AND session.planned_start < $3
         OR session.planned_start IS NULL AND session.completed_at >= $2 AND session.completed_at < $3)`,
      [studioId, range.from, range.before],
    );
    const { uses = 0, late, picked, corrected, againstRefusal } = row ?? {};
    return {
      studioId,
      studioName: name,
      from,
      through,
      uses,
      late: late ?? 0,
      latePercent: percent(late ?? 0, uses),
      picked: picked ?? 0,
      pickedPercent: percent(picked ?? 0, uses),
      corrected: corrected ?? 0,
      correctedPercent: percent(corrected ?? 0, uses),
      againstRefusal: againstRefusal ?? 0,
      againstRefusalPercent: percent(againstRefusal ?? 0, uses),
    };
  }
}
