import type { Read } from '../../platform/database/database.js';
import type { RangeChoice } from '../decision/range-choice.js';
import type { ItemKind } from '../item.js';
import type { ItemSettings, StudioSettings } from './effective-settings.js';

/** More items than a studio plans. */
const mostItems = 10_000;
const mostPeople = 500;

export interface ItemPlanningRow extends ItemSettings {
  itemKind: ItemKind;
  itemKey: string;
}

export interface ArtistPlanningRow {
  personId: string;
  /** The last local day here, ISO `YYYY-MM-DD`; null: no end is known. */
  leavesOn: string | null;
  /** The last local day on which they may do anything; null: no end. */
  worksUntil: string | null;
  version: number | null;
}

/** How the studio plans; its settings are null until somebody sets them. */
export async function planningSettings(
  read: Read,
  studioId: string,
): Promise<{ settings: StudioSettings | null; version: number | null; currency: string }> {
  const [row] = await read<StudioSettings & { version: number | null; currency: string }>(
    `SELECT studio.currency, settings.service_target_per_mille AS "serviceTargetPerMille",
       settings.order_cost_minor AS "orderCostMinor", settings.holding_per_year_per_mille AS "holdingPerYearPerMille",
       settings.return_per_mille AS "returnPerMille", settings.version
     FROM studio LEFT JOIN planning_settings AS settings ON settings.studio_id = studio.id WHERE studio.id = $1`,
    [studioId],
  );
  if (!row) throw new Error(`There is no studio ${studioId}.`);
  const { version, currency, ...settings } = row;
  return { settings: version === null ? null : settings, version, currency };
}

/** Every item that is planned otherwise than the studio plans. */
export function itemPlannings(read: Read, studioId: string): Promise<ItemPlanningRow[]> {
  return read<ItemPlanningRow & { rangeChoice: RangeChoice | null }>(
    `SELECT item_kind AS "itemKind", item_key AS "itemKey", service_target_per_mille AS "serviceTargetPerMille",
       shortage_cost_minor AS "shortageCostMinor", range_choice AS "rangeChoice",
       replaces_product_id AS "replacesProductId"
     FROM item_planning WHERE studio_id = $1 ORDER BY item_kind, item_key LIMIT ${mostItems}`,
    [studioId],
  );
}

/**
 * Everybody who works here and may work a tray, and until when.
 *
 * @param roles those who may
 */
export function artistPlannings(
  read: Read,
  studioId: string,
  roles: readonly string[],
): Promise<ArtistPlanningRow[]> {
  const named = roles.map((_, index) => `$${index + 2}`).join(', ');
  return read<ArtistPlanningRow>(
    `SELECT person.id AS "personId", planning.leaves_on AS "leavesOn", person.until AS "worksUntil", planning.version
     FROM person LEFT JOIN artist_planning AS planning
       ON planning.studio_id = person.studio_id AND planning.person_id = person.id
     WHERE person.studio_id = $1 AND person.state = 'active' AND person.role IN (${named})
     ORDER BY person.created_at, person.id LIMIT ${mostPeople}`,
    [studioId, ...roles],
  );
}
