import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Something wanted at setup of which none was left. */
@Entity('unmet_demand')
export class UnmetDemand {
  @PrimaryColumn('text') studioId: string;
  /** The scan that was answered `none left`. */
  @PrimaryColumn('text') id: string;
  @Column('text') sessionId: string;
  @Column('text') productId: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
}
