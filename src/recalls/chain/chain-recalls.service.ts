import {
  Injectable,
  Logger,
  type OnApplicationBootstrap,
  type OnModuleDestroy,
  type OnModuleInit,
} from '@nestjs/common';
import { FoundedStudios } from '../../identity/founded-studios.service.js';
import { StudioActors } from '../../identity/studio-actors.service.js';
import { Database } from '../../platform/database/database.js';
import { ProcessRole } from '../../platform/process-role.js';
import { ChainRecallPart } from './chain-recall-part.service.js';

const lookMilliseconds = 30_000;

/**
 * Lets every studio of a chain follow a recall that was opened, amended or withdrawn for all of them. A write touches one
 * studio, so each part is a write of its own, by the service itself. What is missed, by a fault or the end of the process,
 * is found at the next look. A studio that is founded later begins with the recalls of its chain.
 */
@Injectable()
export class ChainRecalls implements OnModuleInit, OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger('recalls');
  private timer: NodeJS.Timeout | undefined;
  private looking: Promise<void> | undefined;

  constructor(
    private readonly database: Database,
    private readonly role: ProcessRole,
    private readonly studioActors: StudioActors,
    private readonly part: ChainRecallPart,
    private readonly foundedStudios: FoundedStudios,
  ) {}

  onModuleInit(): void {
    this.foundedStudios.register(async (transaction) => {
      const recalls = await transaction.query<{ id: string }>(
        `SELECT id FROM recall
         WHERE chain_id = $1 AND chain_wide = 1 AND studio_id = opened_in_studio_id AND state <> 'withdrawn'
         ORDER BY opened_at, id`,
        [transaction.actor.chainId],
      );
      for (const { id } of recalls) await this.part.followIn(transaction, id);
    });
  }

  onApplicationBootstrap(): void {
    if (!this.role.serving) return;
    this.timer = setInterval(() => this.look(), lookMilliseconds);
    this.timer.unref();
    this.look();
  }

  async onModuleDestroy(): Promise<void> {
    clearInterval(this.timer);
    await this.looking;
  }

  /** Call it when the write here is done. Never throws. @param recallId left out: all recalls of all chains */
  async follow(recallId?: string): Promise<void> {
    try {
      for (const { studioId, id } of await this.behind(recallId)) {
        await this.followOne(studioId, id);
      }
    } catch (error) {
      this.logger.error(`The recalls of chains cannot be read, trying on: ${String(error)}`);
    }
  }

  private look(): void {
    this.looking ??= this.follow().finally(() => {
      this.looking = undefined;
    });
  }

  private async followOne(studioId: string, recallId: string): Promise<void> {
    try {
      const actor = await this.studioActors.of(studioId);
      if (actor) await this.part.follow(actor, recallId);
    } catch (error) {
      // One studio's fault is not the others'.
      this.logger.error(`Studio ${studioId} does not follow recall ${recallId} yet: ${String(error)}`);
    }
  }

  /** Studios whose part of a recall lacks a scope, or was not withdrawn when the recall was. */
  private async behind(recallId: string | undefined): Promise<{ studioId: string; id: string }[]> {
    return this.database.read<{ studioId: string; id: string }>(
      `SELECT studio.id AS "studioId", origin.id
       FROM recall AS origin
         JOIN studio ON studio.chain_id = origin.chain_id AND studio.id <> origin.studio_id
         LEFT JOIN recall AS part ON part.studio_id = studio.id AND part.id = origin.id
       WHERE origin.chain_wide = 1 AND origin.studio_id = origin.opened_in_studio_id
         ${recallId === undefined ? '' : 'AND origin.id = $1'}
         AND (
           part.id IS NULL AND origin.state <> 'withdrawn'
           OR part.state <> 'withdrawn' AND origin.state = 'withdrawn'
           OR part.id IS NOT NULL AND origin.state <> 'withdrawn' AND
             (SELECT max(number) FROM recall_scope
              WHERE recall_scope.studio_id = part.studio_id AND recall_scope.recall_id = part.id)
             < (SELECT max(number) FROM recall_scope
                WHERE recall_scope.studio_id = origin.studio_id AND recall_scope.recall_id = origin.id))
       ORDER BY origin.opened_at, studio.created_at, studio.id`,
      recallId === undefined ? [] : [recallId],
    );
  }
}
