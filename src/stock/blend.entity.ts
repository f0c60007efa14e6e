import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A house blend: pigments poured together by the studio into a kept container, whose lot has parent lots. */
@Entity('blend')
export class Blend {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') lotId: string;
  @Column('text') containerId: string;
  @Column('integer') microlitres: number;
  @Column('text') occurredAt: string;
  @Column('text') recordedAt: string;
  @Column('text', { nullable: true }) personId: string | null;
  @Column('text') via: string;
}

@Entity('blend_parent')
export class BlendParent {
  @PrimaryColumn('text') studioId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') blendId: string;
  /** The lot of the blend. */
  @Column('text') lotId: string;
  @Column('text') parentLotId: string;
  @Column('text') parentContainerId: string;
  @Column('text') movementId: string;
  @Column('integer') microlitres: number;
  @Column('text') recordedAt: string;
}
