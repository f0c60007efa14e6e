import { Injectable } from '@nestjs/common';
import type { Membrane, PigmentRole, ProductKind, StockForm } from '../catalogue/vocabulary.js';
import { placeholders, type Read } from '../platform/database/database.js';
import { type HoldInForce, HoldsInForce } from './holds-in-force.service.js';
import type { CodeState, ContainerForm, ContainerState, UseByPrecision } from './vocabulary.js';

/** All that rules ask about one container: itself, its lot, its product, its book quantity and its open holds. */
export interface ContainerFact {
  containerId: string;
  lotId: string;
  productId: string;
  form: ContainerForm;
  labelCode: string;
  state: ContainerState;
  placeId: string;
  ownerId: string | null;
  openedAt: string | null;
  /** The end of its opened life as the studio judged it that sent it here opened; else null. */
  usableThrough: string | null;
  receivedAt: string;
  version: number;
  pieces: number;
  microlitres: number;
  code: string | null;
  codeState: CodeState;
  useBy: string | null;
  useByPrecision: UseByPrecision;
  kind: ProductKind;
  productName: string;
  shade: string | null;
  makerName: string;
  stockForm: StockForm;
  volumeMicrolitres: number | null;
  openedLife: string | null;
  dropMicrolitres: number | null;
  pigmentRole: PigmentRole | null;
  points: number | null;
  grouping: string | null;
  diameterHundredthsMillimetre: number | null;
  taper: string | null;
  machineFit: string | null;
  membrane: Membrane | null;
  holds: HoldInForce[];
}

/** Which containers: of these ids, lots, products or places, or all; ended ones only when `ended` is set. */
export type ContainerChoice = (
  | { containerIds: readonly string[] }
  | { lotIds: readonly string[] }
  | { productIds: readonly string[] }
  | { placeIds: readonly string[] }
  | { all: true }
) & { ended?: true };

type ContainerRow = Omit<ContainerFact, 'holds'>;

const columns = `
  container.id AS "containerId", container.lot_id AS "lotId", lot.product_id AS "productId", container.form,
  container.label_code AS "labelCode", container.state, container.place_id AS "placeId",
  container.owner_id AS "ownerId", container.opened_at AS "openedAt",
  container.usable_through AS "usableThrough", container.received_at AS "receivedAt",
  container.version, balance.pieces, balance.microlitres, lot.code, lot.code_state AS "codeState",
  lot.use_by AS "useBy", lot.use_by_precision AS "useByPrecision", product.kind, product.name AS "productName",
  product.shade, maker.name AS "makerName", product.stock_form AS "stockForm",
  product.volume_microlitres AS "volumeMicrolitres", product.opened_life AS "openedLife",
  product.drop_microlitres AS "dropMicrolitres", product.pigment_role AS "pigmentRole", product.points,
  product."grouping", product.diameter_hundredths_millimetre AS "diameterHundredthsMillimetre", product.taper,
  product.machine_fit AS "machineFit", product.membrane`;

const tables = `container
  JOIN balance ON balance.studio_id = container.studio_id AND balance.container_id = container.id
  JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
  JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
  JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id`;

/** Which rows of `container` are meant; only its own columns are named, so that it fits every query that has them. */
function condition(choice: ContainerChoice): { where: string; values: readonly string[] } {
  const list = (given: readonly string[], whereIn: (list: string) => string) => {
    const values = [...new Set(given)];
    return { where: `container.studio_id = $1 AND ${whereIn(`IN (${placeholders(values)})`)}`, values };
  };
  if ('containerIds' in choice) return list(choice.containerIds, (ids) => `container.id ${ids}`);
  if ('lotIds' in choice) return list(choice.lotIds, (ids) => `container.lot_id ${ids}`);
  if ('productIds' in choice) {
    // By way of the products' lots, so that the database does not walk every container the studio ever had.
    return list(
      choice.productIds,
      (ids) => `container.lot_id IN (
        SELECT chosen.id FROM lot AS chosen WHERE chosen.studio_id = $1 AND chosen.product_id ${ids})`,
    );
  }
  if ('placeIds' in choice) return list(choice.placeIds, (ids) => `container.place_id ${ids}`);
  return { where: 'container.studio_id = $1', values: [] };
}

/** Loads what rules ask about containers: one look-up for the containers, one for their holds. */
@Injectable()
export class ContainerFacts {
  constructor(private readonly holdsInForce: HoldsInForce) {}

  async load(read: Read, studioId: string, choice: ContainerChoice): Promise<ContainerFact[]> {
    const { where, values } = condition(choice);
    if (values.length === 0 && !('all' in choice)) return [];
    const present = choice.ended ? '' : ` AND container.state NOT IN ('finished', 'discarded')`;
    const parameters = [studioId, ...values];
    const rows = await read<ContainerRow>(
      `SELECT ${columns} FROM ${tables} WHERE ${where}${present}`,
      parameters,
    );
    if (rows.length === 0) return [];
    const holds = await this.holdsInForce.reaching(read, { where: where + present, parameters });
    // Sorted here: asked to sort, SQLite walks the key of all containers to have them in order.
    rows.sort((one, other) => (one.containerId < other.containerId ? -1 : 1));
    return rows.map((row) => ({ ...row, holds: holds.get(row.containerId) ?? [] }));
  }
}
