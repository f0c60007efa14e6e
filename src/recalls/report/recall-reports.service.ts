import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import { obstaclesTo } from '../closing/closing-obstacles.js';
import { obstacleView } from '../closing/readiness.service.js';
import { RecallFigures } from '../closing/recall-figures.service.js';
import { timedSteps } from '../drills/drill-steps.js';
import { RecallSteps } from '../drills/recall-steps.service.js';
import { RecallClosing } from '../recall-closing.entity.js';
import { type KnownRecall, RecallRegister } from '../recall-register.service.js';
import type { ClosingOutcome, ClosingOverride } from '../vocabulary.js';
import type { RecallReportView, ReportClosingView } from './recall-report.views.js';
import { ReportRows } from './report-rows.service.js';
import { reportTimeline, type TimelineFacts } from './report-timeline.js';

/** The report without what is known only afterwards, or is not kept: closing and names. Kept as the facts of a closing. */
export type RecallReport = Omit<RecallReportView, 'closing' | 'people'>;

/** The report of a recall: drawn up at any time while it is open, kept as it was at the closing from then on. */
@Injectable()
export class RecallReports {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly people: People,
    private readonly register: RecallRegister,
    private readonly figures: RecallFigures,
    private readonly steps: RecallSteps,
    private readonly rows: ReportRows,
  ) {}

  /** @throws Problem not-found */
  async of({ studioId }: Actor, recallId: string): Promise<RecallReportView> {
    const { read } = this.database;
    const recall = await this.register.find(read, studioId, recallId);
    const ending = recall.state === 'open' ? null : await this.ending(studioId, recallId);
    const report =
      ending?.outcome === 'closed'
        ? ({ ...ending.facts } as RecallReport)
        : await this.draw(read, studioId, recall, this.clock.now());
    const { state, endedAt } = recall;
    const closing = ending === null ? null : closingView(ending);
    const named = personIds(report, closing);
    const names = await this.people.namesOf(studioId, named);
    return {
      ...report,
      recall: { ...report.recall, state, endedAt },
      closing,
      people: named.map((id) => ({ id, name: names.get(id) ?? null })),
    };
  }

  /**
   * Draws the report up as it stands at an instant; in a transaction too.
   * @param closing the closing that is about to be recorded, so that the timeline ends with it
   */
  async draw(
    read: Read,
    studioId: string,
    recall: KnownRecall,
    at: string,
    closing: TimelineFacts['closings'] = [],
  ): Promise<RecallReport> {
    const { id, title, kind, state, chainWide, openedAt, endedAt } = recall;
    const studio = await this.rows.studio(read, studioId);
    const figures = await this.figures.of(read, studioId, id);
    const scopes = await this.rows.scopes(read, studioId, id);
    const done = await this.steps.done(read, studioId, id);
    const containers = await this.rows.containers(read, studioId, id);
    const dispositions = await this.rows.dispositions(read, studioId, id);
    const { closings, ...events } = await this.rows.events(read, studioId, id);
    return {
      drawnAt: at,
      studio,
      recall: {
        id,
        title,
        kind,
        state,
        chainWide,
        openedAt,
        openedBy: await this.rows.openedBy(read, studioId, id),
        endedAt,
      },
      scopes: scopes.map(({ lots: _, ...scope }) => scope),
      timeline: reportTimeline(
        {
          title,
          kind,
          scopes: scopes.map(({ recordedAt, ...scope }) => ({ ...scope, at: recordedAt })),
          ...events,
          closings: [...closings, ...closing],
          // That it was closed is told by the closing.
          steps: done
            .filter(({ step }) => step !== 'closed')
            .map(({ step, doneAt, personId }) => ({ step, at: doneAt, personId })),
        },
        studio.timeZone,
      ),
      lots: await this.rows.lots(read, studioId, id),
      exposures: await this.rows.exposures(read, studioId, id, (instant) =>
        localDay(instant, studio.timeZone),
      ),
      contacts: await this.rows.contacts(read, studioId, id),
      balance: await this.rows.balance(read, studioId, id),
      containers,
      dispositions,
      figures,
      obstacles: obstaclesTo(kind, figures).map(obstacleView),
      steps: timedSteps(openedAt, done),
      score: kind === 'drill' ? await this.steps.score(read, studioId, recall, figures, at) : null,
    };
  }

  private ending(studioId: string, recallId: string): Promise<RecallClosing | null> {
    return this.database.reader.manager.findOne(RecallClosing, {
      where: { studioId, recallId },
      order: { recordedAt: 'DESC', id: 'DESC' },
    });
  }
}

function closingView({
  outcome,
  reason,
  occurredAt,
  overrides,
  signedBy,
  secondSignedBy,
}: RecallClosing): ReportClosingView {
  return {
    outcome: outcome satisfies ClosingOutcome,
    reason,
    at: occurredAt,
    overrides: overrides satisfies ClosingOverride[],
    signedBy,
    secondSignedBy,
  };
}

/** Everybody whom a report names by id, each once. */
function personIds(report: RecallReport, closing: ReportClosingView | null): string[] {
  const ids = [
    report.recall.openedBy,
    ...report.scopes.map(({ personId }) => personId),
    ...report.timeline.map(({ personId }) => personId),
    ...report.lots.map(({ decision }) => decision?.personId),
    ...report.containers.map(({ personId }) => personId),
    ...report.dispositions.flatMap(({ personId, witnessId }) => [personId, witnessId]),
    ...report.steps.map(({ personId }) => personId),
    closing?.signedBy,
    closing?.secondSignedBy,
  ];
  return [...new Set(ids.filter((id): id is string => id != null))];
}
