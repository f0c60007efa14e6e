import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { NoticeSource } from './vocabulary.js';

/** What a maker or an authority wrote, as it came. Never changed. */
@Entity('recall_notice')
export class RecallNotice {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') source: NoticeSource;
  /** Its number at whoever published it; null: none is known. */
  @Column('text', { nullable: true }) reference: string | null;
  @Column('text') text: string;
  /** SHA-256 of the text, by which the same notice is known again. */
  @Column('text') textDigest: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

/** Somebody looked at a notice and found that nothing is to be done. */
@Entity('recall_notice_dismissal')
export class RecallNoticeDismissal {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') noticeId: string;
  @Column('text') reason: string;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}
