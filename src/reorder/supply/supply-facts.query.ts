import type { Read } from '../../platform/database/database.js';
import { leadTimeOf, type WaitingOrder } from './lead-time.js';
import { lifeOnArrivalOf } from './life-on-arrival.js';
import { type ObservedArrival, observedArrivals } from './observed-arrivals.query.js';
import { orderArrivals } from './order-arrivals.js';
import type { PackPrice } from './pack-price.js';
import type { LastPrice, OfferFacts, ProductLife, SupplierFacts, SupplyFacts } from './supply-facts.js';
import { waitingOrders } from './waiting-orders.query.js';

/** More than a studio may have standing, and more suppliers than any register holds. */
const mostOffers = 5_000;
const mostSuppliers = 2_000;

interface OfferRow {
  offerId: string;
  supplierId: string;
  productId: string;
  orderCode: string | null;
  packContainers: number;
  containerPieces: number;
  minimumPacks: number;
  prices: string;
  currency: string;
  lifeOnArrivalDays: number | null;
  leadTimeDays: number | null;
  archivedAt: string | null;
}

type WaitingOfSupplier = WaitingOrder & { supplierId: string };

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
  const waiting = await waitingOrders(read, studio, now);
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
  return supplyFacts(currency, suppliers, offers, arrivals, waiting);
}

function supplyFacts(
  currency: string,
  suppliers: readonly SupplierRow[],
  offers: readonly OfferRow[],
  arrivals: readonly ObservedArrival[],
  waiting: readonly WaitingOfSupplier[],
): SupplyFacts {
  const quoted = new Map(
    suppliers.map(({ supplierId, quotedLeadTimeDays }) => [supplierId, quotedLeadTimeDays]),
  );
  const ofSupplier = groupedBy(arrivals, ({ supplierId }) => supplierId);
  const ofProduct = groupedBy(arrivals, ({ productId }) => productId);
  const waitingOf = groupedBy(waiting, ({ supplierId }) => supplierId);
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
      facts.offers.push(
        offerFacts(
          row,
          quoted.get(supplierId) ?? null,
          ofSupplier.get(supplierId) ?? [],
          ofProduct.get(productId) ?? [],
          waitingOf.get(supplierId) ?? [],
        ),
      );
    } else facts.unusableOffers.push({ offerId, supplierId, productId, reason });
  }
  const offering = new Set(offers.map(({ supplierId }) => supplierId));
  for (const row of suppliers) {
    const { supplierId } = row;
    if (row.currency === null && !offering.has(supplierId) && !ofSupplier.has(supplierId)) continue;
    facts.suppliers.push(
      supplierFacts(row, currency, ofSupplier.get(supplierId) ?? [], waitingOf.get(supplierId) ?? []),
    );
  }
  return facts;
}

function supplierFacts(
  row: SupplierRow,
  currency: string,
  arrivals: readonly ObservedArrival[],
  waiting: readonly WaitingOfSupplier[],
): SupplierFacts {
  const { supplierId, name, quotedLeadTimeDays, orderWeekdays } = row;
  const otherCurrency = row.currency !== null && row.currency !== currency;
  return {
    supplierId,
    name,
    orderWeekdays: orderWeekdays === null ? [] : (JSON.parse(orderWeekdays) as number[]),
    minimumOrderMinor: otherCurrency ? null : row.minimumOrderMinor,
    deliveryCostMinor: otherCurrency ? null : row.deliveryCostMinor,
    freeDeliveryFromMinor: otherCurrency ? null : row.freeDeliveryFromMinor,
    otherCurrency,
    leadTime: leadTimeOf(orderArrivals(arrivals, supplierId), quotedLeadTimeDays, waiting),
  };
}

/** An offer with a lead time of its own learns it only from orders that brought its product. */
function offerFacts(
  row: OfferRow,
  quotedDays: number | null,
  ofSupplier: readonly ObservedArrival[],
  ofProduct: readonly ObservedArrival[],
  waiting: readonly WaitingOfSupplier[],
): OfferFacts {
  const { offerId, supplierId, productId, orderCode, packContainers, containerPieces, minimumPacks } = row;
  const ownDays = row.leadTimeDays;
  return {
    ...{ offerId, supplierId, productId, orderCode, packContainers, containerPieces, minimumPacks },
    prices: JSON.parse(row.prices) as PackPrice[],
    leadTime:
      ownDays === null
        ? leadTimeOf(orderArrivals(ofSupplier, supplierId), quotedDays, waiting)
        : leadTimeOf(orderArrivals(ofProduct, supplierId), ownDays),
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

function groupedBy<Row>(rows: readonly Row[], keyOf: (row: Row) => string | null): Map<string | null, Row[]> {
  const groups = new Map<string | null, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}
