import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { DataKey } from '../platform/encryption/data-key.entity.js';
import { Client } from './client.entity.js';
import { TreatmentRecords } from './treatment-records.service.js';

/**
 * Erases a client in the caller's transaction. What no one may change keeps its sealed texts, which nothing opens any
 * more once the key is gone; where rows may change they are cleared too, and so are the hashes by which the client was
 * found. The client's id and reference stay, and with them every link to a lot: a recall still counts and names whom it
 * reached. The digests in the audit log are of these rows as they stand afterwards.
 */
@Injectable()
export class ClientEraser {
  constructor(private readonly treatmentRecords: TreatmentRecords) {}

  /** @param erasedAt when the client was erased: now, or earlier when an older copy of the database is put right */
  async erase(transaction: Transaction, client: Client, erasedAt: string): Promise<void> {
    const { studioId, id, dataKeyId, version } = client;
    await this.treatmentRecords.erase(transaction, id);
    await transaction.change(Client, 'client', { studioId, id }, version, {
      nameSealed: null,
      contactSealed: null,
      noteSealed: null,
      nameHash: null,
      contactHash: null,
      erasedAt,
    });
    await transaction.update(
      DataKey,
      { studioId, id: dataKeyId },
      { wrappedKey: null, destroyedAt: transaction.recordedAt },
    );
  }
}
