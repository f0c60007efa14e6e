import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt } from '../../platform/occurred-at.js';
import { invalidField } from '../../platform/problem.js';
import { ContainerMove } from '../../stock/container-move.service.js';
import { Photos } from '../../stock/photos/photos.service.js';
import { StandingPlaces } from '../../stock/standing-places.service.js';
import { RecallFinding } from '../recall-finding.entity.js';
import { RecallRegister } from '../recall-register.service.js';
import { ContainersOfRecall } from './container-of-recall.service.js';
import type { RecordFindingDto } from './recall-containers.dto.js';
import type { ContainerFindingView, RecordedFindingView } from './recall-containers.views.js';

/**
 * Whether somebody found what is held. What was found is put aside in the same transaction; that something was not found
 * changes nothing else, and what is gone by the record is recorded all the same. In a drill nothing is moved.
 */
@Injectable()
export class Findings {
  constructor(
    private readonly transactions: Transactions,
    private readonly recalls: RecallRegister,
    private readonly containers: ContainersOfRecall,
    private readonly places: StandingPlaces,
    private readonly moving: ContainerMove,
    private readonly photos: Photos,
  ) {}

  /** @throws Problem not-found; wrong-state when the recall is not open, or the container of no lot of it */
  record(
    actor: Actor,
    recallId: string,
    containerId: string,
    dto: RecordFindingDto,
  ): Promise<RecordedFindingView> {
    if (dto.result === 'not found' && dto.placeId !== undefined) {
      throw invalidField('placeId', 'What was not found stands nowhere. Leave the place out.');
    }
    const { studioId, personId, via } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.record-finding',
        subject: { kind: 'recall', id: recallId },
        content: { ...dto, recallId, containerId },
      },
      async (transaction) => {
        const { recordedAt, read } = transaction;
        const recall = await this.recalls.lockOpen(transaction, recallId);
        const container = await this.containers.lock(transaction, recallId, containerId);
        await this.photos.check(read, studioId, dto.photoId);
        if (dto.placeId !== undefined) await this.places.checkPlaces(transaction, [dto.placeId]);
        const finding: RecallFinding = {
          ...{ studioId, id: dto.id, recallId, containerId, result: dto.result, recordedAt, personId, via },
          placeId: dto.placeId ?? null,
          tag: dto.tag ?? null,
          photoId: dto.photoId ?? null,
          note: dto.note ?? null,
          occurredAt: occurredAt(dto.occurredAt, recordedAt),
        };
        await transaction.insert(RecallFinding, finding);
        const { placeId } = finding;
        const movesTo =
          placeId === null || placeId === container.placeId || container.isGone || recall.kind === 'drill'
            ? null
            : placeId;
        if (movesTo !== null) {
          const { occurredAt } = finding;
          await this.moving.putAside(transaction, containerId, { placeId: movesTo, occurredAt });
        }
        const warnings =
          container.isGone && dto.result === 'found'
            ? [
                `This ${container.form} is recorded as ${container.state}, and yet it was found. Reverse the movement that ended it, so that the book has it again, then put it aside.`,
              ]
            : [];
        return { finding: viewOf(finding), moved: movesTo !== null, warnings };
      },
    );
  }
}

function viewOf(finding: RecallFinding): ContainerFindingView {
  const { id, result, placeId, tag, photoId, note, occurredAt, personId } = finding;
  return { id, result, placeId, tag, photoId, note, occurredAt, personId };
}
