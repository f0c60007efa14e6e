import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { OtherEnds } from '../../stock/transfers/other-ends.service.js';
import { Recall } from '../recall.entity.js';
import { RecallClosing } from '../recall-closing.entity.js';
import { RecallEnding } from '../recall-ending.service.js';
import type { Told } from '../recall-holds.service.js';
import { RecallNotice } from '../recall-notice.entity.js';
import { RecallScope } from '../recall-scope.entity.js';
import { RecallScoping } from '../recall-scoping.service.js';

/** A recall as the studio says it in which it was opened. */
interface Origin {
  recall: Recall;
  /** In the order of their numbers. */
  scopes: RecallScope[];
  notices: Map<string, RecallNotice>;
  withdrawal: RecallClosing | null;
}

/** The part that one studio has in a chain's recall. The only reader of another studio's recall. */
@Injectable()
export class ChainRecallPart {
  constructor(
    private readonly transactions: Transactions,
    private readonly scoping: RecallScoping,
    private readonly ending: RecallEnding,
    private readonly otherEnds: OtherEnds,
  ) {}

  /** Brings the studio's part up to what the recall says now. Doing it twice changes nothing more. */
  async follow(actor: Actor, recallId: string): Promise<void> {
    const told = await this.transactions.write(
      actor,
      { id: null, action: 'recalls.follow', subject: { kind: 'recall', id: recallId }, content: null },
      (transaction) => this.followIn(transaction, recallId),
    );
    await this.otherEnds.judge(told);
  }

  /** The same in the caller's transaction. @returns the studios to be told once it is committed */
  async followIn(transaction: Transaction, recallId: string): Promise<Told> {
    const told: Told = [];
    const origin = await this.origin(transaction, recallId);
    if (!origin) return told;
    await transaction.lock('recall', [recallId]);
    const part = await this.part(transaction, origin);
    const written = await this.writtenScopes(transaction, recallId);
    for (const scope of origin.scopes.slice(written)) {
      told.push(...(await this.writeScope(transaction, part, scope, origin)));
    }
    if (origin.withdrawal !== null && part.state !== 'withdrawn') {
      const { id, reason, occurredAt } = origin.withdrawal;
      const said = { id, reason: reason ?? '', signedBy: null, occurredAt };
      await this.ending.withdraw(transaction, part, said);
    }
    return told;
  }

  private async origin({ manager, read, actor }: Transaction, recallId: string): Promise<Origin | undefined> {
    const [found] = await read<{ studioId: string }>(
      `SELECT studio_id AS "studioId" FROM recall
       WHERE id = $1 AND chain_id = $2 AND chain_wide = 1 AND studio_id = opened_in_studio_id`,
      [recallId, actor.chainId],
    );
    if (!found) return undefined;
    const { studioId } = found;
    const recall = await manager.findOneByOrFail(Recall, { studioId, id: recallId });
    const scopes = await manager.find(RecallScope, {
      where: { studioId, recallId },
      order: { number: 'ASC' },
    });
    const notices = new Map<string, RecallNotice>();
    for (const { noticeId } of scopes) {
      if (noticeId === null || notices.has(noticeId)) continue;
      notices.set(noticeId, await manager.findOneByOrFail(RecallNotice, { studioId, id: noticeId }));
    }
    const withdrawal =
      recall.state === 'withdrawn'
        ? await manager.findOne(RecallClosing, {
            where: { studioId, recallId, outcome: 'withdrawn' },
            order: { recordedAt: 'DESC' },
          })
        : null;
    return { recall, scopes, notices, withdrawal };
  }

  private async part(transaction: Transaction, { recall }: Origin): Promise<Recall> {
    const { studioId } = transaction;
    const known = await transaction.manager.findOneBy(Recall, { studioId, id: recall.id });
    if (known) return known;
    const part: Recall = {
      ...recall,
      studioId,
      state: 'open',
      openedBy: null,
      endedAt: null,
      version: 1,
    };
    await transaction.insert(Recall, part);
    return part;
  }

  private async writtenScopes({ studioId, read }: Transaction, recallId: string): Promise<number> {
    const [row] = await read<{ number: number | null }>(
      'SELECT max(number) AS number FROM recall_scope WHERE studio_id = $1 AND recall_id = $2',
      [studioId, recallId],
    );
    return row?.number ?? 0;
  }

  private async writeScope(
    transaction: Transaction,
    part: Recall,
    scope: RecallScope,
    { notices }: Origin,
  ): Promise<Told> {
    const { studioId, recordedAt, actor } = transaction;
    const { personId, via } = actor;
    const notice = scope.noticeId === null ? undefined : notices.get(scope.noticeId);
    if (
      notice !== undefined &&
      !(await transaction.manager.existsBy(RecallNotice, { studioId, id: notice.id }))
    ) {
      await transaction.insert(RecallNotice, { ...notice, studioId, recordedAt, personId, via });
    }
    if (part.state !== 'open') {
      await this.ending.reopen(transaction, part);
      part.state = 'open';
      part.version += 1;
    }
    const {
      studioId: _,
      id: __,
      recallId: ___,
      number,
      recordedAt: ____,
      personId: _____,
      via: ______,
      ...said
    } = scope;
    // Possible ones are held here too: who opened the recall chose among their own lots.
    const { told } = await this.scoping.write(transaction, part, number, said, 'all');
    return told;
  }
}
