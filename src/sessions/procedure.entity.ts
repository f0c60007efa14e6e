import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { BodyPlace } from './vocabulary.js';

/** What the studio offers. */
@Entity('procedure')
export class Procedure {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('text') bodyPlace: BodyPlace;
  /** The touch-up window, in days after a first session. */
  @Column('integer') touchUpFromDays: number;
  @Column('integer') touchUpToDays: number;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) archivedAt: string | null;
}
