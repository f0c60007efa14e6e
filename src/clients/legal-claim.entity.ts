import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Via } from '../platform/actor.js';

/** A legal claim for which a client's record is needed. Never changed; its end is a row of its own. */
@Entity('legal_claim')
export class LegalClaim {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') clientId: string;
  /** Sealed under the client's key. */
  @Column('text') reasonSealed: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: Via;
}

@Entity('legal_claim_end')
export class LegalClaimEnd {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') claimId: string;
  /** Sealed under the client's key. */
  @Column('text') reasonSealed: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: Via;
}
