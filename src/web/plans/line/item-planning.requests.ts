import type { PlannedItemView } from '../../../reorder/plan/plans.views.js';
import type { ItemPlanningView } from '../../../reorder/settings/planning-settings.views.js';
import type { BodyOf } from '../../service/operations.js';
import { request } from '../../service/request.js';

type NamedItem = Pick<PlannedItemView, 'kind' | 'key'>;
export type ItemPlanningChange = BodyOf<'PUT', '/studios/{studioId}/planning-settings/items'>;

const pageSize = 200;

/** How an item is planned; null: as the studio plans. */
export async function findItemPlanning(
  studioId: string,
  { kind, key }: NamedItem,
): Promise<ItemPlanningView | null> {
  let after: string | undefined;
  do {
    const { items, next }: { items: ItemPlanningView[]; next: string | null } = await request(
      'GET',
      '/studios/{studioId}/planning-settings/items',
      { studioId, limit: pageSize, ...(after !== undefined && { after }) },
    );
    const found = items.find(({ itemKind, itemKey }) => itemKind === kind && itemKey === key);
    if (found) return found;
    after = next ?? undefined;
  } while (after !== undefined);
  return null;
}

export const setItemPlanning = (studioId: string, change: ItemPlanningChange) =>
  request('PUT', '/studios/{studioId}/planning-settings/items', { studioId }, change);

export const removeItemPlanning = (
  studioId: string,
  removed: BodyOf<'DELETE', '/studios/{studioId}/planning-settings/items'>,
) => request('DELETE', '/studios/{studioId}/planning-settings/items', { studioId }, removed);
