import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The key of one person's fields, wrapped by a master key. Destroying it erases the person. */
@Entity('data_key')
export class DataKey {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') masterKeyId: string;
  /** Null once destroyed. */
  @Column('text', { nullable: true }) wrappedKey: string | null;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) destroyedAt: string | null;
}

/** The key of a studio's keyed hashes, by which sealed fields are found again. */
@Entity('studio_key')
export class StudioKey {
  @PrimaryColumn('text') studioId: string;
  @Column('text') masterKeyId: string;
  @Column('text') wrappedKey: string;
}
