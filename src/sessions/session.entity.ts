import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { BodyPlace, SessionState, VisitKind } from './vocabulary.js';

/** One visit of one client. */
@Entity('session')
export class Session {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') clientId: string;
  @Column('text') artistId: string;
  @Column('text') procedureId: string;
  @Column('text') visitKind: VisitKind;
  @Column('text') bodyPlace: BodyPlace;
  /** Sealed under the client's key. */
  @Column('text', { nullable: true }) bodyPlaceDetailSealed: string | null;
  @Column('text') state: SessionState;
  @Column('text', { nullable: true }) bookedAt: string | null;
  @Column('text', { nullable: true }) plannedStart: string | null;
  @Column('text') plannedAt: string;
  @Column('text', { nullable: true }) inSetupAt: string | null;
  @Column('text', { nullable: true }) completedAt: string | null;
  @Column('text', { nullable: true }) cancelledAt: string | null;
  @Column('text', { nullable: true }) notAttendedAt: string | null;
  /** The earlier session this one touches up, refreshes or corrects. */
  @Column('text', { nullable: true }) followsSessionId: string | null;
  /** Recorded as it happened, or afterwards from memory or from paper. */
  @Column('text') recordedFrom: 'tray' | 'late' | 'paper';
  @Column('text', { nullable: true }) signedBy: string | null;
  @Column('text', { nullable: true }) signedAt: string | null;
  /** Sealed under the client's key; null: not asked yet. */
  @Column('text', { nullable: true }) complicationsSealed: string | null;
  @Column('text', { nullable: true }) healedResultSealed: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  /**
   * Keyed hash of the id under which a list of bookings or a calendar knows it, so that it is taken in once. It stays after
   * an erasure: else an old calendar would bring the client back. Null for what came from no list, or has no id there.
   */
  @Column('text', { nullable: true }) bookingHash: string | null;
}
