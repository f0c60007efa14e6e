import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One link of a studio's audit chain; never changed. */
@Entity('audit_entry')
export class AuditEntry {
  @PrimaryColumn('text') studioId: string;
  /** Gapless from 1 in each studio. */
  @PrimaryColumn('integer') sequence: number;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
  @Column('text') action: string;
  @Column('text') subjectKind: string;
  @Column('text') subjectId: string;
  /** Canonical JSON: the notes of the write and the digests of the rows it wrote. */
  @Column('text') payload: string;
  @Column('text') previousHash: string;
  @Column('text') hash: string;
}

/** The last link of a studio's chain. */
@Entity('audit_head')
export class AuditHead {
  @PrimaryColumn('text') studioId: string;
  @Column('integer') sequence: number;
  @Column('text') hash: string;
}

/** A request that was carried out, and what it was answered. */
@Entity('accepted_request')
export class AcceptedRequest {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') action: string;
  @Column('text') digest: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') acceptedAt: string;
  @Column('text', { nullable: true }) answer: string | null;
}
