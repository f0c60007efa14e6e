import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A delivery that was promised when its cause was committed. This row, not any queue, is the record of it. */
@Entity('outbox')
export class OutboxRow {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') alertId: string;
  @Column('text') event: 'opened' | 'closed';
  @Column('text') channel: string;
  @Column('text') state: 'pending' | 'sent' | 'undeliverable';
  @Column('integer') attempts: number;
  @Column('text') nextAttemptAt: string;
  @Column('text', { nullable: true }) lastError: string | null;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) settledAt: string | null;
}
