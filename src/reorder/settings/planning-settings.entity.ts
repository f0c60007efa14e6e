import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { RangeChoice } from '../decision/range-choice.js';
import type { ItemKind } from '../item.js';

/** How a studio plans; what is null is assumed, and the plan says so. */
@Entity('planning_settings')
export class PlanningSettings {
  @PrimaryColumn('text') studioId: string;
  /** Share of the need that should be met. */
  @Column('integer', { nullable: true }) serviceTargetPerMille: number | null;
  /** What placing and putting away one order costs, without delivery. */
  @Column('integer', { nullable: true }) orderCostMinor: number | null;
  /** Cost of holding stock for a year, of its price. */
  @Column('integer', { nullable: true }) holdingPerYearPerMille: number | null;
  /** Clients who come back for their touch-up, until it is learnt. */
  @Column('integer', { nullable: true }) returnPerMille: number | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}

/** How one item is planned, where it differs. */
@Entity('item_planning')
export class ItemPlanning {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') itemKind: ItemKind;
  @PrimaryColumn('text') itemKey: string;
  @Column('integer', { nullable: true }) serviceTargetPerMille: number | null;
  /** Cost of one unmet need (a session that could not have it), set by hand instead of the target. */
  @Column('integer', { nullable: true }) shortageCostMinor: number | null;
  @Column('text', { nullable: true }) rangeChoice: RangeChoice | null;
  /** The product that this one takes the place of: its history counts. */
  @Column('text', { nullable: true }) replacesProductId: string | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}

/** What planning knows of an artist. */
@Entity('artist_planning')
export class ArtistPlanning {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') personId: string;
  /** The last day here; demand of this artist ends with it. */
  @Column('text', { nullable: true }) leavesOn: string | null;
  @Column('integer') version: number;
  @Column('text') updatedAt: string;
}
