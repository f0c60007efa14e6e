import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleDestroy } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Config } from '../../platform/config.js';
import { type NoticeSource, withoutQuery } from '../../platform/notice-sources-setting.js';
import { ProcessRole } from '../../platform/process-role.js';
import { FetchedNoticeFollowers } from './fetched-notice-followers.service.js';
import { FetchedNotices } from './fetched-notices.service.js';
import { SourceConditions } from './source-conditions.service.js';
import { SourceReader, type SourceReading } from './source-reading.service.js';
import { afterOutcome, newSource } from './source-state.js';
import { SourceStates, sourceId } from './source-states.service.js';

const lookMilliseconds = 30_000;

/**
 * Asks each source of notices once a day, and sooner again after a failure. When each is due stands in the database, so a
 * restart asks nobody oftener. Off unless NOTICE_SOURCES names some.
 */
@Injectable()
export class SourceSchedule implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('notices');
  private readonly ending = new AbortController();
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;

  constructor(
    private readonly config: Config,
    private readonly role: ProcessRole,
    private readonly clock: Clock,
    private readonly states: SourceStates,
    private readonly reader: SourceReader,
    private readonly notices: FetchedNotices,
    private readonly followers: FetchedNoticeFollowers,
    private readonly conditions: SourceConditions,
  ) {}

  onApplicationBootstrap(): void {
    if (!this.role.serving || this.config.noticeSources.length === 0) return;
    // What nobody takes would be lost without a word.
    if (this.followers.all().length === 0) throw new Error('Nobody follows fetched notices.');
    this.timer = setInterval(() => this.look(), lookMilliseconds);
    this.timer.unref();
    this.look();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    this.ending.abort();
    await this.looking;
  }

  private look(): void {
    this.looking ??= this.askWhoIsDue()
      .catch((error) => this.logger.error(`Which sources are due could not be found out: ${String(error)}`))
      .finally(() => {
        this.looking = undefined;
      });
  }

  private async askWhoIsDue(): Promise<void> {
    const sources = this.config.noticeSources;
    const states = await this.states.of(sources);
    for (const source of sources) {
      const now = this.clock.now();
      const state = states.get(sourceId(source)) ?? newSource(now);
      if (state.nextAttemptAt > now) continue;
      const { outcome, records } = await this.readSource(source, state, now);
      if (this.ending.signal.aborted) return;
      const fresh = await this.handOn(source, records);
      const next =
        typeof fresh === 'number'
          ? outcome
          : ({ kind: 'failed', error: fresh, isLasting: false, retryAt: null } as const);
      await this.states.keep(source, afterOutcome(state, next, now, Math.random()));
      await this.conditions.judge();
      this.tell(
        source,
        next.kind === 'failed' ? next.error : `${records.length} notices, ${fresh} new`,
        next.kind,
      );
    }
  }

  private async readSource(
    source: NoticeSource,
    known: { etag: string | null; lastModified: string | null },
    now: string,
  ): Promise<SourceReading> {
    try {
      return await this.reader.read(source, known, now, this.ending.signal);
    } catch (error) {
      this.logger.error(`A source could not be read: ${String(error)}`);
      const failed = 'It could not be read for a reason of ours; see the log of the service.';
      return { outcome: { kind: 'failed', error: failed, isLasting: false, retryAt: null }, records: [] };
    }
  }

  /** @returns how many were new, or that they could not be taken: they are fetched again then */
  private async handOn(source: NoticeSource, records: SourceReading['records']): Promise<number | string> {
    try {
      return await this.notices.take(source, records);
    } catch (error) {
      this.logger.error(`Fetched notices could not be taken: ${String(error)}`);
      return 'What it holds could not be taken in; see the log of the service.';
    }
  }

  private tell({ kind, url }: NoticeSource, words: string, outcome: string): void {
    const line = `${kind} of ${withoutQuery(url)}: ${outcome === 'unchanged' ? 'nothing new' : words}`;
    if (outcome === 'failed') this.logger.warn(line);
    else this.logger.log(line);
  }
}
