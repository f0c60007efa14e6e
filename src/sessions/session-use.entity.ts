import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { KnownBy } from './vocabulary.js';

/** What touched the client, with the label as it was known then. Never changed; a mistake is reversed. */
@Entity('session_use')
export class SessionUse {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') sessionId: string;
  @Column('text') clientId: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  /** Null when the amount is not known, and so nothing is booked. */
  @Column('text', { nullable: true }) movementId: string | null;
  @Column('text', { nullable: true }) mixId: string | null;
  /** The line of the tray it was settled from; null: it lay on no tray. */
  @Column('text', { nullable: true }) trayLineId: string | null;
  @Column('text') knownBy: KnownBy;
  /** Pieces used; 0 for a share of a container. */
  @Column('integer') pieces: number;
  @Column('integer', { nullable: true }) drops: number | null;
  /** Estimate; 0 for pieces. */
  @Column('integer') microlitres: number;
  /** The reasons for which it had been refused, when it was used all the same. */
  @Column('simple-json', { nullable: true }) againstRefusal: string[] | null;
  /** Why, in the artist's words, sealed under the client's key: it may speak of the client. */
  @Column('text', { nullable: true }) reasonSealed: string | null;
  /** When a topical anaesthetic was put on and taken off, and by whom. */
  @Column('text', { nullable: true }) appliedAt: string | null;
  @Column('text', { nullable: true }) removedAt: string | null;
  @Column('text', { nullable: true }) appliedBy: string | null;

  @Column('text') makerName: string;
  @Column('text') productName: string;
  @Column('text', { nullable: true }) shade: string | null;
  @Column('text', { nullable: true }) lotCode: string | null;
  @Column('simple-json') codes: { kind: string; code: string }[];
  @Column('text', { nullable: true }) useBy: string | null;

  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** A use that was recorded by mistake. Both stay visible. */
@Entity('session_use_reversal')
export class SessionUseReversal {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') useId: string;
  @Column('text', { nullable: true }) movementId: string | null;
  /** Sealed under the client's key; empty: the client had been erased, so that none could be kept. */
  @Column('text') reasonSealed: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
