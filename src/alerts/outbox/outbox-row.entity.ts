import { Column, Entity, PrimaryColumn } from 'typeorm';

/** The ways an alert is told; each has a queue of its own. */
export const channels = ['log', 'mail', 'webhook', 'push'] as const;
export type Channel = (typeof channels)[number];

/** What a delivery tells of: something about an alert, a person's summary of the morning, or a test somebody asked for. */
export type OutboxEvent =
  | 'opened'
  | 'worse'
  | 'due again'
  | 'handed on'
  | 'given'
  | 'closed'
  | 'summary'
  | 'test';

/** A delivery that was promised when its cause was committed. This row, not any queue, is the record of it. */
@Entity('outbox')
export class OutboxRow {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** Null for a summary or a test. */
  @Column('text', { nullable: true }) alertId: string | null;
  @Column('text') event: OutboxEvent;
  @Column('text') channel: Channel;
  @Column('text') state: 'pending' | 'sent' | 'undeliverable';
  /** Attempts whose end is known. */
  @Column('integer') attempts: number;
  @Column('text') nextAttemptAt: string;
  @Column('text', { nullable: true }) lastError: string | null;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) settledAt: string | null;
  /** Null: the log of the service. */
  @Column('text', { nullable: true }) destinationId: string | null;
  @Column('text', { nullable: true }) summaryId: string | null;
  /** Attempts that were begun, those that a kill cut off included; null: none. */
  @Column('integer', { nullable: true }) begun: number | null;
  /** When it was promised for, such as the end of quiet hours; null: at once. */
  @Column('text', { nullable: true }) notBefore: string | null;
}
