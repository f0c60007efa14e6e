import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import { OtherEnds } from '../stock/transfers/other-ends.service.js';
import { ChainHeads } from './chain/chain-heads.service.js';
import { ChainRecalls } from './chain/chain-recalls.service.js';
import { Recall } from './recall.entity.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallNotices } from './recall-notices.service.js';
import { RecallScoping, type SaidScope, type ScopedRecall } from './recall-scoping.service.js';
import type { OpenRecallDto } from './recalls.dto.js';
import type { OpenedRecallView } from './recalls.views.js';
import { heldPossibleOf, StatedScopes } from './stated-scopes.service.js';
import type { RecallKind } from './vocabulary.js';

/**
 * Opens recalls. Guarantees: the notice is kept as it came, every lot ever held is graded, the certain ones are held and
 * what may still arrive too, all in one transaction, or nothing of it; the other studios of a chain follow at once, or
 * as soon as they can be written.
 */
@Injectable()
export class RecallOpening {
  constructor(
    private readonly transactions: Transactions,
    private readonly notices: RecallNotices,
    private readonly statedScopes: StatedScopes,
    private readonly scoping: RecallScoping,
    private readonly conditions: RecallConditions,
    private readonly chainHeads: ChainHeads,
    private readonly chainRecalls: ChainRecalls,
    private readonly otherEnds: OtherEnds,
  ) {}

  /** @throws Problem invalid-fields; not-allowed for a whole chain that the person does not lead */
  async open(actor: Actor, dto: OpenRecallDto, kind: RecallKind = 'recall'): Promise<OpenedRecallView> {
    if (dto.chainWide === true) await this.chainHeads.require(actor);
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      {
        id: dto.id,
        action: kind === 'recall' ? 'recalls.open' : 'recalls.open-drill',
        subject: { kind: 'recall', id: dto.id },
        content: dto,
      },
      async (transaction) => {
        const at = occurredAt(dto.occurredAt, transaction.recordedAt, maximumLateRecordDays);
        const recall = await this.insert(
          transaction,
          { id: dto.id, kind, title: dto.title },
          {
            chainWide: dto.chainWide === true,
            openedAt: at,
          },
        );
        const noticeId = await this.notices.ofScope(transaction, dto, at);
        const said: SaidScope = await this.statedScopes.said(transaction, dto, {
          noticeId,
          reason: null,
          at,
        });
        const { graded, told: studios } = await this.scoping.write(
          transaction,
          recall,
          1,
          said,
          heldPossibleOf(dto),
        );
        if (noticeId !== null) await this.conditions.reevaluateNotice(transaction, noticeId);
        told.push(...studios);
        return {
          id: recall.id,
          certainLots: graded.filter(({ grade }) => grade === 'certain').length,
          possibleLots: graded.filter(({ grade }) => grade === 'possible').length,
        };
      },
    );
    await this.otherEnds.judge(told);
    if (dto.chainWide === true) await this.chainRecalls.follow(view.id);
    return view;
  }

  private async insert(
    transaction: Transaction,
    { id, kind, title }: ScopedRecall,
    { chainWide, openedAt }: { chainWide: boolean; openedAt: string },
  ): Promise<Recall> {
    const { studioId, actor } = transaction;
    const recall: Recall = {
      studioId,
      id,
      chainId: actor.chainId,
      kind,
      title,
      chainWide: chainWide ? 1 : 0,
      openedInStudioId: studioId,
      state: 'open',
      openedAt,
      openedBy: actor.personId,
      endedAt: null,
      version: 1,
    };
    await transaction.insert(Recall, recall);
    return recall;
  }
}
