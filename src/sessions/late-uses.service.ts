import { Injectable } from '@nestjs/common';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { maximumLateRecordDays, occurredAt } from '../platform/occurred-at.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { assumedOpenedLife } from '../stock/container-views.service.js';
import { HoldsInForce } from '../stock/holds-in-force.service.js';
import type { Lot } from '../stock/lot.entity.js';
import { caughtWarning } from '../stock/standing-holds/caught-warning.js';
import { StandingHolds } from '../stock/standing-holds/standing-holds.service.js';
import { earlierOpening } from './derived-opening.js';
import { lateAmount } from './late-amount.js';
import type { LateUseDto } from './late-records.dto.js';
import { type ContainerOfLot, likeliestContainers } from './likeliest-container.js';
import { pastRefusals } from './past-refusals.js';
import type { UseToRecord } from './use-recorder.service.js';
import { removalFault } from './visit-times.js';
import { WrittenLots } from './written-lots.service.js';

/**
 * Turns what is told afterwards into uses to be recorded. Nothing that touched a client is refused for the state of the
 * stock: what stood against it when it was used is named, not judged.
 */
@Injectable()
export class LateUses {
  constructor(
    private readonly containerFacts: ContainerFacts,
    private readonly holdsInForce: HoldsInForce,
    private readonly standingHolds: StandingHolds,
    private readonly writtenLots: WrittenLots,
  ) {}

  /**
   * @param at instant of the session
   * @returns the uses, the lots that were made for them, and what should be looked at
   * @throws Problem invalid-fields when a use names nothing or too much; not-found when it names what is not in this studio
   */
  async prepare(
    transaction: Transaction,
    sessionId: string,
    uses: readonly LateUseDto[],
    at: string,
  ): Promise<{ uses: UseToRecord[]; madeLots: Lot[]; warnings: string[] }> {
    uses.forEach(refuseUnclear);
    await requireMixes(transaction, sessionId, uses);
    const { lotIds, made, warnings } = await this.writtenLots.find(transaction, uses);
    const containerIds = await this.containersOf(transaction, uses, lotIds, at);
    const facts = await this.factsOf(transaction, containerIds);
    const holds = await this.holdsInForce.reachingContainers(
      transaction.read,
      transaction.studioId,
      containerIds,
      at,
    );
    const assumed = await assumedOpenedLife(transaction.read, transaction.studioId);
    return {
      uses: uses.map((use, index) => {
        const containerId = containerIds[index] ?? '';
        const fact = facts.get(containerId);
        if (!fact) throw notFound('container', containerId);
        const amount = lateAmount(use, fact);
        if ('fault' in amount) {
          const { field, message } = amount.fault;
          throw invalidField(field === null ? `uses.${index}` : `uses.${index}.${field}`, message);
        }
        if (use.mixId !== undefined && fact.kind !== 'pigment') {
          const message = `${fact.productName} is no pigment or thinner; only those are dropped into a mix. Leave mixId out.`;
          throw invalidField(`uses.${index}.mixId`, message);
        }
        const appliedAt = pastInstant(use.appliedAt, transaction.recordedAt);
        const removedAt = pastInstant(use.removedAt, transaction.recordedAt);
        const backwards = removalFault(appliedAt, removedAt);
        if (backwards !== null) throw new Problem(400, 'unusable-time', backwards);
        const standing = holds.get(containerId) ?? [];
        return {
          containerId,
          mixId: use.mixId ?? null,
          knownBy: use.knownBy,
          ...amount,
          againstRefusal: pastRefusals(fact, standing, assumed, at, transaction.actor.timeZone),
          reason: use.reason ?? null,
          appliedAt,
          removedAt,
          appliedBy: use.appliedBy ?? null,
          occurredAt: at,
        };
      }),
      madeLots: made,
      warnings: [...warnings, ...doubts(uses, containerIds, facts, at)],
    };
  }

  /**
   * Holds what notices mean of the lots that were made, once their uses are recorded.
   * @returns what should be looked at
   */
  async catchMade(transaction: Transaction, made: readonly Lot[]): Promise<string[]> {
    const caught = await this.standingHolds.catchLots(
      transaction,
      made.map(({ id }) => id),
      transaction.recordedAt,
    );
    return caught.map((lot) => caughtWarning(made.find(({ id }) => id === lot.lotId)?.code ?? null, lot));
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
    const unknown = uses.find((use) => use.lotId !== undefined && !forms.has(use.lotId));
    if (unknown?.lotId !== undefined) throw notFound('lot', unknown.lotId);
    const chosen = likeliestContainers(await containersOfLots(transaction, lotIds), at);
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

/** What the record of the containers says otherwise, once for each container. */
function doubts(
  uses: readonly LateUseDto[],
  containerIds: readonly string[],
  facts: ReadonlyMap<string, ContainerFact>,
  at: string,
): string[] {
  const named = new Set(uses.map((use) => use.containerId));
  return [...new Set(containerIds)].flatMap((id) => {
    const fact = facts.get(id);
    if (!fact) return [];
    const { productName, labelCode, receivedAt, openedAt } = fact;
    const label = `${productName}, label ${labelCode}`;
    const warnings: string[] = [];
    if (named.has(id) && at < receivedAt) {
      warnings.push(
        `${label}, was received on ${receivedAt}, after this use on ${at}. The use is recorded; reverse it and name another container if it was another one.`,
      );
    }
    if (fact.form === 'bottle' && openedAt !== null && earlierOpening(openedAt, [at]) !== null) {
      warnings.push(
        `${label}, was recorded as opened on ${openedAt}, but was used on ${at} already. Its opening moves back to then, and so does the end of its opened life.`,
      );
    }
    return warnings;
  });
}

function pastInstant(given: string | undefined, recordedAt: string): string | null {
  return given === undefined ? null : occurredAt(given, recordedAt, maximumLateRecordDays);
}

/** @throws Problem not-found when a use names a mix that is none of the session */
async function requireMixes(
  transaction: Transaction,
  sessionId: string,
  uses: readonly LateUseDto[],
): Promise<void> {
  const mixIds = [...new Set(uses.flatMap((use) => use.mixId ?? []))];
  if (mixIds.length === 0) return;
  const known = await transaction.query<{ id: string }>(
    `SELECT id FROM mix WHERE studio_id = $1 AND session_id = $2 AND id IN (${placeholders(mixIds, 3)})`,
    [transaction.studioId, sessionId, ...mixIds],
  );
  const unknown = mixIds.find((id) => !known.some((mix) => mix.id === id));
  if (unknown !== undefined) throw notFound('mix in this session', unknown);
}

/** Every container of the lots that ever was. */
async function containersOfLots(
  transaction: Transaction,
  lotIds: readonly string[],
): Promise<ContainerOfLot[]> {
  if (lotIds.length === 0) return [];
  return transaction.query<ContainerOfLot>(
    `SELECT id AS "containerId", lot_id AS "lotId", received_at AS "receivedAt", opened_at AS "openedAt",
       ended_at AS "endedAt"
     FROM container WHERE studio_id = $1 AND lot_id IN (${placeholders(lotIds)})`,
    [transaction.studioId, ...lotIds],
  );
}

async function stockForms(
  transaction: Transaction,
  lotIds: readonly string[],
): Promise<Map<string, ContainerFact['stockForm']>> {
  if (lotIds.length === 0) return new Map();
  const rows = await transaction.query<{ id: string; stock_form: ContainerFact['stockForm'] }>(
    `SELECT lot.id, product.stock_form
     FROM lot JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
     WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(lotIds)})`,
    [transaction.studioId, ...lotIds],
  );
  return new Map(rows.map((row) => [row.id, row.stock_form]));
}
