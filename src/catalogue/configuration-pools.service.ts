import { Injectable } from '@nestjs/common';
import type { Read } from '../platform/database/database.js';
import type { NeedleGrouping, NeedleTaper } from './cartridge-notation.js';
import { type ConfigurationPool, configurationPools } from './configuration-pool.js';

/** So many cartridges and declarations of a chain are pooled, those still offered before archived ones. */
const maximumCartridges = 5_000;
export const maximumEquivalences = 5_000;

interface CartridgeRow {
  id: string;
  points: number | null;
  grouping: NeedleGrouping | null;
  diameter: number | null;
  taper: NeedleTaper | null;
  machine_fit: string | null;
}

/** Which cartridges of a chain stand for each other, archived ones too: what is in stock of them is still used. */
@Injectable()
export class ConfigurationPools {
  async load(read: Read, chainId: string): Promise<ConfigurationPool[]> {
    const cartridges = await read<CartridgeRow>(
      `SELECT id, points, "grouping", diameter_hundredths_millimetre AS diameter, taper, machine_fit
       FROM product WHERE chain_id = $1 AND kind = 'cartridge'
       ORDER BY CASE WHEN archived_at IS NULL THEN 0 ELSE 1 END, id LIMIT ${maximumCartridges}`,
      [chainId],
    );
    const declared = await read<{ product_id: string; other_product_id: string }>(
      `SELECT product_id, other_product_id FROM configuration_equivalence
       WHERE chain_id = $1 AND withdrawn_at IS NULL ORDER BY declared_at, id LIMIT ${maximumEquivalences}`,
      [chainId],
    );
    return configurationPools(
      cartridges.map(({ id, diameter, machine_fit, ...facts }) => ({
        productId: id,
        facts: { ...facts, diameterHundredthsMillimetre: diameter, machineFit: machine_fit },
      })),
      declared.map((row) => ({ productId: row.product_id, otherProductId: row.other_product_id })),
    );
  }
}
