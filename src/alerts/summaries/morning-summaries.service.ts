import { Injectable, Logger, type OnModuleInit } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { StudioActors } from '../../identity/studio-actors.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { Alerts } from '../alerts.service.js';
import { Promises } from '../outbox/promises.service.js';
import type { HowToTell } from '../preferences/default-preference.js';
import { endOfQuietHours } from '../preferences/quiet-hours.js';
import { Schedules } from '../schedule/schedules.service.js';
import { MorningSummary } from './morning-summary.entity.js';
import { summaryOf } from './summary-choice.js';
import { summaryDue } from './summary-due.js';
import { SummaryLines } from './summary-lines.service.js';
import { type SummaryReader, SummaryReaders } from './summary-readers.service.js';

/** Another process was first. */
class NothingDue extends Error {}

/** A person whose summary of a day is to be written. */
interface DueReader {
  reader: SummaryReader;
  day: string;
}

/**
 * Writes to each person on each local day what is to be done. Guarantees: one summary a person and day, whoever looks and
 * how often; it commits together with the deliveries it promises, so that neither is without the other. Where there is
 * nothing to say an empty one is kept and nothing is sent: else it would be worked out again all day.
 */
@Injectable()
export class MorningSummaries implements OnModuleInit {
  private readonly logger = new Logger('morning summaries');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly studioActors: StudioActors,
    private readonly alerts: Alerts,
    private readonly readers: SummaryReaders,
    private readonly lines: SummaryLines,
    private readonly promises: Promises,
    private readonly schedules: Schedules,
  ) {}

  onModuleInit(): void {
    this.schedules.register({ purpose: 'morning summaries', look: () => this.look() });
  }

  /** Writes what is due now; what is not, or was written already, is left alone. */
  async look(): Promise<void> {
    const reached = await this.readers.studios(this.database.read);
    const actors = reached.size === 0 ? [] : await this.studioActors.all();
    for (const actor of actors.filter(({ studioId }) => reached.has(studioId))) {
      try {
        const due = dueAmong(
          await this.readers.of(this.database.read, actor, this.clock.now()),
          actor,
          this.clock.now(),
        );
        if (due.length > 0) await this.write(actor);
      } catch (error) {
        if (error instanceof NothingDue) continue;
        // One studio's fault is not the others'; it is tried again at the next look.
        this.logger.error(`The summaries of studio ${actor.studioId} failed: ${String(error)}`);
      }
    }
  }

  private async write(actor: Actor): Promise<void> {
    const { studioId } = actor;
    await this.transactions.write(
      actor,
      {
        id: null,
        action: 'alerts.summarise',
        subject: { kind: 'studio', id: studioId },
        content: null,
      },
      async (transaction) => {
        // Another worker may have looked at the same moment: under the lock it is known what is still due.
        await transaction.lockStudio();
        const readers = await this.readers.of(transaction.read, actor, transaction.recordedAt);
        const due = dueAmong(readers, actor, transaction.recordedAt);
        // Thrown, so that it leaves no entry of nothing.
        if (due.length === 0) throw new NothingDue();
        // What only the night has changed is told too.
        await this.alerts.reconcileAll(transaction);
        await this.writeFor(transaction, due);
        transaction.note({ summaries: due.length });
      },
    );
  }

  private async writeFor(transaction: Transaction, due: readonly DueReader[]): Promise<void> {
    const { studioId, recordedAt } = transaction;
    const material = await this.lines.material(transaction.read, studioId, recordedAt);
    for (const { reader, day } of due) {
      const content = summaryOf(day, material, reader.preference.kindsLeftOut);
      const summary: MorningSummary = {
        studioId,
        id: uuidv7(),
        personId: reader.personId,
        day,
        content,
        createdAt: recordedAt,
      };
      await transaction.insert(MorningSummary, summary);
      if (content.parts.length === 0) continue;
      const destinationIds = reader.destinations.map((destination) => destination.id);
      const quiet = endOfQuiet(reader.preference, recordedAt, transaction.actor.timeZone);
      await this.promises.promise(transaction, {
        event: 'summary',
        summaryId: summary.id,
        destinationIds,
        ...(quiet !== null && { notBefore: quiet }),
      });
    }
  }
}

/** A time that somebody chose is their wish; where it is the studio's morning, it waits for the end of their quiet hours. */
function endOfQuiet(
  { summaryAt, quietFrom, quietUntil }: HowToTell,
  at: string,
  timeZone: string,
): string | null {
  if (summaryAt !== null || quietFrom === null || quietUntil === null) return null;
  return endOfQuietHours(at, { from: quietFrom, until: quietUntil }, timeZone);
}

function dueAmong(readers: readonly SummaryReader[], { timeZone }: Actor, now: string): DueReader[] {
  return readers.flatMap((reader) => {
    const day = reader.wish === null ? null : summaryDue(now, reader.wish, timeZone);
    return day === null ? [] : [{ reader, day }];
  });
}
