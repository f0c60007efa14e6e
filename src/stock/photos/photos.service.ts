import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { occurredAt } from '../../platform/occurred-at.js';
import { invalidField, notFound } from '../../platform/problem.js';
import { Photo } from './photo.entity.js';
import type { PhotoMediaType } from './photo-media-type.js';
import { type KeepPhotoDto, maximumPhotoBytes } from './photos.dto.js';
import type { PhotoView } from './photos.views.js';
import { pictured } from './pictured.js';

const sealingPlace = (id: string) => `photo.content:${id}`;

/**
 * Pictures that prove something about a thing. Guarantees: a picture is kept as it came, sealed under a key of its own;
 * neither the answer of the request nor the audit log holds any of it, only its digest.
 */
@Injectable()
export class Photos {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly dataKeys: DataKeys,
  ) {}

  /** @throws Problem invalid-fields when the bytes are not the picture they are said to be */
  async keep(actor: Actor, { content, ...dto }: KeepPhotoDto): Promise<PhotoView> {
    const bytes = Buffer.from(content, 'base64');
    refuseWhatIsNoPicture(bytes, dto.mediaType);
    const digest = createHash('sha256').update(bytes).digest('hex');
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.keep-photo',
        subject: { kind: 'photo', id: dto.id },
        content: { ...dto, digest },
      },
      async (transaction) => {
        const sealer = await this.dataKeys.make(transaction);
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        await transaction.insert(Photo, {
          studioId: actor.studioId,
          id: dto.id,
          dataKeyId: sealer.dataKeyId,
          mediaType: dto.mediaType,
          contentSealed: sealer.seal(bytes.toString('base64'), sealingPlace(dto.id)) ?? '',
          occurredAt: at,
          recordedAt: transaction.recordedAt,
          personId: actor.personId,
          via: actor.via,
        });
        transaction.note({ photo: { digest, bytes: bytes.length } });
        return { id: dto.id, mediaType: dto.mediaType, bytes: bytes.length, digest, occurredAt: at };
      },
    );
  }

  /** @throws Problem not-found */
  async show(actor: Actor, photoId: string): Promise<{ mediaType: PhotoMediaType; bytes: Buffer }> {
    const { studioId } = actor;
    const [row] = await this.database.read<Pick<Photo, 'dataKeyId' | 'mediaType' | 'contentSealed'>>(
      `SELECT data_key_id AS "dataKeyId", media_type AS "mediaType", content_sealed AS "contentSealed"
       FROM photo WHERE studio_id = $1 AND id = $2`,
      [studioId, photoId],
    );
    const sealer = row && (await this.dataKeys.sealer(studioId, row.dataKeyId));
    if (!row || !sealer) throw notFound('photo', photoId);
    const content = sealer.open(row.contentSealed, sealingPlace(photoId)) ?? '';
    return { mediaType: row.mediaType, bytes: Buffer.from(content, 'base64') };
  }

  /** @throws Problem not-found when a photo is named that the studio does not have */
  async check(read: Read, studioId: string, photoId: string | null | undefined): Promise<void> {
    if (photoId == null) return;
    const rows = await read('SELECT id FROM photo WHERE studio_id = $1 AND id = $2', [studioId, photoId]);
    if (rows.length === 0) throw notFound('photo', photoId);
  }
}

function refuseWhatIsNoPicture(bytes: Buffer, said: PhotoMediaType): void {
  if (bytes.length > maximumPhotoBytes) {
    throw invalidField(
      'content',
      `The picture has ${bytes.length} bytes; at most ${maximumPhotoBytes} are kept. Make it smaller and send it again.`,
    );
  }
  const seen = pictured(bytes);
  if (seen === said) return;
  throw invalidField(
    'content',
    seen === null
      ? 'These bytes are neither a JPEG nor a PNG picture, or end before its size. Take the picture again.'
      : `These bytes are a picture of the type ${seen}, not ${said}. Say the type it really has.`,
  );
}
