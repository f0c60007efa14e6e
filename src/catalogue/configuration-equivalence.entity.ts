import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A person's word that two cartridge products stand for each other. */
@Entity('configuration_equivalence')
export class ConfigurationEquivalence {
  @PrimaryColumn('text') chainId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') productId: string;
  @Column('text') otherProductId: string;
  @Column('text') reason: string;
  @Column('text') declaredInStudioId: string;
  @Column('text', { nullable: true }) declaredBy: string | null;
  @Column('text') declaredAt: string;
  @Column('text', { nullable: true }) withdrawnAt: string | null;
}
