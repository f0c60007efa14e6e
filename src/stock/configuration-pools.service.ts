import { Injectable } from '@nestjs/common';
import type { NeedleGrouping, NeedleTaper } from '../catalogue/cartridge-notation.js';
import { type ConfigurationPool, configurationPools } from '../catalogue/configuration-pool.js';
import type { Read } from './container-facts.service.js';

interface CartridgeRow {
  id: string;
  points: number | null;
  grouping: NeedleGrouping | null;
  diameter: number | null;
  taper: NeedleTaper | null;
  machine_fit: string | null;
}

/** Which cartridges of a chain stand for each other. */
@Injectable()
export class ConfigurationPools {
  async load(read: Read, chainId: string): Promise<ConfigurationPool[]> {
    const cartridges = await read<CartridgeRow>(
      `SELECT id, points, "grouping", diameter_hundredths_millimetre AS diameter, taper, machine_fit
       FROM product WHERE chain_id = $1 AND kind = 'cartridge' ORDER BY id`,
      [chainId],
    );
    const declared = await read<{ product_id: string; other_product_id: string }>(
      `SELECT product_id, other_product_id FROM configuration_equivalence
       WHERE chain_id = $1 AND withdrawn_at IS NULL`,
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
