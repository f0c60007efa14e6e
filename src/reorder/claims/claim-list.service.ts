import { Injectable } from '@nestjs/common';
import { productLabel } from '../../catalogue/product-label.js';
import type { StudioActor } from '../../identity/actor.guard.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Database, placeholders, type SqlValue } from '../../platform/database/database.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { notFound } from '../../platform/problem.js';
import { SupplierContacts } from '../supply/supplier-contacts.service.js';
import { writtenMoney } from '../written-money.js';
import { type ClaimRow, claimRows, viewOfClaim } from './claim-rows.query.js';
import { claimText } from './claim-text.js';
import type { ClaimPageDto } from './claims.dto.js';
import type { ClaimPageView, ShownClaimView } from './claims.views.js';
import { type ClaimState, claimStates } from './vocabulary.js';

/** Where the note of a claim is sealed to. */
export const sealedAsNote = (claimId: string) => `supplier_claim.note:${claimId}`;

const standing: readonly ClaimState[] = ['open', 'sent'];

/** Claims against suppliers as they stand. */
@Injectable()
export class ClaimList {
  constructor(
    private readonly database: Database,
    private readonly dataKeys: DataKeys,
    private readonly contacts: SupplierContacts,
  ) {}

  async page(
    actor: Actor,
    { state = 'standing', supplierId, limit = defaultPageSize, after }: ClaimPageDto,
  ): Promise<ClaimPageView> {
    await refuseUnknownStart(this.database.read, 'supplier_claim', actor.studioId, after);
    const states = state === 'standing' ? standing : state === 'all' ? claimStates : [state];
    const parameters: SqlValue[] = [actor.studioId, ...states];
    let further = `AND claim.state IN (${placeholders(states)})`;
    if (supplierId !== undefined) further += ` AND claim.supplier_id = $${parameters.push(supplierId)}`;
    if (after !== undefined) {
      further += ` AND (claim.created_at, claim.id) < (SELECT created_at, id FROM supplier_claim AS last
        WHERE last.studio_id = $1 AND last.id = $${parameters.push(after)})`;
    }
    const order = `ORDER BY claim.created_at DESC, claim.id DESC LIMIT ${limit + 1}`;
    const rows = await claimRows(this.database.read, `${further} ${order}`, parameters);
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown.map(viewOfClaim), next };
  }

  /** @throws Problem not-found */
  async show(actor: StudioActor, id: string): Promise<ShownClaimView> {
    const row = await this.find(actor, id);
    const note = actor.may.has('place orders') ? await this.note(actor, row) : null;
    return { ...viewOfClaim(row), note };
  }

  /**
   * The claim as a letter.
   * @throws Problem not-found
   */
  async text(actor: Actor, id: string): Promise<string> {
    const row = await this.find(actor, id);
    const { supplierId, productName, makerName, shade, amountMinor, currency, deliveredAt } = row;
    const contact = await this.contacts.of(this.database.read, actor.studioId, supplierId);
    const [studio] = await this.database.read<{ name: string; contact: string | null }>(
      'SELECT name, contact_point AS contact FROM studio WHERE id = $1',
      [actor.studioId],
    );
    return claimText({
      studioName: studio?.name ?? '',
      studioContact: studio?.contact ?? null,
      supplierName: row.supplierName,
      customerNumber: contact?.customerNumber ?? null,
      orderNumber: row.orderNumber,
      deliveryReference: row.deliveryReference,
      deliveredOn: deliveredAt === null ? null : localDay(deliveredAt, actor.timeZone),
      product:
        productName === null || makerName === null ? null : productLabel({ makerName, productName, shade }),
      orderCode: row.orderCode,
      lotCode: row.lotCode,
      useBy: row.useBy,
      reason: row.reason,
      pieces: row.pieces,
      amount: amountMinor === null || currency === null ? null : writtenMoney(amountMinor, currency),
      note: await this.note(actor, row),
    });
  }

  private async find(actor: Actor, id: string): Promise<ClaimRow> {
    const [row] = await claimRows(this.database.read, 'AND claim.id = $2', [actor.studioId, id]);
    if (!row) throw notFound('claim', id);
    return row;
  }

  private async note({ studioId }: Actor, { id, dataKeyId, noteSealed }: ClaimRow): Promise<string | null> {
    if (dataKeyId === null) return null;
    const sealer = await this.dataKeys.sealer(studioId, dataKeyId);
    return sealer?.open(noteSealed, sealedAsNote(id)) ?? null;
  }
}
