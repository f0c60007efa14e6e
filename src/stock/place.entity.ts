import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { PlaceKind } from './vocabulary.js';

/** Where stock stands: a shelf, a room, a case that travels. */
@Entity('place')
export class Place {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('text') kind: PlaceKind;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) archivedAt: string | null;
}
