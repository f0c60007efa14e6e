import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { PhotoMediaType } from './photo-media-type.js';

/** A picture that proves something about a thing. Sealed, since it may show more than the thing. */
@Entity('photo')
export class Photo {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** Each picture has a key of its own. */
  @Column('text') dataKeyId: string;
  @Column('text') mediaType: PhotoMediaType;
  /** Base64 of the file, sealed. */
  @Column('text') contentSealed: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
