import { Injectable } from '@nestjs/common';
import { refuseWithout, type StudioActor } from '../../identity/actor.guard.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField, notFound, refuseOtherVersion, staleVersion } from '../../platform/problem.js';
import type { PageDto } from '../../platform/request.dto.js';
import { awaitedLines } from './awaited-lines.query.js';
import { leadTimeOfSupplier } from './learnt-lead-time.js';
import { observedArrivals } from './observed-arrivals.query.js';
import {
  contactPlace,
  type SealedContact,
  type SupplierContact,
  SupplierContacts,
} from './supplier-contacts.service.js';
import type { SetSupplierTermsDto } from './supplier-terms.dto.js';
import { SupplierTerms } from './supplier-terms.entity.js';
import type { SupplierTermsPageView, SupplierTermsView } from './supplier-terms.views.js';

interface Row extends SealedContact {
  supplierName: string;
  quotedLeadTimeDays: number | null;
  orderWeekdays: string | null;
  minimumOrderMinor: number | null;
  deliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
  currency: string;
  offers: number;
  version: number | null;
}

/** On what terms suppliers deliver to a studio. Guarantees: where orders are sent is sealed, and never in a kept answer. */
@Injectable()
export class SupplierTermsRegister {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
    private readonly contacts: SupplierContacts,
    private readonly clock: Clock,
  ) {}

  /** Every supplier by name, whether terms are set or not. */
  async list(
    actor: StudioActor,
    { limit = defaultPageSize, after }: PageDto,
  ): Promise<SupplierTermsPageView> {
    const { read } = this.database;
    if (after !== undefined) await refuseUnknownAfter(read, actor, after);
    const onwards =
      after === undefined
        ? ''
        : `AND (lower(supplier.name), supplier.id) > (
             SELECT lower(name), id FROM supplier AS last WHERE last.chain_id = $2 AND last.id = $3)`;
    const rows = await rowsOf(read, actor, onwards, after === undefined ? [] : [after], limit + 1);
    const { shown, next } = pageOf(rows, limit, ({ supplierId }) => supplierId);
    return { items: await this.views(read, actor, shown), next };
  }

  /** @throws Problem not-found */
  async show(actor: StudioActor, supplierId: string): Promise<SupplierTermsView> {
    const { read } = this.database;
    const rows = await rowsOf(read, actor, 'AND supplier.id = $3', [supplierId], 1);
    const [view] = await this.views(read, actor, rows);
    if (!view) throw notFound('supplier', supplierId);
    return view;
  }

  /** @throws Problem not-found; invalid-fields; not-allowed; stale-version when somebody else set them since they were read */
  set(actor: StudioActor, supplierId: string, dto: SetSupplierTermsDto): Promise<SupplierTermsView> {
    const { contact, version } = dto;
    if (contact !== undefined) refuseWithout(actor, 'place orders');
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'reorder.set-supplier-terms',
        subject: { kind: 'supplier', id: supplierId },
        content: { ...dto, supplierId },
      },
      async (transaction) => {
        // One at a time, so that two who set the first ones do not meet in the key.
        await transaction.lockStudio();
        const [row] = await rowsOf(transaction.read, actor, 'AND supplier.id = $3', [supplierId], 1);
        if (!row) throw notFound('supplier', supplierId);
        refuseOtherVersion('terms', row.version, version);
        const terms = {
          ...(await termsOf(transaction, dto)),
          ...(await this.sealed(transaction, row, contact)),
        };
        const { studioId } = transaction;
        if (row.version === null) {
          const { chainId } = actor;
          await transaction.insert(SupplierTerms, { studioId, supplierId, chainId, version: 1, ...terms });
        } else {
          const where = { studioId, supplierId, version: row.version };
          if (!(await transaction.update(SupplierTerms, where, { ...terms, version: row.version + 1 }))) {
            throw staleVersion('terms', row.version);
          }
        }
        transaction.note({ fields: Object.keys(dto).filter((field) => !['id', 'version'].includes(field)) });
        return this.kept(transaction, actor, supplierId);
      },
    );
  }

  /** As the answer to a write is kept: without where orders are sent. */
  private async kept(
    transaction: Transaction,
    actor: StudioActor,
    supplierId: string,
  ): Promise<SupplierTermsView> {
    const rows = await rowsOf(transaction.read, actor, 'AND supplier.id = $3', [supplierId], 1);
    const [view] = await this.views(transaction.read, { ...actor, may: new Set() }, rows);
    if (!view) throw new Error(`The supplier ${supplierId} is gone.`);
    return view;
  }

  private async sealed(
    transaction: Transaction,
    { supplierId, dataKeyId, contactSealed }: Row,
    contact: SetSupplierTermsDto['contact'],
  ): Promise<Pick<SupplierTerms, 'dataKeyId' | 'contactSealed'>> {
    if (contact === undefined) return { dataKeyId, contactSealed };
    const known: SupplierContact = {
      mailAddress: contact?.mailAddress ?? null,
      customerNumber: contact?.customerNumber ?? null,
    };
    if (Object.values(known).every((value) => value === null)) return { dataKeyId, contactSealed: null };
    const present =
      dataKeyId === null ? undefined : await this.dataKeys.sealer(transaction.studioId, dataKeyId);
    const sealer = present ?? (await this.dataKeys.make(transaction));
    return {
      dataKeyId: sealer.dataKeyId,
      contactSealed: sealer.seal(JSON.stringify(known), contactPlace(supplierId)),
    };
  }

  private async views(read: Read, actor: StudioActor, rows: readonly Row[]): Promise<SupplierTermsView[]> {
    const now = this.clock.now();
    const supplierIds = rows.map(({ supplierId }) => supplierId);
    const record = {
      arrivals: await observedArrivals(read, actor, now, supplierIds),
      awaited: await awaitedLines(read, actor, now, supplierIds),
    };
    const opened = actor.may.has('place orders')
      ? await this.contacts.opened(actor.studioId, rows)
      : new Map<string, SupplierContact>();
    return rows.map(({ dataKeyId: _, contactSealed, orderWeekdays, ...row }) => {
      const { supplierId, quotedLeadTimeDays } = row;
      const learnt = leadTimeOfSupplier(record, supplierId, quotedLeadTimeDays);
      const { basis, medianDays, days95, orders, leftOut } = learnt;
      return {
        ...row,
        orderWeekdays: orderWeekdays === null ? [] : (JSON.parse(orderWeekdays) as number[]),
        hasContact: contactSealed !== null,
        contact: opened.get(supplierId) ?? null,
        leadTime: { basis, medianDays, days95, orders, leftOut },
      };
    });
  }
}

/** @param condition on suppliers, with parameters from $3 on */
function rowsOf(
  read: Read,
  { studioId, chainId }: Actor,
  condition: string,
  parameters: readonly SqlValue[],
  limit: number,
): Promise<Row[]> {
  return read<Row>(
    `SELECT supplier.id AS "supplierId", supplier.name AS "supplierName",
       terms.quoted_lead_time_days AS "quotedLeadTimeDays", terms.order_weekdays AS "orderWeekdays",
       terms.minimum_order_minor AS "minimumOrderMinor", terms.delivery_cost_minor AS "deliveryCostMinor",
       terms.free_delivery_from_minor AS "freeDeliveryFromMinor", coalesce(terms.currency, studio.currency) AS currency,
       terms.data_key_id AS "dataKeyId", terms.contact_sealed AS "contactSealed", terms.version,
       (SELECT count(*) FROM offer
        WHERE offer.studio_id = studio.id AND offer.supplier_id = supplier.id AND offer.ended_at IS NULL) AS offers
     FROM supplier JOIN studio ON studio.id = $1
     LEFT JOIN supplier_terms AS terms ON terms.studio_id = studio.id AND terms.supplier_id = supplier.id
     WHERE supplier.chain_id = $2 ${condition}
     ORDER BY lower(supplier.name), supplier.id LIMIT ${limit}`,
    [studioId, chainId, ...parameters],
  );
}

async function termsOf(
  transaction: Transaction,
  dto: SetSupplierTermsDto,
): Promise<
  Omit<SupplierTerms, 'studioId' | 'supplierId' | 'chainId' | 'dataKeyId' | 'contactSealed' | 'version'>
> {
  const { minimumOrderMinor = null, freeDeliveryFromMinor = null, deliveryCostMinor = null } = dto;
  if (freeDeliveryFromMinor !== null && deliveryCostMinor === null) {
    throw invalidField(
      'deliveryCostMinor',
      'It is said from which sum on delivery is free, but not what it costs below. Say that too, or leave both out.',
    );
  }
  const [studio] = await transaction.query<{ currency: string }>(
    'SELECT currency FROM studio WHERE id = $1',
    [transaction.studioId],
  );
  return {
    quotedLeadTimeDays: dto.quotedLeadTimeDays ?? null,
    orderWeekdays: [...dto.orderWeekdays].sort((one, other) => one - other),
    minimumOrderMinor,
    deliveryCostMinor,
    freeDeliveryFromMinor,
    currency: studio?.currency ?? '',
    updatedAt: transaction.recordedAt,
  };
}

async function refuseUnknownAfter(read: Read, { chainId }: Actor, after: string): Promise<void> {
  const rows = await read('SELECT id FROM supplier WHERE chain_id = $1 AND id = $2', [chainId, after]);
  if (rows.length > 0) return;
  throw invalidField(
    'after',
    `There is no supplier with the id ${after} to go on from. Give the "next" of the page before, or leave it out.`,
  );
}
