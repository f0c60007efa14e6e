import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../identity/local-day.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Problem } from '../platform/problem.js';
import { Blend, BlendParent } from './blend.entity.js';
import type { MakeBlendDto } from './blends.dto.js';
import type { BlendView } from './blends.views.js';
import { Container } from './container.entity.js';
import type { ContainerFact } from './container-facts.service.js';
import { LabelCodes } from './label-codes.service.js';
import { Ledger } from './ledger.service.js';
import { Lot } from './lot.entity.js';
import { LotCode, newLotCode } from './lot-code.entity.js';

/** What is poured of one bottle. */
export interface Pour {
  parent: ContainerFact;
  movementId: string;
  microlitres: number;
}

/**
 * Writes a house blend. Guarantees: what leaves the parents arrives in the blend in the same transaction; the blend is a
 * lot of its own that names every parent lot, so that a hold and a recall reach it at any depth.
 */
@Injectable()
export class BlendRecorder {
  constructor(
    private readonly labelCodes: LabelCodes,
    private readonly ledger: Ledger,
  ) {}

  /** @throws Problem already-exists when a lot of the product carries the code */
  async record(
    transaction: Transaction,
    dto: MakeBlendDto,
    pours: readonly Pour[],
    at: string,
    useBy: string | null,
  ): Promise<BlendView> {
    const { studioId, recordedAt, actor } = transaction;
    const { personId, via, chainId, timeZone } = actor;
    const lotId = uuidv7();
    const containerId = uuidv7();
    const [labelCode = ''] = await this.labelCodes.make(transaction, 1);
    const code = dto.code ?? `B${localDay(at, timeZone).replaceAll('-', '')}-${labelCode.slice(0, 4)}`;
    const microlitres = pours.reduce((sum, pour) => sum + pour.microlitres, 0);
    await this.refuseKnownCode(transaction, dto.productId, code);
    await transaction.insert(Lot, {
      studioId,
      id: lotId,
      chainId,
      productId: dto.productId,
      code,
      codeState: 'printed',
      useBy,
      useByPrecision: useBy === null ? 'none printed' : 'day',
      manufacturedOn: localDay(at, timeZone),
      origin: 'blend',
      version: 1,
      createdAt: recordedAt,
    });
    await transaction.insert(LotCode, newLotCode(transaction, lotId, { kind: 'lot', code }));
    await transaction.insert(Container, {
      studioId,
      id: containerId,
      lotId,
      form: 'bottle',
      labelCode,
      placeId: dto.placeId,
      ownerId: dto.ownerId ?? null,
      // What was poured has met the air: its opened life runs from the day of blending.
      state: 'opened',
      openedAt: at,
      openedBy: personId,
      receivedAt: at,
      endedAt: null,
      openingToldAt: null,
      usableThrough: null,
      endedFrom: null,
      version: 1,
    });
    await this.ledger.bookWhatHappened(
      transaction,
      pours.map(({ parent, movementId, microlitres }) => ({
        id: movementId,
        lotId: parent.lotId,
        containerId: parent.containerId,
        kind: 'blended' as const,
        pieces: 0,
        microlitres,
        occurredAt: at,
      })),
    );
    await this.ledger.book(transaction, [
      { lotId, containerId, kind: 'produced', pieces: 1, microlitres, occurredAt: at },
    ]);
    await transaction.insert(Blend, {
      studioId,
      id: dto.id,
      lotId,
      containerId,
      microlitres,
      occurredAt: at,
      recordedAt,
      personId,
      via,
    });
    await transaction.insert(
      BlendParent,
      pours.map(
        (pour): BlendParent => ({
          studioId,
          id: uuidv7(),
          blendId: dto.id,
          lotId,
          parentLotId: pour.parent.lotId,
          parentContainerId: pour.parent.containerId,
          movementId: pour.movementId,
          microlitres: pour.microlitres,
          recordedAt,
        }),
      ),
    );
    return {
      id: dto.id,
      productId: dto.productId,
      lotId,
      containerId,
      code,
      labelCode,
      useBy,
      microlitres,
      occurredAt: at,
      parents: pours.map((pour) => ({
        containerId: pour.parent.containerId,
        lotId: pour.parent.lotId,
        microlitres: pour.microlitres,
      })),
    };
  }

  private async refuseKnownCode(transaction: Transaction, productId: string, code: string): Promise<void> {
    const [known] = await transaction.query<{ id: string }>(
      'SELECT id FROM lot WHERE studio_id = $1 AND product_id = $2 AND code = $3',
      [transaction.studioId, productId, code],
    );
    if (known) {
      throw new Problem(
        409,
        'already-exists',
        `A lot ${code} of this product exists already. Each blend is a lot of its own: choose another code, or leave it out.`,
        { existing: { kind: 'lot', id: known.id } },
      );
    }
  }
}
