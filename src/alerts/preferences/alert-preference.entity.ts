import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { AlertSeverity } from '../open-condition.js';

/** How one person wants to be told. Whoever has none gets what their role gets. */
@Entity('alert_preference')
export class AlertPreference {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') personId: string;
  /** Told of each alert from this severity on, beside the summary. */
  @Column('text') toldFrom: AlertSeverity | 'never';
  /** Of urgent ones: at once, or only when it is their turn in the order of people. */
  @Column('text') urgentTurn: 'at once' | 'in turn';
  @Column('text') summary: 'daily' | 'never';
  /** Local time, `HH:MM`; null: the studio's morning. */
  @Column('text', { nullable: true }) summaryAt: string | null;
  /** Local times between which only what is urgent is told; both null: none. */
  @Column('text', { nullable: true }) quietFrom: string | null;
  @Column('text', { nullable: true }) quietUntil: string | null;
  /** Kinds of alerts this person is not told of, unless they are urgent. */
  @Column('simple-json') kindsLeftOut: string[];
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
