import { Injectable } from '@nestjs/common';
import { microlitresOf } from '../catalogue/drop-size.js';
import type { Transaction } from '../platform/database/transaction.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import { invalidField } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { StandingHolds } from '../stock/standing-holds.service.js';
import type { LateUseDto } from './late-records.dto.js';
import { safetyRefusals } from './tray-rules.js';
import { type HoldFact, trayThing } from './tray-thing.js';
import type { UseToRecord } from './use-recorder.service.js';
import { WrittenLots } from './written-lots.service.js';

/** Of the containers of a lot, the one that was most likely in hand. */
const likeliestStates = ['opened', 'sealed', 'practice only', 'finished', 'discarded'];

/**
 * Turns what is told afterwards into uses to be recorded. Nothing that touched a client is refused for the state of the
 * stock: what stood against it when it was used is named, not judged.
 */
@Injectable()
export class LateUses {
  constructor(
    private readonly containerFacts: ContainerFacts,
    private readonly standingHolds: StandingHolds,
    private readonly writtenLots: WrittenLots,
  ) {}

  /**
   * @param at instant of the session
   * @returns the uses, and the ids of lots that were made for them
   * @throws Problem invalid-fields when a use names nothing, too much, or what is not in this studio
   */
  async prepare(
    transaction: Transaction,
    uses: readonly LateUseDto[],
    at: string,
  ): Promise<{ uses: UseToRecord[]; madeLotIds: string[] }> {
    uses.forEach(refuseUnclear);
    const { lotIds, made } = await this.writtenLots.find(transaction, uses);
    const containerIds = await this.containersOf(transaction, uses, lotIds, at);
    const facts = await this.factsOf(transaction, containerIds);
    const holds = await this.standingHolds.reachingContainers(
      transaction.read,
      transaction.studioId,
      containerIds,
      at,
    );
    const assumedOpenedLife = await assumedLife(transaction);
    return {
      uses: uses.map((use, index) => {
        const fact = facts.get(containerIds[index] ?? '');
        if (!fact) throw invalidField(`uses.${index}`, `Use ${index + 1} names nothing in this studio.`);
        const standing = holds.get(fact.containerId) ?? [];
        return {
          containerId: fact.containerId,
          mixId: null,
          knownBy: use.knownBy,
          ...amountOf(use, fact, index),
          againstRefusal: refusalsAt(fact, standing, assumedOpenedLife, at, transaction.actor.timeZone),
          reason: use.reason ?? null,
          appliedAt: pastInstant(use.appliedAt, transaction.recordedAt),
          removedAt: pastInstant(use.removedAt, transaction.recordedAt),
          appliedBy: use.appliedBy ?? null,
          occurredAt: at,
        };
      }),
      madeLotIds: made.map((lot) => lot.id),
    };
  }

  /** The container of each use, in the order of the uses. */
  private async containersOf(
    transaction: Transaction,
    uses: readonly LateUseDto[],
    writtenLotIds: ReadonlyMap<number, string>,
    at: string,
  ): Promise<string[]> {
    const lotOf = (use: LateUseDto, index: number) => use.lotId ?? writtenLotIds.get(index);
    const lotIds = [...new Set(uses.flatMap((use, index) => lotOf(use, index) ?? []))];
    const forms = await stockForms(transaction, lotIds);
    const strange = uses.findIndex((use) => use.lotId !== undefined && !forms.has(use.lotId));
    if (strange >= 0) {
      throw invalidField(
        `uses.${strange}.lotId`,
        `This studio has no lot with the id ${uses[strange]?.lotId}. Name one of its lots, or the product and what was written.`,
      );
    }
    const known = await this.containerFacts.load(transaction.read, transaction.studioId, {
      lotIds,
      ended: true,
    });
    const chosen = new Map(
      [...known]
        .sort((a, b) => likeliestStates.indexOf(b.state) - likeliestStates.indexOf(a.state))
        .map((fact) => [fact.lotId, fact.containerId]),
    );
    const without = lotIds.filter((lotId) => !chosen.has(lotId));
    const made = await this.writtenLots.makeContainers(
      transaction,
      without.map((id) => ({ id, stockForm: forms.get(id) ?? 'pieces' })),
      at,
    );
    return uses.map((use, index) => {
      const lotId = lotOf(use, index) ?? '';
      return use.containerId ?? chosen.get(lotId) ?? made.get(lotId) ?? '';
    });
  }

  private async factsOf(
    transaction: Transaction,
    containerIds: readonly string[],
  ): Promise<Map<string, ContainerFact>> {
    const facts = await this.containerFacts.load(transaction.read, transaction.studioId, {
      containerIds,
      ended: true,
    });
    return new Map(facts.map((fact) => [fact.containerId, fact]));
  }
}

function refuseUnclear(use: LateUseDto, index: number): void {
  const named = [use.containerId, use.lotId, use.productId].filter((id) => id !== undefined).length;
  if (named === 1) return;
  throw invalidField(
    `uses.${index}`,
    `Use ${index + 1} names ${named === 0 ? 'nothing' : 'more than one thing'}. Name exactly one of containerId, lotId and productId.`,
  );
}

function amountOf(
  use: LateUseDto,
  fact: ContainerFact,
  index: number,
): Pick<UseToRecord, 'pieces' | 'drops' | 'microlitres'> {
  if (fact.stockForm === 'pieces') {
    if (use.drops !== undefined || use.microlitres !== undefined) {
      throw invalidField(`uses.${index}`, `${fact.productName} is counted in pieces. Give pieces.`);
    }
    return { pieces: use.pieces ?? 1, drops: null, microlitres: 0 };
  }
  if (use.pieces !== undefined) {
    throw invalidField(
      `uses.${index}.pieces`,
      `${fact.productName} is taken from a container. Give drops or microlitres, or neither when the amount is not known.`,
    );
  }
  return { pieces: 0, drops: use.drops ?? null, microlitres: microlitresOf(use, fact.dropMicrolitres) ?? 0 };
}

/** What stood against using it then: its dates on that day, and the holds of that instant, not those of today. */
function refusalsAt(
  fact: ContainerFact,
  holds: readonly HoldFact[],
  assumedOpenedLife: string | null,
  at: string,
  timeZone: string,
): string[] {
  const thing = trayThing(fact, assumedOpenedLife, []);
  // When it became practice stock is not known; that it had expired by then is judged by its dates.
  const state = thing.openedAt === null ? 'sealed' : 'opened';
  return safetyRefusals({ ...thing, state, holds }, at, timeZone);
}

function pastInstant(given: string | undefined, recordedAt: string): string | null {
  return given === undefined ? null : occurredAt(given, recordedAt, maximumLateRecordDays);
}

async function assumedLife(transaction: Transaction): Promise<string | null> {
  const [studio] = await transaction.query<{ assumed_opened_life: string | null }>(
    'SELECT assumed_opened_life FROM studio WHERE id = $1',
    [transaction.studioId],
  );
  return studio?.assumed_opened_life ?? null;
}

async function stockForms(
  transaction: Transaction,
  lotIds: readonly string[],
): Promise<Map<string, ContainerFact['stockForm']>> {
  if (lotIds.length === 0) return new Map();
  const rows = await transaction.query<{ id: string; stock_form: ContainerFact['stockForm'] }>(
    `SELECT lot.id, product.stock_form
     FROM lot JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
     WHERE lot.studio_id = $1 AND lot.id IN (${lotIds.map((_, index) => `$${index + 2}`).join(', ')})`,
    [transaction.studioId, ...lotIds],
  );
  return new Map(rows.map((row) => [row.id, row.stock_form]));
}
