import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { occurredAt } from '../../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../../platform/problem.js';
import { ContainerEnding } from '../../stock/container-ending.service.js';
import { Ledger } from '../../stock/ledger.service.js';
import { Photos } from '../../stock/photos/photos.service.js';
import { RecallDisposition } from '../recall-disposition.entity.js';
import { RecallRegister } from '../recall-register.service.js';
import { type ContainerOfRecall, ContainersOfRecall } from './container-of-recall.service.js';
import type { RecordDispositionDto } from './recall-containers.dto.js';
import type { DispositionView, RecordedDispositionView } from './recall-containers.views.js';

const movementKinds = { returned: 'returned', destroyed: 'wasted' } as const;

interface Booked {
  movementId: string | null;
  pieces: number;
  microlitres: number;
  warnings: string[];
}

/**
 * What became of held stock: sent back or destroyed, seen by a witness or in a photo. The movement is booked in the same
 * transaction, as much as the book has; a box may go in parts.
 */
@Injectable()
export class Dispositions {
  constructor(
    private readonly transactions: Transactions,
    private readonly recalls: RecallRegister,
    private readonly containers: ContainersOfRecall,
    private readonly ending: ContainerEnding,
    private readonly ledger: Ledger,
    private readonly photos: Photos,
  ) {}

  /** @throws Problem not-found; wrong-state when the recall is a drill or not open; not-enough-stock */
  record(
    actor: Actor,
    recallId: string,
    containerId: string,
    dto: RecordDispositionDto,
  ): Promise<RecordedDispositionView> {
    refuseUnseen(actor, dto);
    const { studioId, personId, via } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'recalls.record-disposition',
        subject: { kind: 'recall', id: recallId },
        content: { ...dto, recallId, containerId },
      },
      async (transaction) => {
        const { recordedAt } = transaction;
        const recall = await this.recalls.lockOpen(transaction, recallId);
        if (recall.kind === 'drill') {
          throw new Problem(
            409,
            'wrong-state',
            'This is a drill: nothing is really returned or destroyed in it, and nothing was recorded.',
          );
        }
        const container = await this.containers.lock(transaction, recallId, containerId);
        await this.photos.check(transaction.read, studioId, dto.photoId);
        await checkWitness(transaction, dto.witnessId);
        const at = occurredAt(dto.occurredAt, recordedAt);
        const { warnings, ...booked } = await this.book(transaction, container, dto, at);
        const disposition: RecallDisposition = {
          ...{ studioId, id: dto.id, recallId, containerId, kind: dto.kind, recordedAt, personId, via },
          ...booked,
          witnessId: dto.witnessId ?? null,
          photoId: dto.photoId ?? null,
          reference: dto.reference,
          occurredAt: at,
        };
        await transaction.insert(RecallDisposition, disposition);
        return { disposition: viewOf(disposition), warnings };
      },
    );
  }

  private async book(
    transaction: Transaction,
    container: ContainerOfRecall,
    { kind, pieces, reason, reference }: RecordDispositionDto,
    occurredAt: string,
  ): Promise<Booked> {
    const { containerId, lotId, isGone } = container;
    const movementKind = movementKinds[kind];
    const why = reason ?? `recall, ${reference}`;
    if (container.pieces === 0 && container.microlitres === 0) {
      const warnings = [
        'The book has nothing left of this, so nothing was taken off it. If more was really here, count it first next time.',
      ];
      return { movementId: null, pieces: 0, microlitres: 0, warnings };
    }
    if (isGone) {
      // It ended before, and a use that was reversed afterwards gave something back to the book: that is taken off.
      const left = { pieces: container.pieces, microlitres: container.microlitres };
      const [movement] = await this.ledger.book(transaction, [
        { lotId, containerId, kind: movementKind, ...left, reason: why, occurredAt },
      ]);
      return { movementId: movement?.id ?? null, ...left, warnings: [] };
    }
    const { movementIds = [], warnings = [] } = await this.ending.disposeOf(transaction, containerId, {
      kind: movementKind,
      reason: why,
      pieces,
      occurredAt,
    });
    const whole = pieces === undefined || pieces === container.pieces;
    return {
      movementId: movementIds[0] ?? null,
      pieces: whole ? container.pieces : pieces,
      microlitres: whole ? container.microlitres : 0,
      warnings,
    };
  }
}

function refuseUnseen({ personId }: Actor, { witnessId, photoId }: RecordDispositionDto): void {
  if (witnessId === undefined && photoId === undefined) {
    throw invalidField('witnessId', 'Name another person who saw it, or a photo that shows it.');
  }
  if (witnessId !== undefined && witnessId === personId) {
    throw invalidField(
      'witnessId',
      'The witness is another person than the one who records this. Name somebody else who saw it, or a photo.',
    );
  }
}

async function checkWitness(transaction: Transaction, witnessId: string | undefined): Promise<void> {
  if (witnessId === undefined) return;
  const { studioId, recordedAt, actor } = transaction;
  const [witness] = await transaction.query<{ state: string; until: string | null }>(
    'SELECT state, until FROM person WHERE studio_id = $1 AND id = $2',
    [studioId, witnessId],
  );
  if (!witness) throw notFound('person', witnessId);
  const over = witness.until !== null && witness.until < localDay(recordedAt, actor.timeZone);
  if (witness.state === 'active' && !over) return;
  throw new Problem(
    409,
    'wrong-state',
    `The person ${witnessId} does not work here any more and can witness nothing. Name somebody else, or a photo.`,
  );
}

function viewOf(disposition: RecallDisposition): DispositionView {
  const { id, kind, movementId, pieces, microlitres, witnessId, photoId, reference, occurredAt, personId } =
    disposition;
  return { id, kind, movementId, pieces, microlitres, witnessId, photoId, reference, occurredAt, personId };
}
