import type { Read } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { awaitedLines } from './awaited-lines.query.js';
import type { AwaitedLine } from './awaited-orders.js';
import type { LeadTime } from './lead-time.js';
import { leadTimeOfProduct, leadTimeOfSupplier } from './learnt-lead-time.js';
import { lifeOnArrivalOf } from './life-on-arrival.js';
import { type ObservedArrival, observedArrivals } from './observed-arrivals.query.js';
import type { PackPrice } from './pack-price.js';
import type { LastPrice, OfferFacts, ProductLife, SupplierFacts, SupplyFacts } from './supply-facts.js';

/** More than a studio may have standing, and more suppliers than any register holds. */
const mostOffers = 5_000;
const mostSuppliers = 2_000;

interface OfferRow extends Omit<OfferFacts, 'prices' | 'leadTime' | 'lifeOnArrival'> {
  prices: string;
  currency: string;
  lifeOnArrivalDays: number | null;
  leadTimeDays: number | null;
  archivedAt: string | null;
}

interface SupplierRow {
  supplierId: string;
  name: string;
  quotedLeadTimeDays: number | null;
  orderWeekdays: string | null;
  minimumOrderMinor: number | null;
  deliveryCostMinor: number | null;
  freeDeliveryFromMinor: number | null;
  currency: string | null;
}

/**
 * How a studio's goods can be had: the same few queries however many offers, suppliers and deliveries there are.
 *
 * @param now the instant the plan is made at
 */
export async function loadSupplyFacts(
  read: Read,
  studio: { studioId: string; chainId: string; timeZone: string },
  now: string,
): Promise<SupplyFacts> {
  const { studioId } = studio;
  const [{ currency } = { currency: '' }] = await read<{ currency: string }>(
    'SELECT currency FROM studio WHERE id = $1',
    [studioId],
  );
  const arrivals = await observedArrivals(read, studio, now);
  const awaited = await awaitedLines(read, studio, now);
  const offers = await read<OfferRow>(
    `SELECT offer.id AS "offerId", offer.supplier_id AS "supplierId", offer.product_id AS "productId",
       offer.order_code AS "orderCode", offer.pack_containers AS "packContainers",
       offer.container_pieces AS "containerPieces", offer.minimum_packs AS "minimumPacks", offer.prices,
       offer.currency, offer.life_on_arrival_days AS "lifeOnArrivalDays", offer.lead_time_days AS "leadTimeDays",
       product.archived_at AS "archivedAt"
     FROM offer JOIN product ON product.chain_id = offer.chain_id AND product.id = offer.product_id
     WHERE offer.studio_id = $1 AND offer.ended_at IS NULL ORDER BY offer.id LIMIT ${mostOffers}`,
    [studioId],
  );
  const suppliers = await read<SupplierRow>(
    `SELECT supplier.id AS "supplierId", supplier.name, terms.quoted_lead_time_days AS "quotedLeadTimeDays",
       terms.order_weekdays AS "orderWeekdays", terms.minimum_order_minor AS "minimumOrderMinor",
       terms.delivery_cost_minor AS "deliveryCostMinor",
       terms.free_delivery_from_minor AS "freeDeliveryFromMinor", terms.currency
     FROM supplier LEFT JOIN supplier_terms AS terms
       ON terms.studio_id = $1 AND terms.supplier_id = supplier.id
     WHERE supplier.chain_id = $2 ORDER BY supplier.id LIMIT ${mostSuppliers}`,
    [studioId, studio.chainId],
  );
  return supplyFacts(currency, suppliers, offers, arrivals, awaited);
}

function supplyFacts(
  currency: string,
  suppliers: readonly SupplierRow[],
  offers: readonly OfferRow[],
  arrivals: readonly ObservedArrival[],
  awaited: readonly AwaitedLine[],
): SupplyFacts {
  const ofSupplier = grouped(arrivals, ({ supplierId }) => supplierId);
  const ofProduct = grouped(arrivals, ({ productId }) => productId);
  const awaitedOfSupplier = grouped(awaited, ({ supplierId }) => supplierId);
  const awaitedOfProduct = grouped(awaited, ({ productId }) => productId);
  const leadTimes = new Map(
    suppliers.map(({ supplierId, quotedLeadTimeDays }) => {
      const record = {
        arrivals: ofSupplier.get(supplierId) ?? [],
        awaited: awaitedOfSupplier.get(supplierId) ?? [],
      };
      return [supplierId, leadTimeOfSupplier(record, supplierId, quotedLeadTimeDays)];
    }),
  );
  const facts: SupplyFacts = {
    currency,
    suppliers: [],
    offers: [],
    unusableOffers: [],
    lastPrices: lastPrices(ofProduct, currency),
    lives: lives(ofProduct),
  };
  for (const row of offers) {
    const { offerId, supplierId, productId } = row;
    const reason =
      row.archivedAt !== null ? 'product archived' : row.currency !== currency ? 'other currency' : null;
    if (reason === null) {
      const record = {
        arrivals: ofProduct.get(productId) ?? [],
        awaited: awaitedOfProduct.get(productId) ?? [],
      };
      const leadTime =
        row.leadTimeDays === null
          ? leadTimes.get(supplierId)
          : leadTimeOfProduct(record, supplierId, productId, row.leadTimeDays);
      if (leadTime) facts.offers.push(offerFacts(row, leadTime, record.arrivals));
    } else facts.unusableOffers.push({ offerId, supplierId, productId, reason });
  }
  const offering = new Set(offers.map(({ supplierId }) => supplierId));
  for (const row of suppliers) {
    const { supplierId } = row;
    if (row.currency === null && !offering.has(supplierId) && !ofSupplier.has(supplierId)) continue;
    const leadTime = leadTimes.get(supplierId);
    if (leadTime) facts.suppliers.push(supplierFacts(row, currency, leadTime));
  }
  return facts;
}

function supplierFacts(row: SupplierRow, currency: string, leadTime: LeadTime): SupplierFacts {
  const { supplierId, name, orderWeekdays } = row;
  const otherCurrency = row.currency !== null && row.currency !== currency;
  return {
    supplierId,
    name,
    orderWeekdays: orderWeekdays === null ? [] : (JSON.parse(orderWeekdays) as number[]),
    minimumOrderMinor: otherCurrency ? null : row.minimumOrderMinor,
    deliveryCostMinor: otherCurrency ? null : row.deliveryCostMinor,
    freeDeliveryFromMinor: otherCurrency ? null : row.freeDeliveryFromMinor,
    otherCurrency,
    leadTime,
  };
}

function offerFacts(row: OfferRow, leadTime: LeadTime, ofProduct: readonly ObservedArrival[]): OfferFacts {
  const { offerId, supplierId, productId, orderCode, packContainers, containerPieces, minimumPacks } = row;
  return {
    ...{ offerId, supplierId, productId, orderCode, packContainers, containerPieces, minimumPacks },
    prices: JSON.parse(row.prices) as PackPrice[],
    leadTime,
    lifeOnArrival: lifeOnArrivalOf(ofProduct, supplierId, row.lifeOnArrivalDays),
  };
}

/** Prices in another currency than the studio's now are passed over. */
function lastPrices(
  ofProduct: ReadonlyMap<string | null, readonly ObservedArrival[]>,
  currency: string,
): LastPrice[] {
  const prices: LastPrice[] = [];
  for (const lines of ofProduct.values()) {
    // The latest come first.
    for (const { productId, unitCostMinor, arrivedOn: paidOn, supplierId, ...line } of lines) {
      if (unitCostMinor === null || line.currency !== currency) continue;
      prices.push({ productId, unitCostMinor, paidOn, supplierId });
      break;
    }
  }
  return prices.sort((one, other) => (one.productId < other.productId ? -1 : 1));
}

function lives(ofProduct: ReadonlyMap<string | null, readonly ObservedArrival[]>): ProductLife[] {
  return [...ofProduct.entries()]
    .flatMap(([productId, lots]) =>
      productId === null ? [] : [{ productId, lifeOnArrival: lifeOnArrivalOf(lots, null, null) }],
    )
    .sort((one, other) => (one.productId < other.productId ? -1 : 1));
}
