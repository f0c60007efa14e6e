import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { RecallKind, RecallState } from './vocabulary.js';

/** The answer of one studio to a recall, or its rehearsal. Studios of a chain answer one recall under one id. */
@Entity('recall')
export class Recall {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') kind: RecallKind;
  @Column('text') title: string;
  /** 1: every studio of the chain has its part. */
  @Column('integer') chainWide: number;
  /** Where it was opened; another studio’s part follows that one. */
  @Column('text') openedInStudioId: string;
  @Column('text') state: RecallState;
  @Column('text') openedAt: string;
  /** Null in the studios that follow: nobody there opened it. */
  @Column('text', { nullable: true }) openedBy: string | null;
  @Column('text', { nullable: true }) endedAt: string | null;
  @Column('integer') version: number;
}
