import type { MigrationInterface, QueryRunner } from 'typeorm';
import { isInstant, neverDeleted, oneOf, run } from './support/dialect.js';

/** The product register, one per chain. */
export class Catalogue1795600000003 implements MigrationInterface {
  async up(runner: QueryRunner): Promise<void> {
    await run(runner, [
      ...['maker', 'supplier'].flatMap((table) => [
        `CREATE TABLE ${table} (
          chain_id TEXT NOT NULL REFERENCES chain (id),
          id TEXT NOT NULL,
          name TEXT NOT NULL,
          version INTEGER NOT NULL,
          created_at TEXT NOT NULL ${isInstant('created_at')},
          PRIMARY KEY (chain_id, id))`,
        `CREATE UNIQUE INDEX ${table}_name_once ON ${table} (chain_id, lower(name))`,
      ]),
      `CREATE TABLE product (
        chain_id TEXT NOT NULL REFERENCES chain (id),
        id TEXT NOT NULL,
        maker_id TEXT NOT NULL,
        kind TEXT NOT NULL ${oneOf('kind', ['pigment', 'cartridge', 'consumable'])},
        name TEXT NOT NULL,
        stock_form TEXT NOT NULL ${oneOf('stock_form', ['container', 'pieces'])},
        shade TEXT,
        pigment_role TEXT ${oneOf('pigment_role', ['colour', 'thinner'])},
        volume_microlitres INTEGER CHECK (volume_microlitres > 0),
        opened_life TEXT,
        drop_microlitres INTEGER CHECK (drop_microlitres > 0),
        colour_index_numbers TEXT NOT NULL,
        points INTEGER CHECK (points > 0),
        "grouping" TEXT,
        diameter_hundredths_millimetre INTEGER CHECK (diameter_hundredths_millimetre > 0),
        taper TEXT,
        machine_fit TEXT,
        membrane TEXT ${oneOf('membrane', ['yes', 'no', 'unknown'])},
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        archived_at TEXT ${isInstant('archived_at')},
        PRIMARY KEY (chain_id, id),
        FOREIGN KEY (chain_id, maker_id) REFERENCES maker (chain_id, id),
        CHECK ((kind = 'pigment') = (pigment_role IS NOT NULL)),
        CHECK ((kind = 'cartridge') = (points IS NOT NULL)),
        CHECK (kind <> 'pigment' OR stock_form = 'container'),
        CHECK (kind <> 'cartridge' OR stock_form = 'pieces'))`,
      `CREATE UNIQUE INDEX product_name_once ON product (chain_id, maker_id, lower(name), lower(coalesce(shade, ''))) WHERE archived_at IS NULL`,
      `CREATE TABLE product_gtin (
        chain_id TEXT NOT NULL,
        gtin TEXT NOT NULL CHECK (length(gtin) = 14),
        product_id TEXT NOT NULL,
        content_count INTEGER NOT NULL CHECK (content_count > 0),
        version INTEGER NOT NULL,
        created_at TEXT NOT NULL ${isInstant('created_at')},
        PRIMARY KEY (chain_id, gtin),
        FOREIGN KEY (chain_id, product_id) REFERENCES product (chain_id, id))`,
      'CREATE INDEX product_gtin_by_product ON product_gtin (chain_id, product_id)',
      `CREATE TABLE configuration_equivalence (
        chain_id TEXT NOT NULL,
        id TEXT NOT NULL,
        product_id TEXT NOT NULL,
        other_product_id TEXT NOT NULL,
        reason TEXT NOT NULL,
        declared_in_studio_id TEXT NOT NULL REFERENCES studio (id),
        declared_by TEXT,
        declared_at TEXT NOT NULL ${isInstant('declared_at')},
        withdrawn_at TEXT ${isInstant('withdrawn_at')},
        PRIMARY KEY (chain_id, id),
        FOREIGN KEY (chain_id, product_id) REFERENCES product (chain_id, id),
        FOREIGN KEY (chain_id, other_product_id) REFERENCES product (chain_id, id),
        CHECK (product_id <> other_product_id))`,
    ]);
    await neverDeleted(runner, ['maker', 'supplier', 'product', 'configuration_equivalence']);
  }

  async down(): Promise<void> {
    throw new Error('The record is never taken back; restore a backup instead.');
  }
}
