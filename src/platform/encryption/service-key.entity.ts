import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The one key of the service itself, wrapped by a master key. */
@Entity('service_key')
export class ServiceKeyRow {
  @PrimaryColumn('text') id: 'service';
  @Column('text') masterKeyId: string;
  @Column('text') wrappedKey: string;
}
