import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { microlitresOf } from '../catalogue/drop-size.js';
import { eitherVolumeOrDrops } from '../catalogue/liquid-amount.dto.js';
import { productLabel } from '../catalogue/product-label.js';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { admitToBlend, blendUseBy } from './blend-admission.js';
import { BlendRecorder, type Pour } from './blend-recorder.service.js';
import type { MakeBlendDto } from './blends.dto.js';
import type { BlendView } from './blends.views.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import { assumedOpenedLife } from './container-views.service.js';
import { type HoldInForce, HoldsInForce } from './holds-in-force.service.js';
import { StandingPlaces } from './standing-places.service.js';
import { StockConditions } from './stock-conditions.service.js';
import { containerLife } from './stock-on-hand.js';
import { readUseBy } from './use-by.js';

/**
 * Decides whether pigments may be poured together into a kept container, and has it recorded: where the studio allows
 * house blends, of what is opened and could lie on a tray.
 */
@Injectable()
export class Blending {
  constructor(
    private readonly transactions: Transactions,
    private readonly containerFacts: ContainerFacts,
    private readonly holdsInForce: HoldsInForce,
    private readonly recorder: BlendRecorder,
    private readonly places: StandingPlaces,
    private readonly conditions: StockConditions,
  ) {}

  /**
   * @throws Problem wrong-state while the studio has house blends off, or naming every parent that may not go in;
   * unusable-date when the use-by is later than the parents allow
   */
  make(actor: Actor, dto: MakeBlendDto): Promise<BlendView> {
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.blend', subject: { kind: 'blend', id: dto.id }, content: dto },
      async (transaction) => {
        await refuseUnlessAllowed(transaction);
        await this.checkProduct(transaction, dto.productId);
        await this.places.checkPlaces(transaction, [dto.placeId]);
        if (dto.ownerId !== undefined) await this.places.checkOwners(transaction, [dto.ownerId]);
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        const parents = await this.lockedParents(transaction, dto);
        const pours = dto.parents.map((given, index): Pour => {
          const parent = parents.get(given.containerId);
          if (!parent) throw notFound('container', given.containerId);
          return { parent, movementId: uuidv7(), microlitres: volumeOf(given, parent, index) };
        });
        const useBy = await this.admit(transaction, dto, pours, at);
        const view = await this.recorder.record(transaction, dto, pours, at, useBy);
        await this.conditions.reevaluate(transaction, [
          ...new Set([dto.productId, ...pours.map(({ parent }) => parent.productId)]),
        ]);
        return view;
      },
    );
  }

  private async lockedParents(
    transaction: Transaction,
    dto: MakeBlendDto,
  ): Promise<Map<string, ContainerFact>> {
    const containerIds = dto.parents.map(({ containerId }) => containerId);
    if (new Set(containerIds).size < containerIds.length) {
      throw invalidField('parents', 'A bottle is named twice. Name each once, with all that went in of it.');
    }
    const load = () =>
      this.containerFacts.load(transaction.read, transaction.studioId, { containerIds, ended: true });
    await transaction.lock(
      'lot',
      (await load()).map(({ lotId }) => lotId),
    );
    await transaction.lock('container', containerIds);
    return new Map((await load()).map((fact) => [fact.containerId, fact]));
  }

  /** @returns the use-by of the blend */
  private async admit(
    transaction: Transaction,
    dto: MakeBlendDto,
    pours: readonly Pour[],
    at: string,
  ): Promise<string | null> {
    const { timeZone } = transaction.actor;
    const assumed = await assumedOpenedLife(transaction.read, transaction.studioId);
    const holds = await this.holdsAt(transaction, pours, at);
    const admission = admitToBlend(
      pours.map(({ parent }) => ({
        ...containerLife(parent, assumed),
        containerId: parent.containerId,
        label: labelOf(parent),
        isPigment: parent.kind === 'pigment' && parent.form === 'bottle',
        state: parent.state,
        holdKinds: (holds.get(parent.containerId) ?? []).map(({ kind }) => kind),
      })),
      at,
      timeZone,
    );
    if (!admission.admitted) {
      const messages = admission.refusals.map(({ message }) => message).join(' ');
      throw new Problem(409, 'wrong-state', messages, { refusals: admission.refusals });
    }
    let chosen: string | null = null;
    if (dto.useBy !== undefined) {
      const reading = readUseBy(dto.useBy);
      if ('error' in reading) throw new Problem(400, 'unusable-date', reading.error.message);
      chosen = reading.lastDay;
    }
    const decision = blendUseBy(chosen, admission.latestUseBy, localDay(at, timeZone));
    if ('message' in decision) throw new Problem(400, 'unusable-date', decision.message);
    return decision.useBy;
  }

  /**
   * The holds that stood when it was poured: what was really poured is recorded, and what was recalled since holds the
   * blend through its parents.
   */
  private async holdsAt(
    transaction: Transaction,
    pours: readonly Pour[],
    at: string,
  ): Promise<Map<string, HoldInForce[]>> {
    const containerIds = pours.map(({ parent }) => parent.containerId);
    const { read, studioId, recordedAt } = transaction;
    const past = at < recordedAt ? at : undefined;
    return this.holdsInForce.reachingContainers(read, studioId, containerIds, past);
  }

  private async checkProduct(transaction: Transaction, productId: string): Promise<void> {
    const [product] = await transaction.query<{
      kind: string;
      stock_form: string;
      archived_at: string | null;
    }>('SELECT kind, stock_form, archived_at FROM product WHERE chain_id = $1 AND id = $2', [
      transaction.actor.chainId,
      productId,
    ]);
    if (!product) throw notFound('product', productId);
    if (product.kind !== 'pigment' || product.stock_form !== 'container' || product.archived_at !== null) {
      throw invalidField(
        'productId',
        'A blend is kept as a pigment product in bottles that is still in use. Add one for it to the catalogue, or choose another.',
      );
    }
  }
}

async function refuseUnlessAllowed(transaction: Transaction): Promise<void> {
  const [studio] = await transaction.query<{ house_blends: string }>(
    'SELECT house_blends FROM studio WHERE id = $1',
    [transaction.studioId],
  );
  if (studio?.house_blends === 'allowed') return;
  throw new Problem(
    409,
    'wrong-state',
    'House blends are off in this studio, since some places forbid them. If local rules allow them, an owner turns them on in the settings of the studio.',
  );
}

function volumeOf(
  given: { microlitres?: number; drops?: number },
  parent: ContainerFact,
  index: number,
): number {
  const microlitres = microlitresOf(given, parent.dropMicrolitres);
  if (microlitres === null) throw invalidField(`parents.${index}.microlitres`, eitherVolumeOrDrops);
  return microlitres;
}

function labelOf(parent: ContainerFact): string {
  const { code } = parent;
  return `${productLabel(parent)}, ${code === null ? 'no lot code' : `lot ${code}`},`;
}
