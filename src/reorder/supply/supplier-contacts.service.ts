import { Injectable } from '@nestjs/common';
import type { Read } from '../../platform/database/database.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';

/** Where a supplier takes orders, as it is kept sealed. */
export interface SupplierContact {
  mailAddress: string | null;
  /** The number under which the supplier knows the studio. */
  customerNumber: string | null;
}

/** Where the contact of a supplier's terms is sealed to. */
export const contactPlace = (supplierId: string) => `supplier_terms.contact:${supplierId}`;

export interface SealedContact {
  supplierId: string;
  dataKeyId: string | null;
  contactSealed: string | null;
}

/** Opens what is sealed of suppliers' terms, for who may place orders. */
@Injectable()
export class SupplierContacts {
  constructor(private readonly dataKeys: DataKeys) {}

  /** Null: nothing is known. */
  async of(read: Read, studioId: string, supplierId: string): Promise<SupplierContact | null> {
    const rows = await read<SealedContact>(
      `SELECT supplier_id AS "supplierId", data_key_id AS "dataKeyId", contact_sealed AS "contactSealed"
       FROM supplier_terms WHERE studio_id = $1 AND supplier_id = $2`,
      [studioId, supplierId],
    );
    return (await this.opened(studioId, rows)).get(supplierId) ?? null;
  }

  /** By supplier; without those of whom nothing is known. */
  async opened(studioId: string, sealed: readonly SealedContact[]): Promise<Map<string, SupplierContact>> {
    const keyIds = sealed.flatMap(({ dataKeyId }) => dataKeyId ?? []);
    const sealers = await this.dataKeys.sealers(studioId, keyIds);
    const contacts = new Map<string, SupplierContact>();
    for (const { supplierId, dataKeyId, contactSealed } of sealed) {
      if (dataKeyId === null) continue;
      const opened = sealers.get(dataKeyId)?.open(contactSealed, contactPlace(supplierId)) ?? null;
      if (opened !== null) contacts.set(supplierId, JSON.parse(opened) as SupplierContact);
    }
    return contacts;
  }
}
