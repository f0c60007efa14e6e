import { Column, Entity, PrimaryColumn } from 'typeorm';

/** Pigments dropped together into one single-use cup for one session. */
@Entity('mix')
export class Mix {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') sessionId: string;
  /** Such as `base` or `shadow`; never about the client. */
  @Column('text') label: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
}

/** Drops or a volume added to a mix; a negative one takes a mistake back. Never changed; totals are sums. */
@Entity('mix_component')
export class MixComponent {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') mixId: string;
  @Column('text') sessionId: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  /** Null when the amount was given as a volume. */
  @Column('integer', { nullable: true }) drops: number | null;
  /** Signed estimate. */
  @Column('integer') microlitres: number;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
