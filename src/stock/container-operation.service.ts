import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { maximumLagDays, occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import type { EventDto } from '../platform/request.dto.js';
import { BlendDates } from './blend-dates.service.js';
import { Container } from './container.entity.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import type { ContainerChangeView } from './container-operations.views.js';
import {
  type ContainerAction,
  type ContainerCondition,
  hasEnded,
  transition,
} from './container-transitions.js';
import { assumedOpenedLife, ContainerViews } from './container-views.service.js';
import { judgeShelfLife } from './shelf-life.js';
import { StockConditions } from './stock-conditions.service.js';
import { containerLife } from './stock-on-hand.js';
import { SentGoods } from './transfers/sent-goods.service.js';
import type { ContainerState } from './vocabulary.js';

/** What is recorded of a container in a transaction that somebody else opened. */
export interface OperationPart {
  /** The rule's name for what is done; null when the work decides by itself. */
  action: ContainerAction | null;
  containerId: string;
  /** By the device's clock; left out: now. */
  occurredAt?: string | undefined;
  /** How far back it may lie. */
  lagDays?: number;
}

export interface Operation extends Omit<OperationPart, 'occurredAt'> {
  /** Room and verb, for the audit log. */
  audit: string;
}

/** What the work of an operation is given: facts under lock, and the state that the rule allows afterwards. */
export interface OperationFacts {
  transaction: Transaction;
  container: ContainerFact;
  occurredAt: string;
  state: ContainerCondition;
}

export interface OperationResult {
  /** What changes on the container itself; nothing when undefined. */
  changes?: Partial<Container>;
  movementIds?: string[];
  newContainerId?: string;
  warnings?: string[];
}

/**
 * One frame for everything recorded of a container: lock, load, decide by the rule, write, judge the conditions of its
 * product anew, show it as it stands now.
 */
@Injectable()
export class ContainerOperation {
  constructor(
    private readonly transactions: Transactions,
    private readonly containerFacts: ContainerFacts,
    private readonly containerViews: ContainerViews,
    private readonly blendDates: BlendDates,
    private readonly conditions: StockConditions,
    private readonly sentGoods: SentGoods,
  ) {}

  /** @throws Problem not-found; wrong-state when the rule refuses, with its message */
  record(
    actor: Actor,
    dto: EventDto,
    operation: Operation,
    work: (facts: OperationFacts) => Promise<OperationResult>,
  ): Promise<ContainerChangeView> {
    const { containerId } = operation;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: operation.audit,
        subject: { kind: 'container', id: containerId },
        content: { ...dto, containerId },
      },
      async (transaction) => {
        const part = { ...operation, occurredAt: dto.occurredAt };
        return this.answer(transaction, containerId, await this.recordIn(transaction, part, work));
      },
    );
  }

  /**
   * The same as a part of the caller's transaction, without showing it.
   * @throws Problem not-found; wrong-state when the rule refuses, with its message
   */
  async recordIn(
    transaction: Transaction,
    { action, containerId, occurredAt: given, lagDays = maximumLagDays }: OperationPart,
    work: (facts: OperationFacts) => Promise<OperationResult>,
  ): Promise<OperationResult> {
    const container = await this.locked(transaction, containerId);
    const at = occurredAt(given, transaction.recordedAt, lagDays);
    const state = await this.allowed(transaction, container, action, at);
    const result = await work({ transaction, container, occurredAt: at, state });
    if (result.changes !== undefined) {
      const key = { studioId: transaction.studioId, id: containerId };
      const changes = withWhatItWas(container.state, result.changes);
      await transaction.change(Container, 'container', key, container.version, changes);
    }
    const { lotId, productId } = container;
    const productIds = [productId];
    if (result.changes?.openedAt !== undefined) {
      productIds.push(...(await this.blendDates.follow(transaction, { lotId, containerId })));
      await this.sentGoods.follow(transaction, [lotId]);
    }
    await this.conditions.reevaluate(transaction, productIds);
    return result;
  }

  /** @throws Problem not-found */
  async locked(transaction: Transaction, containerId: string): Promise<ContainerFact> {
    const [container] = await this.lockedAll(transaction, [containerId]);
    if (!container) throw notFound('container', containerId);
    return container;
  }

  /**
   * Locks containers, their products and lots first as everywhere, and loads their facts, in the order of the ids.
   * @throws Problem not-found
   */
  async lockedAll(transaction: Transaction, containerIds: readonly string[]): Promise<ContainerFact[]> {
    const { studioId, read } = transaction;
    const rows = await transaction.query<{ id: string; lot_id: string; product_id: string }>(
      `SELECT container.id, lot.id AS lot_id, lot.product_id
       FROM container JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
       WHERE container.studio_id = $1 AND container.id IN (${placeholders(containerIds)})`,
      [studioId, ...containerIds],
    );
    const missing = containerIds.find((id) => !rows.some((row) => row.id === id));
    if (missing !== undefined) throw notFound('container', missing);
    // A tray reserves pieces under the lock of their product.
    await transaction.lock(
      'product',
      rows.map((row) => row.product_id),
    );
    await transaction.lock(
      'lot',
      rows.map((row) => row.lot_id),
    );
    await transaction.lock('container', containerIds);
    const facts = await this.containerFacts.load(read, studioId, { containerIds, ended: true });
    const byId = new Map(facts.map((fact) => [fact.containerId, fact]));
    return containerIds.flatMap((id) => byId.get(id) ?? []);
  }

  async answer(
    transaction: Transaction,
    containerId: string,
    { newContainerId, movementIds = [], warnings = [] }: OperationResult,
  ): Promise<ContainerChangeView> {
    const containerIds = [containerId, ...(newContainerId === undefined ? [] : [newContainerId])];
    const views = await this.containerViews.load(
      transaction.read,
      transaction.actor,
      { containerIds, ended: true },
      transaction.recordedAt,
    );
    const container = views.find(({ id }) => id === containerId);
    if (!container) throw notFound('container', containerId);
    const newContainer = views.find(({ id }) => id === newContainerId) ?? null;
    return { container, newContainer, movementIds, warnings };
  }

  private async allowed(
    transaction: Transaction,
    container: ContainerFact,
    action: ContainerAction | null,
    at: string,
  ): Promise<ContainerCondition> {
    if (action === null) return container.state;
    const assumed = await assumedOpenedLife(transaction.read, transaction.studioId);
    const { status } = judgeShelfLife(containerLife(container, assumed), at, transaction.actor.timeZone);
    const decision = transition(
      {
        form: container.form,
        state: container.state,
        openedAt: container.openedAt,
        lifeStatus: status,
        holdKinds: container.holds.map(({ kind }) => kind),
      },
      action,
    );
    if (!decision.allowed) throw new Problem(409, 'wrong-state', decision.message);
    return decision.state;
  }
}

/** Keeps, of a container that ends, the state it comes back to when that was a mistake. */
function withWhatItWas(before: ContainerState, changes: Partial<Container>): Partial<Container> {
  const ends = changes.state !== undefined && hasEnded(changes.state) && !hasEnded(before);
  return ends ? { ...changes, endedFrom: before } : changes;
}
