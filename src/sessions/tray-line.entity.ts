import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { KnownBy } from './vocabulary.js';

/** One thing on the tray: a piece, reserved for this session, or a container that is shared. Its id is its scan's. */
@Entity('tray_line')
export class TrayLine {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') sessionId: string;
  @Column('text') productId: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  /** Pieces reserved: 1 for a piece, 0 for a container that stays on the shelf's book. */
  @Column('integer') pieces: number;
  @Column('text', { nullable: true }) serial: string | null;
  @Column('text') knownBy: KnownBy;
  @Column('text') admittedAt: string;
  @Column('text') state: 'on tray' | 'taken off' | 'settled';
  /** What it was settled as when the session was completed, or when it was opened and taken off the tray; a piece whose use is reversed went back unopened. */
  @Column('text', { nullable: true }) settledAs: 'used' | 'opened unused' | 'back unopened' | null;
  /** When the settled thing was used, opened or put back. */
  @Column('text', { nullable: true }) settledAt: string | null;
}
