import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { faultsProblem, notFound, Problem } from '../../platform/problem.js';
import { Delivery } from '../delivery.entity.js';
import { OrderFollowers } from '../order-followers.service.js';
import { type ExpectedDays, expectedDaysFaults } from './expected-days.js';
import type {
  CallOffDeliveryDto,
  ChangeExpectedDeliveryDto,
  ExpectDeliveryDto,
  ExpectedDeliveryPageDto,
  ExpectedDeliveryReceivedDto,
} from './expected-deliveries.dto.js';
import type { ExpectedDeliveryPageView, ExpectedDeliveryView } from './expected-deliveries.views.js';
import { ExpectedDelivery } from './expected-delivery.entity.js';
import { isLateDelivery } from './late-delivery.js';
import { LateDeliveryConditions } from './late-delivery-conditions.service.js';

const columns = `expected_delivery.id, expected_delivery.supplier_id AS "supplierId",
  supplier.name AS "supplierName", expected_delivery.reference, expected_delivery.ordered_on AS "orderedOn",
  expected_delivery.expected_on AS "expectedOn", expected_delivery.ended_at AS "endedAt",
  expected_delivery.ended_as AS "endedAs", expected_delivery.delivery_id AS "deliveryId",
  expected_delivery.version, expected_delivery.created_at AS "createdAt"`;
const tables = `expected_delivery JOIN supplier
  ON supplier.chain_id = expected_delivery.chain_id AND supplier.id = expected_delivery.supplier_id`;
const ofState = { expected: 'AND ended_at IS NULL', ended: 'AND ended_at IS NOT NULL', all: '' };

type Ending = Pick<ExpectedDelivery, 'endedAs' | 'deliveryId'>;
type Expected = Pick<
  ExpectedDelivery,
  'id' | 'supplierId' | 'reference' | 'orderedOn' | 'expectedOn' | 'daySaid'
>;

/** What was ordered and when it should come. It ends once: received, or called off. */
@Injectable()
export class ExpectedDeliveries {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly conditions: LateDeliveryConditions,
    private readonly orders: OrderFollowers,
  ) {}

  /** What is still expected comes by its day, the earliest first; else the latest comes first. */
  async list(
    actor: Actor,
    { state = 'expected', limit = defaultPageSize, after }: ExpectedDeliveryPageDto,
  ): Promise<ExpectedDeliveryPageView> {
    await refuseUnknownStart(this.database.read, 'expected_delivery', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    const [order, beyond] = state === 'expected' ? ['ASC', '>'] : ['DESC', '<'];
    let onwards = '';
    if (after !== undefined) {
      parameters.push(after);
      onwards = `AND (expected_delivery.expected_on, expected_delivery.id) ${beyond} (
        SELECT expected_on, id FROM expected_delivery AS last WHERE last.studio_id = $1 AND last.id = $2)`;
    }
    const rows = await this.database.read<Omit<ExpectedDeliveryView, 'late'>>(
      `SELECT ${columns} FROM ${tables}
       WHERE expected_delivery.studio_id = $1 ${ofState[state]} ${onwards}
       ORDER BY expected_delivery.expected_on ${order}, expected_delivery.id ${order} LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const today = localDay(this.clock.now(), actor.timeZone);
    return { items: shown.map((row) => viewOf(row, today)), next };
  }

  async show(actor: Actor, id: string): Promise<ExpectedDeliveryView> {
    return this.view(this.database.read, actor, id, this.clock.now());
  }

  /** @throws Problem not-found; unusable-date */
  expect(actor: Actor, dto: ExpectDeliveryDto): Promise<ExpectedDeliveryView> {
    return this.write(actor, 'stock.expect-delivery', dto.id, dto, async (transaction) => {
      const { id, supplierId, reference = null, orderedOn = null, expectedOn } = dto;
      await this.requireSupplier(transaction, supplierId);
      await this.insert(transaction, { id, supplierId, reference, orderedOn, expectedOn, daySaid: 1 });
    });
  }

  /**
   * Expects goods in the caller's transaction, under the studio's lock.
   * @param expected its supplier is one of the chain's
   * @throws Problem unusable-date
   */
  async expectInside(transaction: Transaction, expected: Expected): Promise<void> {
    await this.insert(transaction, expected);
    await this.conditions.reevaluate(transaction, expected.id);
  }

  /** Calls off what is still expected in the caller's transaction, under the studio's lock; what has ended stays so. */
  async callOffInside(transaction: Transaction, id: string): Promise<void> {
    const present = await this.find(transaction, id);
    if (present.endedAs !== null) return;
    await this.end(transaction, present, { endedAs: 'called off', deliveryId: null });
    await this.conditions.reevaluate(transaction, id);
  }

  /** @throws Problem not-found; wrong-state when it has ended; stale-version; unusable-date */
  change(actor: Actor, id: string, dto: ChangeExpectedDeliveryDto): Promise<ExpectedDeliveryView> {
    return this.write(actor, 'stock.change-expected-delivery', id, dto, async (transaction) => {
      const { id: _, version, ...changes } = dto;
      if (changes.supplierId !== undefined) await this.requireSupplier(transaction, changes.supplierId);
      const present = await this.open(transaction, id);
      refuseUnusableDays(transaction, { ...present, ...changes });
      const key = { studioId: transaction.studioId, id };
      await transaction.change(ExpectedDelivery, 'expected delivery', key, version, {
        ...changes,
        // A form may send the day as it found it.
        ...((changes.expectedOn ?? present.expectedOn) !== present.expectedOn && { daySaid: 1 as const }),
      });
      transaction.note({ fields: Object.keys(changes) });
    });
  }

  /** @throws Problem not-found; wrong-state when it has ended already, or an order is expected with it */
  callOff(actor: Actor, id: string, dto: CallOffDeliveryDto): Promise<ExpectedDeliveryView> {
    return this.write(actor, 'stock.call-off-delivery', id, dto, async (transaction) => {
      const present = await this.open(transaction, id);
      await this.refuseOrdered(transaction, id, 'Call off the order instead.');
      await this.end(transaction, present, { endedAs: 'called off', deliveryId: null });
    });
  }

  /** @throws Problem not-found; wrong-state when it has ended already, or an order is expected with it */
  received(actor: Actor, id: string, dto: ExpectedDeliveryReceivedDto): Promise<ExpectedDeliveryView> {
    return this.write(actor, 'stock.expected-delivery-received', id, dto, async (transaction) => {
      const { deliveryId = null } = dto;
      if (deliveryId !== null) {
        const key = { studioId: transaction.studioId, id: deliveryId };
        if (!(await transaction.manager.existsBy(Delivery, key))) throw notFound('delivery', deliveryId);
      }
      const present = await this.open(transaction, id);
      await this.refuseOrdered(
        transaction,
        id,
        'Record the delivery and name it there, or close the order when nothing more is to come.',
      );
      await this.end(transaction, present, { endedAs: 'received', deliveryId });
    });
  }

  /**
   * Notes in the caller's transaction with which delivery it came. What was called off came all the same; what came in
   * parts ended with the first, and stays so: goods that are here are recorded whatever was said of them before.
   * @throws Problem not-found
   */
  async cameWith(transaction: Transaction, id: string, deliveryId: string): Promise<void> {
    await transaction.lockStudio();
    const present = await this.find(transaction, id);
    if (present.endedAs === 'received') return;
    await this.end(transaction, present, { endedAs: 'received', deliveryId });
    await this.conditions.reevaluate(transaction, id);
  }

  /** One change at a time: whether it has ended is read before it is written. */
  private write(
    actor: Actor,
    action: string,
    subjectId: string,
    dto: { id: string },
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<ExpectedDeliveryView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action,
        subject: { kind: 'expected delivery', id: subjectId },
        content: { ...dto, subjectId },
      },
      async (transaction) => {
        await transaction.lockStudio();
        await work(transaction);
        await this.conditions.reevaluate(transaction, subjectId);
        return this.view(transaction.read, actor, subjectId, transaction.recordedAt);
      },
    );
  }

  private async insert(transaction: Transaction, expected: Expected): Promise<void> {
    const { studioId, recordedAt, actor } = transaction;
    refuseUnusableDays(transaction, expected);
    await transaction.insert(ExpectedDelivery, {
      ...expected,
      studioId,
      chainId: actor.chainId,
      endedAt: null,
      endedAs: null,
      deliveryId: null,
      version: 1,
      createdAt: recordedAt,
    });
  }

  private async end(transaction: Transaction, present: ExpectedDelivery, ending: Ending): Promise<void> {
    const { studioId, recordedAt } = transaction;
    const { id, version } = present;
    const changes = { ...ending, endedAt: recordedAt };
    await transaction.change(ExpectedDelivery, 'expected delivery', { studioId, id }, version, changes);
  }

  private async find(transaction: Transaction, id: string): Promise<ExpectedDelivery> {
    const key = { studioId: transaction.studioId, id };
    const found = await transaction.manager.findOneBy(ExpectedDelivery, key);
    if (!found) throw notFound('expected delivery', id);
    return found;
  }

  private async open(transaction: Transaction, id: string): Promise<ExpectedDelivery> {
    const found = await this.find(transaction, id);
    if (found.endedAs === null) return found;
    const said = found.endedAs === 'received' ? 'was received' : 'was called off';
    throw new Problem(
      409,
      'wrong-state',
      `This delivery ${said} already, on ${found.endedAt}. Expect another one if more is to come.`,
    );
  }

  /** An order that is underway is never left with nothing expected: nobody would be told that it is late. */
  private async refuseOrdered(transaction: Transaction, id: string, instead: string): Promise<void> {
    const order = await this.orders.awaiting(transaction, id);
    if (order === null) return;
    throw new Problem(409, 'wrong-state', `${order} is expected with this delivery. ${instead}`);
  }

  private async requireSupplier(transaction: Transaction, supplierId: string): Promise<void> {
    const [supplier] = await transaction.query('SELECT id FROM supplier WHERE chain_id = $1 AND id = $2', [
      transaction.actor.chainId,
      supplierId,
    ]);
    if (!supplier) throw notFound('supplier', supplierId);
  }

  private async view(read: Read, actor: Actor, id: string, now: string): Promise<ExpectedDeliveryView> {
    const [row] = await read<Omit<ExpectedDeliveryView, 'late'>>(
      `SELECT ${columns} FROM ${tables}
       WHERE expected_delivery.studio_id = $1 AND expected_delivery.id = $2`,
      [actor.studioId, id],
    );
    if (!row) throw notFound('expected delivery', id);
    return viewOf(row, localDay(now, actor.timeZone));
  }
}

/** @throws Problem unusable-date */
function refuseUnusableDays({ recordedAt, actor }: Transaction, days: ExpectedDays): void {
  const faults = expectedDaysFaults(days, localDay(recordedAt, actor.timeZone));
  if (faults.length === 0) return;
  throw faultsProblem(faults.map((fault) => ({ ...fault, code: 'unusable-date' })));
}

function viewOf(row: Omit<ExpectedDeliveryView, 'late'>, today: string): ExpectedDeliveryView {
  return { ...row, late: isLateDelivery(row.expectedOn, row.endedAs, today) };
}
