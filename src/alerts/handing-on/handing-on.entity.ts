import { Column, Entity, PrimaryColumn } from 'typeorm';

/** When an urgent alert goes on to the next person, and who that is. */
@Entity('handing_on')
export class HandingOn {
  @PrimaryColumn('text') studioId: string;
  /** Minutes without anybody acknowledging it; null: it is not handed on. */
  @Column('integer', { nullable: true }) afterMinutes: number | null;
  /** In this order; empty: managers, then owners, as they came. */
  @Column('simple-json') personIds: string[];
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
