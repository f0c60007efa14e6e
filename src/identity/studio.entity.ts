import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One or more studios that share a product register. */
@Entity('chain')
export class Chain {
  @PrimaryColumn('text') id: string;
  @Column('text') name: string;
  @Column('text') createdAt: string;
}

/** A studio and its settings. */
@Entity('studio')
export class Studio {
  @PrimaryColumn('text') id: string;
  @Column('text') chainId: string;
  @Column('text') name: string;
  /** IANA name, such as `Europe/Vienna`. */
  @Column('text') timeZone: string;
  /** ISO 4217 code of unit costs. */
  @Column('text') currency: string;
  /** Local time of the daily sweep, `HH:MM`. */
  @Column('text') morning: string;
  /** A sealed lot that ends within so many days opens an alert. */
  @Column('integer') useByNearDays: number;
  /** An opened container that ends within so many days opens an alert. */
  @Column('integer') openedLifeEndingDays: number;
  /** Opened life taken where the label gives none, such as `P6M`; shown as an assumption. Null: none is taken. */
  @Column('text', { nullable: true }) assumedOpenedLife: string | null;
  @Column('text') houseBlends: 'off' | 'allowed';
  @Column('integer') version: number;
  @Column('text') createdAt: string;
}
