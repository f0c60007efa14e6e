import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { NeedleGrouping, NeedleTaper } from './cartridge-notation.js';
import type { Membrane, PigmentRole, ProductKind, StockForm } from './vocabulary.js';

/** A product of the chain's register. */
@Entity('product')
export class Product {
  @PrimaryColumn('text') chainId: string;
  @PrimaryColumn('text') id: string;
  @Column('text') makerId: string;
  @Column('text') kind: ProductKind;
  @Column('text') name: string;
  /** Fixed when the product is made: lots already in stock keep their form. */
  @Column('text') stockForm: StockForm;

  @Column('text', { nullable: true }) shade: string | null;
  @Column('text', { nullable: true }) pigmentRole: PigmentRole | null;
  /** Labelled volume of one container. */
  @Column('integer', { nullable: true }) volumeMicrolitres: number | null;
  /** Period after opening on the label, ISO 8601 (`P12M`); null when the label gives none. */
  @Column('text', { nullable: true }) openedLife: string | null;
  /** Size of a drop, where it is known; null: an assumption is used. */
  @Column('integer', { nullable: true }) dropMicrolitres: number | null;
  /** Colour Index numbers, such as `77491`. */
  @Column('simple-json') colourIndexNumbers: string[];

  @Column('integer', { nullable: true }) points: number | null;
  @Column('text', { nullable: true }) grouping: NeedleGrouping | null;
  @Column('integer', { nullable: true }) diameterHundredthsMillimetre: number | null;
  @Column('text', { nullable: true }) taper: NeedleTaper | null;
  /** Which machines the module fits, in the maker's words. */
  @Column('text', { nullable: true }) machineFit: string | null;
  @Column('text', { nullable: true }) membrane: Membrane | null;

  @Column('integer') version: number;
  @Column('text') createdAt: string;
  @Column('text', { nullable: true }) archivedAt: string | null;
}
