import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import type { EventDto } from '../platform/request.dto.js';
import { OtherEnds } from '../stock/transfers/other-ends.service.js';
import { ChainHeads } from './chain/chain-heads.service.js';
import { ChainRecalls } from './chain/chain-recalls.service.js';
import { RecallConditions } from './recall-conditions.service.js';
import { RecallEnding } from './recall-ending.service.js';
import { RecallHolds } from './recall-holds.service.js';
import { RecallLotDecision } from './recall-lot.entity.js';
import { recallLots } from './recall-lots.query.js';
import { RecallNotices } from './recall-notices.service.js';
import { type KnownRecall, RecallRegister } from './recall-register.service.js';
import { RecallScoping } from './recall-scoping.service.js';
import type { AmendRecallDto, DecideLotDto, WithdrawRecallDto } from './recalls.dto.js';
import type { AmendedRecallView, DecidedLotView, WithdrawnRecallView } from './recalls.views.js';
import { heldPossibleOf, StatedScopes } from './stated-scopes.service.js';

/**
 * What a recall becomes after it was opened: widened or corrected, decided lot by lot, withdrawn. Nothing said before is
 * altered: each is a row of its own.
 */
@Injectable()
export class RecallAmendment {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly chainHeads: ChainHeads,
    private readonly register: RecallRegister,
    private readonly notices: RecallNotices,
    private readonly statedScopes: StatedScopes,
    private readonly scoping: RecallScoping,
    private readonly holds: RecallHolds,
    private readonly ending: RecallEnding,
    private readonly conditions: RecallConditions,
    private readonly chainRecalls: ChainRecalls,
    private readonly otherEnds: OtherEnds,
  ) {}

  /** Adds a scope, which counts from now on. A recall that had ended is open again. */
  async amend(actor: Actor, recallId: string, dto: AmendRecallDto): Promise<AmendedRecallView> {
    await this.requireChain(actor, recallId);
    return this.write(actor, recallId, 'recalls.amend', dto, async (transaction, recall, at) => {
      refuseElsewhere(recall, actor);
      const noticeId = await this.notices.ofScope(transaction, dto, at);
      const said = await this.statedScopes.said(transaction, dto, { noticeId, reason: dto.reason, at });
      if (recall.state !== 'open') await this.ending.reopen(transaction, recall);
      const number = recall.scopeNumber + 1;
      const { graded, told } = await this.scoping.write(
        transaction,
        recall,
        number,
        said,
        heldPossibleOf(dto),
      );
      if (dto.releaseUnmet === true) {
        const met = new Set(graded.map(({ lotId }) => lotId));
        const unmet = (await this.holds.heldLots(transaction, recallId)).filter((lotId) => !met.has(lotId));
        await this.holds.askRelease(transaction, recallId, { reason: dto.reason, occurredAt: at }, unmet);
      }
      if (noticeId !== null) await this.conditions.reevaluateNotice(transaction, noticeId);
      const certainLots = graded.filter(({ grade }) => grade === 'certain').length;
      return {
        told,
        view: { id: recallId, scopeNumber: number, certainLots, possibleLots: graded.length - certainLots },
      };
    });
  }

  /** Decides on a lot that is only possibly meant: it is held from now on, or this recall's hold on it is released. */
  async decide(actor: Actor, recallId: string, lotId: string, dto: DecideLotDto): Promise<DecidedLotView> {
    const said = { ...dto, lotId };
    return this.write(actor, recallId, 'recalls.decide-lot', said, async (transaction, recall, at) => {
      refuseEnded(recall);
      const { studioId, recordedAt } = transaction;
      const [lot] = await transaction.query<{ grade: string }>(
        `WITH ${recallLots} SELECT grade FROM recall_lots WHERE lot_id = $3`,
        [studioId, recallId, lotId],
      );
      if (!lot) throw notFound('lot of this recall', lotId);
      if (lot.grade === 'certain') {
        throw new Problem(
          409,
          'wrong-state',
          'The notice means this lot for certain, so there is nothing to decide. If the scope was read wrongly, amend it.',
        );
      }
      await transaction.insert(RecallLotDecision, {
        studioId,
        id: dto.id,
        recallId,
        lotId,
        decision: dto.decision,
        reason: dto.reason,
        occurredAt: at,
        recordedAt,
        personId: actor.personId,
        via: actor.via,
      });
      const told =
        recall.kind === 'drill'
          ? []
          : dto.decision === 'affected'
            ? await this.holds.hold(
                transaction,
                {
                  recallId,
                  note: await this.register.noteOf(transaction.read, studioId, recall),
                  occurredAt: at,
                },
                [lotId],
              )
            : await this.holds.release(transaction, recallId, { reason: dto.reason, occurredAt: at }, [
                lotId,
              ]);
      await this.conditions.reevaluate(transaction, recallId);
      return { told, view: { recallId, lotId, decision: dto.decision } };
    });
  }

  /** Ends a recall that was no recall, or was taken back: nothing more is caught, and its holds wait for another person. */
  async withdraw(actor: Actor, recallId: string, dto: WithdrawRecallDto): Promise<WithdrawnRecallView> {
    await this.requireChain(actor, recallId);
    return this.write(actor, recallId, 'recalls.withdraw', dto, async (transaction, recall, at) => {
      refuseElsewhere(recall, actor);
      if (recall.state === 'withdrawn') {
        throw new Problem(409, 'wrong-state', `This recall was withdrawn already, at ${recall.endedAt}.`);
      }
      await this.ending.withdraw(transaction, recall, {
        id: dto.id,
        reason: dto.reason,
        signedBy: actor.personId,
        occurredAt: at,
      });
      return { told: [], view: { id: recallId, endedAt: at } };
    });
  }

  /** What is said of a chain's recall is said to every studio of it. */
  private async requireChain(actor: Actor, recallId: string): Promise<void> {
    const { chainWide, openedInStudioId } = await this.register.find(
      this.database.read,
      actor.studioId,
      recallId,
    );
    if (chainWide && openedInStudioId === actor.studioId) await this.chainHeads.require(actor);
  }

  private async write<View>(
    actor: Actor,
    recallId: string,
    action: string,
    dto: EventDto,
    work: (
      transaction: Transaction,
      recall: KnownRecall,
      at: string,
    ) => Promise<{ view: View; told: string[] }>,
  ): Promise<View> {
    const told: string[] = [];
    const view = await this.transactions.write(
      actor,
      { id: dto.id, action, subject: { kind: 'recall', id: recallId }, content: { ...dto, recallId } },
      async (transaction) => {
        await transaction.lock('recall', [recallId]);
        const recall = await this.register.find(transaction.read, actor.studioId, recallId);
        const done = await work(transaction, recall, occurredAt(dto.occurredAt, transaction.recordedAt));
        told.push(...done.told);
        return done.view;
      },
    );
    await this.otherEnds.judge(told);
    await this.chainRecalls.follow(recallId);
    return view;
  }
}

/** @throws Problem wrong-state */
function refuseEnded({ state, endedAt }: KnownRecall): void {
  if (state === 'open') return;
  throw new Problem(
    409,
    'wrong-state',
    `This recall is ${state}, since ${endedAt}. Amend its scope to open it again.`,
  );
}

/** What a chain's recall says is said where it was opened, and followed everywhere else. */
function refuseElsewhere({ chainWide, openedInStudioId }: KnownRecall, { studioId }: Actor): void {
  if (!chainWide || openedInStudioId === studioId) return;
  throw new Problem(
    409,
    'wrong-state',
    'This recall was opened for all studios of the chain in another one. Amend or withdraw it there; this studio follows.',
  );
}
