import { Column, Entity, PrimaryColumn } from 'typeorm';

/** What one person was told on one morning. */
@Entity('morning_summary')
export class MorningSummary {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') personId: string;
  /** The studio's local day. */
  @Column('text') day: string;
  /** Parts with their lines; never a client. Kept, so that it reads the same each time it is sent. */
  @Column('simple-json') content: unknown;
  @Column('text') createdAt: string;
}
