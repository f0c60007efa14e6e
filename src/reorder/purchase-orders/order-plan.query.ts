import { placeholders, type Read } from '../../platform/database/database.js';
import type { PlanLineContent } from '../plan/plan-content.interface.js';
import { packPriceMinor } from '../supply/pack-cost.js';
import type { PlannedPack } from './order-warnings.js';
import type { PurchaseOrder } from './purchase-order.entity.js';

/** The plan an order was drafted from. */
export interface PlanOfOrder {
  plannedOn: string;
  /** Whether no later plan was done when the order was drafted. */
  wasLatest: boolean;
  /** The pack of an offer as the plan counted with it, for so many packs; null: nothing is kept of it. */
  packOf: (offerId: string, packs: number) => PlannedPack | null;
}

type KeptLine = Pick<PlanLineContent, 'currency' | 'offers'>;

/** @returns null: the order was drafted from none */
export async function planOfOrder(
  read: Read,
  { studioId, planId, createdAt, currency }: PurchaseOrder,
  offerIds: readonly string[],
): Promise<PlanOfOrder | null> {
  if (planId === null) return null;
  const [plan] = await read<{ plannedOn: string; linesOf: string; later: number }>(
    `SELECT planned_on AS "plannedOn", COALESCE(same_as_id, id) AS "linesOf",
       (SELECT COUNT(*) FROM plan AS later WHERE later.studio_id = plan.studio_id AND later.purpose = 'plan'
         AND later.state = 'done' AND later.asked_at > plan.asked_at AND later.ended_at <= $3) AS later
     FROM plan WHERE studio_id = $1 AND id = $2`,
    [studioId, planId, createdAt],
  );
  if (!plan) return null;
  const rows =
    offerIds.length === 0
      ? []
      : await read<{ content: string }>(
          `SELECT content FROM plan_line
           WHERE studio_id = $1 AND plan_id = $2 AND offer_id IN (${placeholders(offerIds, 3)})`,
          [studioId, plan.linesOf, ...offerIds],
        );
  const kept = rows.map(({ content }) => JSON.parse(content) as Partial<KeptLine>);
  return {
    plannedOn: plan.plannedOn,
    wasLatest: Number(plan.later) === 0,
    packOf: (offerId, packs) => {
      for (const { offers = [], currency: keptCurrency } of kept) {
        const offer = offers.find((one) => one.offerId === offerId);
        if (!offer) continue;
        return {
          // A plan counts cartridges for containers: they are pieces, as bottles are.
          packPieces: offer.packContainers,
          packPriceMinor: keptCurrency === currency ? packPriceMinor(offer.prices, packs) : null,
        };
      }
      return null;
    },
  };
}
