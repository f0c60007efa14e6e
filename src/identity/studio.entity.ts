import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { RetentionChoice } from './retention-presets.js';

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
  /** Whose rule on keeping clients' records binds the studio; null: not chosen yet. */
  @Column('text', { nullable: true }) retentionPreset: RetentionChoice | null;
  /** Years beside or above the preset's. */
  @Column('integer', { nullable: true }) retentionYears: number | null;
  /** The studio's own name for the law, where no preset is taken. */
  @Column('text', { nullable: true }) retentionLaw: string | null;
  @Column('integer') version: number;
  @Column('text') createdAt: string;
  /** 1: whoever signs in at a browser of their own needs a passkey. Null: a password is enough. */
  @Column('integer', { nullable: true }) passkeysRequired: number | null;
  /** How the studio is reached, as a message about a recall says it: telephone, e-mail, address. Null: not said. */
  @Column('text', { nullable: true }) contactPoint: string | null;
}
