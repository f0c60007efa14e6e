import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { AlertSeverity } from './open-condition.js';

export type AlertEntryEvent =
  | 'opened'
  | 'worse'
  | 'milder'
  | 'acknowledged'
  | 'put off'
  | 'due again'
  | 'given'
  | 'handed on'
  | 'noted'
  | 'closed'
  | 'ended';

/** One step of an alert's history. */
@Entity('alert_entry')
export class AlertEntry {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  /** Counts up in the studio without gaps: what comes after a number is what is new since. */
  @Column('integer') sequence: number;
  @Column('text') alertId: string;
  @Column('text') event: AlertEntryEvent;
  @Column('text') severity: AlertSeverity;
  /** Null: the service itself. */
  @Column('text', { nullable: true }) personId: string | null;
  /** To whom it was given or handed on. */
  @Column('text', { nullable: true }) toPersonId: string | null;
  @Column('text', { nullable: true }) until: string | null;
  @Column('text', { nullable: true }) dataKeyId: string | null;
  @Column('text', { nullable: true }) noteSealed: string | null;
  @Column('text') recordedAt: string;
}
