import { Temporal } from 'temporal-polyfill';
import { ConfigurationPools } from '../../catalogue/configuration-pools.service.js';
import { roleMay, roles } from '../../identity/permissions.js';
import type { Read } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { owedTouchUps } from '../../sessions/owed-touch-ups.query.js';
import { ContainerFacts } from '../../stock/container-facts.service.js';
import { HoldsInForce } from '../../stock/holds-in-force.service.js';
import { LotFactsReader } from '../../stock/lot-matching/lot-facts.service.js';
import type { LotScope } from '../../stock/lot-matching/lot-scope.js';
import type { DemandFacts } from '../demand/demand-facts.js';
import { studioDemand } from '../demand/studio-demand.js';
import { inSuccession } from '../demand/succession.js';
import { GRACE_DAYS } from '../demand/touch-ups-owed.js';
import { type DaysDistribution, NEVER, type OnTheWay } from '../projection/item-facts.js';
import {
  type EffectiveSettings,
  effectiveItemSettings,
  effectiveSettings,
} from '../settings/effective-settings.js';
import { planningAssumptions } from '../settings/planning-assumptions.js';
import { artistPlannings, itemPlannings, planningSettings } from '../settings/planning-settings.query.js';
import type { OfferFacts, SupplierFacts, SupplyFacts } from '../supply/supply-facts.js';
import { loadSupplyFacts } from '../supply/supply-facts.query.js';
import { type CaughtOnArrival, caughtOnArrival } from './caught-on-arrival.js';
import { HORIZON_DAYS, LONGEST_DAYS } from './item-horizon.js';
import type { PlanItemFacts, PlanOffer } from './item-line.js';
import { itemStock, openedLifeDays, type StockCounts } from './item-stock.js';
import { dayNumber, localDayNumbers } from './local-day-numbers.js';
import { arrivalOfOrder } from './on-the-way.js';
import {
  blendedRows,
  courseRows,
  draftedRows,
  firstReceiptRows,
  kitListRows,
  linesPerDeliveryRows,
  lotCostRows,
  type OrderedRow,
  orderedRows,
  ownerRows,
  procedureRows,
  productRows,
  refusalRows,
  sessionRows,
  sessionWasteRows,
  standingScopes,
  studioRow,
  unknownDeliveryRows,
  useRows,
} from './plan-rows.query.js';
import type { PlanTask } from './plan-task.interface.js';
import { itemName, type PlannedItem, plannedItems } from './planned-items.js';
import type { WhatIfView } from './plans.views.js';
import { type RecordedSession, recordDemand, sessionsLeftOut } from './record-demand.js';
import { saidDay } from './said-day.js';
import { supposedBookings, supposedLeadTime, supposedPrices } from './supposed.js';

/** What happened longer ago says nothing of what is to come. */
const yearsOfHistory = 3;
/** Of a supplier of which no delivery was seen. */
const assumedLinesPerDelivery = 3;
const treatingRoles = roles.filter((role) => roleMay(role, 'work the tray'));

export interface StatedAssumption {
  code: string;
  figures: Record<string, unknown>;
}

/** What is known of an item beside what it is computed from. */
export interface ItemAbout {
  item: PlannedItem;
  counts: StockCounts;
  onTheWayUnits: number;
  assumptions: StatedAssumption[];
  offers: ReadonlyMap<string, OfferFacts>;
}

/** All that a plan is made of, from one moment. */
export interface PlanFacts {
  currency: string;
  demand: DemandFacts;
  items: PlanItemFacts[];
  /** Replaced by others and gone: nothing of them is planned, but what they were needed for is. */
  goneItems: PlanItemFacts[];
  /** By `itemName`. */
  about: ReadonlyMap<string, ItemAbout>;
  suppliers: ReadonlyMap<string, SupplierFacts>;
  settings: EffectiveSettings;
  /** Of the studio as a whole, beside its settings. */
  assumptions: StatedAssumption[];
  heldContainers: number;
  itemsLeftOut: number;
  bookingsPerMille: number;
}

const asItIs: WhatIfView = {
  itemKind: null,
  itemKey: null,
  serviceTargetPerMille: null,
  leadTimePerMille: null,
  leadTimeExtraDays: null,
  pricePerMille: null,
  bookingsPerMille: null,
  extraSessions: [],
};

/** Reads what a plan is made of: the same few queries however many sessions and items there are. */
export async function loadPlanFacts(read: Read, task: PlanTask): Promise<PlanFacts> {
  const { studioId, chainId, timeZone } = task.studio;
  const { plannedOn } = task.plan;
  const whatIf = (task.plan.whatIf ?? asItIs) as WhatIfView;
  const today = Temporal.PlainDate.from(plannedOn);
  const since = `${today.subtract({ years: yearsOfHistory }).toString()}T00:00:00.000Z`;
  const dayOf = localDayNumbers(timeZone, plannedOn);

  const studio = await studioRow(read, studioId);
  const products = await productRows(read, chainId);
  const pools = await new ConfigurationPools().load(read, chainId);
  const supply = await loadSupplyFacts(read, task.studio, task.now);
  const { settings: ownSettings } = await planningSettings(read, studioId);
  const settings = effectiveSettings(ownSettings);
  const itemSettings = await itemPlannings(read, studioId);
  const artists = await artistPlannings(read, studioId, treatingRoles);
  const containers = await new ContainerFacts(new HoldsInForce()).load(read, studioId, { all: true });
  const costs = new Map(
    (await lotCostRows(read, studioId, studio.currency)).map((row) => [row.lotId, row.unitCostMinor]),
  );
  const lastPrices = new Map(supply.lastPrices.map((price) => [price.productId, price.unitCostMinor]));
  const firstReceipts = new Map(
    (await firstReceiptRows(read, studioId)).map((row) => [row.productId, dayOf(row.receivedAt)]),
  );
  const ordered = await orderedRows(read, studioId);
  const drafted = await draftedRows(read, studioId);
  const scopes = await standingScopes(read, studioId);
  const lastDayOfOwner = new Map(
    (await ownerRows(read, studioId)).flatMap(({ personId, hasLeft, lastDay }) => {
      if (hasLeft === 1) return [[personId, -1] as const];
      return lastDay === null ? [] : [[personId, dayNumber(lastDay, plannedOn)] as const];
    }),
  );
  const unknownDeliveries = await unknownDeliveryRows(read, studioId);
  const linesPerDelivery = new Map(
    (await linesPerDeliveryRows(read, studioId)).map((row) => [row.supplierId, row.lines / row.deliveries]),
  );
  const sessions = await sessionRows(read, studioId, since);
  const uses = [
    ...(await useRows(read, studioId, since)),
    ...(await sessionWasteRows(read, studioId, since)).filter(
      ({ pieces, microlitres }) => pieces > 0 || microlitres > 0,
    ),
  ];
  const blended = await blendedRows(read, studioId, since);
  const refusals = await refusalRows(read, studioId, since);
  const kitLists = await kitListRows(read, studioId);
  const procedures = await procedureRows(read, studioId);
  const courses = await courseRows(read, studioId, plannedOn);
  // Clients come so long after the window has closed: until then a touch-up is still owed.
  const owedFrom = today.subtract({ days: GRACE_DAYS }).toString();
  const owed = await owedTouchUps(read, { studioId, timeZone, from: owedFrom });

  const archived = new Set(products.filter((product) => product.archived).map(({ productId }) => productId));
  const here = new Set(containers.map(({ productId }) => productId));
  const isAlive = (productId: string) => !archived.has(productId) || here.has(productId);
  const concerned = new Set<string>(
    [
      ...here,
      ...uses.map(({ productId }) => productId),
      ...blended.map(({ productId }) => productId),
      ...refusals.map(({ productId }) => productId),
      ...supply.offers.map(({ productId }) => productId),
      ...supply.unusableOffers.map(({ productId }) => productId),
      ...ordered.map(({ productId }) => productId),
      ...kitLists.flatMap(({ items }) => items.flatMap(({ productId }) => productId ?? [])),
      ...itemSettings.map(({ itemKey }) => itemKey),
    ].filter(isAlive),
  );
  // What takes the place of another inherits its history, also when nothing of it is left.
  for (const { replacesProductId } of itemSettings) concerned.add(replacesProductId ?? '');
  for (const { items } of kitLists) for (const { configuration } of items) concerned.add(configuration ?? '');
  const { items: planned, leftOut } = plannedItems(products, pools, concerned);
  const ofProduct = new Map(
    planned.flatMap((item) =>
      item.products.map(({ productId }) => [productId, { name: itemName(item), unit: item.unit }] as const),
    ),
  );
  const ofConfiguration = new Map(
    pools.flatMap(({ poolKeys, productIds }) => {
      const name = productIds.map((id) => ofProduct.get(id)?.name).find((each) => each !== undefined);
      return name === undefined ? [] : poolKeys.map((key) => [key, name] as const);
    }),
  );

  const recorded = sessions.map(
    (row): RecordedSession => ({
      ...row,
      bookedOn: bookedOn(row, dayOf),
      plannedOn: row.plannedStart === null ? null : dayOf(row.plannedStart),
      completedOn: row.completedAt === null ? null : dayOf(row.completedAt),
      calledOffOn: row.cancelledAt === null ? null : dayOf(row.cancelledAt),
    }),
  );
  const demand = recordDemand(
    {
      weekday: today.dayOfWeek,
      days: LONGEST_DAYS,
      sessions: recorded,
      uses,
      refusals: refusals.map((row) => ({ ...row, day: dayOf(row.occurredAt) })),
      kitLists,
      courses: courses.map(({ procedureId, heldOn, trainees }) => ({
        procedureId,
        day: dayNumber(heldOn, plannedOn),
        trainees,
      })),
      owed: owed.map(({ sessionId, followedOn }) => ({
        sessionId,
        followedOn: followedOn === null ? null : dayNumber(followedOn, plannedOn),
      })),
      touchUpDays: new Map(procedures.map(({ id, fromDays, toDays }) => [id, { fromDays, toDays }])),
      lastDays: new Map(
        artists.flatMap(({ personId, leavesOn, worksUntil }) => {
          const last = leavesOn ?? worksUntil;
          return last === null ? [] : [[personId, dayNumber(last, plannedOn)] as const];
        }),
      ),
      returnPerMille: settings.returnPerMille.assumed ? null : settings.returnPerMille.value,
    },
    { ofProduct, ofConfiguration },
  );
  const supposed = {
    ...demand,
    bookings: supposedBookings(
      demand.bookings,
      whatIf.extraSessions.map(({ procedureId, on, sessions: count }) => ({
        procedureId,
        day: dayNumber(on, plannedOn),
        sessions: count,
      })),
      usualArtist(demand),
    ),
  };

  const suppliers = new Map(supply.suppliers.map((supplier) => [supplier.supplierId, supplier]));
  // A configuration may be named by any of its keys, and a cartridge of one by itself.
  const nameOf = (kind: string | null, key: string) =>
    kind === 'configuration' ? ofConfiguration.get(key) : ofProduct.get(key)?.name;
  const wanted = whatIf.itemKey === null ? undefined : nameOf(whatIf.itemKind, whatIf.itemKey);
  const settingsOf = new Map(itemSettings.map((row) => [nameOf(row.itemKind, row.itemKey) ?? '', row]));
  const replacedBy = new Map(
    itemSettings.flatMap(({ itemKey, replacesProductId }) =>
      replacesProductId === null ? [] : [[replacesProductId, itemKey] as const],
    ),
  );
  // What of one item depends on the stock of another, if one takes the place of the other.
  const linked = new Set(
    itemSettings.flatMap(({ itemKind, itemKey, replacesProductId }) =>
      replacesProductId === null
        ? []
        : [nameOf(itemKind, itemKey) ?? '', ofProduct.get(replacesProductId)?.name ?? ''],
    ),
  );
  const isAsked = (name: string) => whatIf.itemKey === null || name === wanted;
  const caughtOf = await caughtProducts(read, chainId, scopes, planned);
  const about = new Map<string, ItemAbout>();
  const items: PlanItemFacts[] = [];
  let heldContainers = 0;
  const containersOf = grouped(containers, ({ productId }) => productId);
  const offersOf = grouped(supply.offers, ({ productId }) => productId);
  const unusableOf = grouped(supply.unusableOffers, ({ productId }) => productId);
  const orderedOf = grouped(ordered, ({ productId }) => productId);
  const draftedOf = grouped(drafted, ({ productId }) => productId);
  const blendedOf = grouped(blended, ({ productId }) => productId);

  for (const item of planned) {
    const { kind, key, unit } = item;
    const name = itemName(item);
    if (!isAsked(name) && !linked.has(name)) continue;
    const assumptions: StatedAssumption[] = [];
    const ids = item.products.map(({ productId }) => productId);
    const own = ids.flatMap((id) => containersOf.get(id) ?? []);
    const { batches, counts, owned } = itemStock(
      own.map((container) => ({
        ...container,
        unitCostMinor: costs.get(container.lotId) ?? lastPrices.get(container.productId) ?? null,
      })),
      unit,
      { day: plannedOn, timeZone, assumedOpenedLife: studio.assumedOpenedLife, lastDayOfOwner },
    );
    if (isAsked(name)) heldContainers += counts.heldContainers;
    for (const { code, pieces } of [
      { code: 'belongs to single artists', pieces: owned.pieces },
      { code: 'goes with its owner', pieces: owned.leavingPieces },
      { code: 'owner has left', pieces: owned.leftPieces },
    ]) {
      if (pieces > 0) assumptions.push({ code, figures: { pieces } });
    }
    assumptions.push(...assumptionsOfCaught(item, caughtOf));
    const usable = ids.filter((id) => caughtOf.get(id)?.lots !== 'every');
    const offers = usable.flatMap((id) => offersOf.get(id) ?? []);
    for (const { supplierId, reason } of ids.flatMap((id) => unusableOf.get(id) ?? [])) {
      const supplier = suppliers.get(supplierId)?.name ?? supplierId;
      assumptions.push({ code: `offer left out, ${reason}`, figures: { supplier } });
    }
    for (const row of ids.flatMap((id) => draftedOf.get(id) ?? [])) {
      const { orderNumber: order, orderedPieces: pieces } = row;
      assumptions.push({ code: 'drafted already', figures: { order, pieces } });
    }
    const onTheWay = usable
      .flatMap((id) => orderedOf.get(id) ?? [])
      .flatMap((row) => comingOf(row, item, supply, suppliers, dayOf, plannedOn, assumptions));
    const [product] = item.products;
    const opened = product?.openedLife ?? studio.assumedOpenedLife;
    if (unit === 'microlitres' && opened === null)
      assumptions.push({ code: 'opened life unlimited', figures: {} });
    const set = settingsOf.get(name) ?? null;
    const effective = effectiveItemSettings(settings, set);
    const successor = kind === 'product' ? replacedBy.get(key) : undefined;
    if (successor !== undefined) {
      assumptions.push({ code: 'replaced by another', figures: { productId: successor } });
    }
    for (const offer of offers) assumptions.push(...assumptionsOfOffer(offer, suppliers));
    items.push({
      kind,
      key,
      unit,
      demand: {
        item: name,
        unitsOfKitQuantity: unit === 'pieces' ? 1 : null,
        availableFrom: firstDayOf(ids, firstReceipts),
        replaces: set?.replacesProductId ? (ofProduct.get(set.replacesProductId)?.name ?? null) : null,
        otherUses: ids
          .flatMap((id) => blendedOf.get(id) ?? [])
          .map(({ occurredAt, microlitres }) => ({ day: dayOf(occurredAt), amount: microlitres }))
          .filter(({ day }) => day < 0),
      },
      stock: {
        batches,
        onTheWay,
        openedLifeDays: unit === 'pieces' ? NEVER : openedLifeDays(opened, plannedOn, timeZone),
      },
      onHoldUnits: counts.heldUnits,
      offers: offers.flatMap((offer): PlanOffer[] =>
        planOffer(offer, item, suppliers, linesPerDelivery, whatIf),
      ),
      settings: {
        serviceTargetPerMille: whatIf.serviceTargetPerMille ?? effective.serviceTargetPerMille.value,
        shortageCostMinor: whatIf.serviceTargetPerMille === null ? effective.shortageCostMinor : null,
        orderCostMinor: settings.orderCostMinor.value,
        holdingPerYearPerMille: settings.holdingPerYearPerMille.value,
        rangeChoice: effective.rangeChoice ?? (successor === undefined ? null : 'let run out'),
      },
    });
    about.set(name, {
      item,
      counts,
      onTheWayUnits: onTheWay.reduce((sum, each) => sum + each.containers * each.unitsEach, 0),
      assumptions: distinct(assumptions),
      offers: new Map(offers.map((offer) => [offer.offerId, offer])),
    });
  }
  const isGone = ({ kind, key }: PlanItemFacts) => kind === 'product' && replacedBy.has(key) && !isAlive(key);
  const succeeding = linked.size === 0 ? items : inSuccession(studioDemand(supposed), items, HORIZON_DAYS);
  return {
    currency: studio.currency,
    demand: supposed,
    items: succeeding.filter((item) => isAsked(itemName(item)) && !isGone(item)),
    goneItems: succeeding.filter(isGone),
    about,
    suppliers,
    settings,
    assumptions: [
      ...unknownDeliveries.map((figures) => ({ code: 'content of a delivery unknown', figures })),
      ...sessionsLeftOut(recorded).map(({ code, sessions }) => ({ code, figures: { sessions } })),
    ],
    heldContainers,
    itemsLeftOut: leftOut + items.filter(isGone).length,
    bookingsPerMille: whatIf.bookingsPerMille ?? 1_000,
  };
}

/** When a session was booked; null: nobody knows. */
function bookedOn(
  row: {
    bookedAt: string | null;
    plannedStart: string | null;
    plannedAt: string;
    completedAt: string | null;
    recordedFrom: string;
  },
  dayOf: (instant: string) => number,
): number | null {
  if (row.bookedAt !== null) return dayOf(row.bookedAt);
  // Written down afterwards, it says nothing of when it was booked.
  if (row.recordedFrom !== 'tray') return null;
  if (row.plannedStart === null) return row.completedAt === null ? null : dayOf(row.completedAt);
  return dayOf(row.plannedAt);
}

function firstDayOf(productIds: readonly string[], receipts: ReadonlyMap<string, number>): number | null {
  const days = productIds.flatMap((id) => receipts.get(id) ?? []);
  return days.length === 0 ? null : Math.min(...days);
}

/** Who does most of a procedure; nobody: nobody did it yet. */
function usualArtist({ sessions }: DemandFacts): (procedureId: string) => string {
  const counts = new Map<string, Map<string, number>>();
  for (const { procedureId, artistId } of sessions) {
    const ofProcedure = counts.get(procedureId) ?? new Map<string, number>();
    counts.set(procedureId, ofProcedure.set(artistId, (ofProcedure.get(artistId) ?? 0) + 1));
  }
  return (procedureId) =>
    [...(counts.get(procedureId) ?? [])].sort(([, one], [, other]) => other - one)[0]?.[0] ?? '';
}

function planOffer(
  offer: OfferFacts,
  { unit, products }: PlannedItem,
  suppliers: ReadonlyMap<string, SupplierFacts>,
  linesPerDelivery: ReadonlyMap<string, number>,
  whatIf: WhatIfView,
): PlanOffer[] {
  const product = products.find(({ productId }) => productId === offer.productId);
  const unitsEach = unit === 'pieces' ? 1 : (product?.volumeMicrolitres ?? null);
  if (unitsEach === null) return [];
  const { offerId, productId, supplierId, packContainers, containerPieces, minimumPacks } = offer;
  const supplier = suppliers.get(supplierId);
  const deliveryCostMinor = supplier?.deliveryCostMinor ?? planningAssumptions.deliveryCostMinor.value;
  return [
    {
      ...{ offerId, productId, supplierId, minimumPacks, unitsEach },
      packContainers: unit === 'pieces' ? packContainers * containerPieces : packContainers,
      prices: supposedPrices(offer.prices, whatIf.pricePerMille ?? 1_000),
      leadTime: supposedLeadTime(
        offer.leadTime.distribution,
        whatIf.leadTimePerMille ?? 1_000,
        whatIf.leadTimeExtraDays ?? 0,
      ),
      orderWeekdays: supplier?.orderWeekdays ?? [],
      lifeDays: offer.lifeOnArrival.lifeDays ?? NEVER,
      deliveryCostMinor,
      linesPerDelivery: Math.max(1, linesPerDelivery.get(supplierId) ?? assumedLinesPerDelivery),
    },
  ];
}

function comingOf(
  row: OrderedRow,
  { unit, products }: PlannedItem,
  supply: SupplyFacts,
  suppliers: ReadonlyMap<string, SupplierFacts>,
  dayOf: (instant: string) => number,
  plannedOn: string,
  assumptions: StatedAssumption[],
): OnTheWay[] {
  const outstanding = row.orderedPieces - row.receivedPieces;
  const product = products.find(({ productId }) => productId === row.productId);
  const unitsEach = unit === 'pieces' ? 1 : (product?.volumeMicrolitres ?? null);
  if (outstanding <= 0 || unitsEach === null) return [];
  const ofOrder = { order: row.orderNumber, pieces: outstanding };
  const { since, saidOn, arrived } = placedOrder(row, supply, suppliers, dayOf, plannedOn);
  if (row.sentAt === null) assumptions.push({ code: 'approved order counted on', figures: ofOrder });
  const { arrival, overdue } = arrivalOfOrder({ since, saidOn }, arrived);
  if (arrival === null) {
    assumptions.push({ code: 'overdue order left out', figures: ofOrder });
    return [];
  }
  if (overdue) {
    assumptions.push({ code: 'overdue order counted on', figures: { units: outstanding * unitsEach } });
  }
  const life = supply.lives.find(({ productId }) => productId === row.productId)?.lifeOnArrival.lifeDays;
  return [{ containers: outstanding, unitsEach, arrival, lifeDays: life ?? NEVER }];
}

/** When an order was placed and, where a person wrote it, when it comes. */
function placedOrder(
  row: OrderedRow,
  { offers }: SupplyFacts,
  suppliers: ReadonlyMap<string, SupplierFacts>,
  dayOf: (instant: string) => number,
  plannedOn: string,
): { since: number; saidOn: number | null; arrived: DaysDistribution } {
  const ofSupplier = offers.filter(({ supplierId }) => supplierId === row.supplierId);
  const offer =
    ofSupplier.find(({ offerId }) => offerId === row.offerId) ??
    ofSupplier.find(({ productId }) => productId === row.productId);
  const ofAll = suppliers.get(row.supplierId)?.leadTime;
  const known = offer?.leadTime ?? ofAll;
  const assumed = { days: [planningAssumptions.leadTimeDays.value], weights: [1] };
  const { distribution: leadTime, arrived } = known ?? { distribution: assumed, arrived: assumed };
  const sentOn = row.sentAt === null ? 0 : Math.min(0, dayOf(row.sentAt));
  const arrivedOn = row.lastArrivedAt === null ? null : Math.min(0, dayOf(row.lastArrivedAt));
  const since = Math.max(sentOn, arrivedOn ?? sentOn);
  const numberOf = (day: string | null) => (day === null ? null : dayNumber(day, plannedOn));
  const possible = [leadTime, ...ofSupplier.map((each) => each.leadTime.distribution)];
  if (ofAll) possible.push(ofAll.distribution);
  const day = { ...row, expectedOn: numberOf(row.expectedOn), saidInMail: numberOf(row.saidInMail) };
  return { since, saidOn: saidDay(day, [sentOn, since], possible), arrived };
}

/** By product, where anything of it will be caught. */
async function caughtProducts(
  read: Read,
  chainId: string,
  scopes: readonly LotScope[],
  planned: readonly PlannedItem[],
): Promise<Map<string, CaughtOnArrival>> {
  if (scopes.length === 0) return new Map();
  const ids = planned.flatMap(({ products }) => products.map(({ productId }) => productId));
  const products = await new LotFactsReader().products(read, chainId, ids);
  return new Map([...products].map(([id, product]) => [id, caughtOnArrival(scopes, product)]));
}

function assumptionsOfCaught(
  { products }: PlannedItem,
  caughtOf: ReadonlyMap<string, CaughtOnArrival>,
): StatedAssumption[] {
  return products.flatMap(({ productId, productName, shade }): StatedAssumption[] => {
    const caught = caughtOf.get(productId);
    const product = shade === null ? productName : `${productName} ${shade}`;
    if (caught?.lots === 'every') return [{ code: 'every lot is caught on arrival', figures: { product } }];
    if (caught?.lots !== 'some') return [];
    return [{ code: 'some lots are caught on arrival', figures: { product, lots: caught.named.join(', ') } }];
  });
}

function assumptionsOfOffer(
  { leadTime, lifeOnArrival, supplierId }: OfferFacts,
  suppliers: ReadonlyMap<string, SupplierFacts>,
): StatedAssumption[] {
  const supplier = suppliers.get(supplierId)?.name ?? supplierId;
  const assumptions: StatedAssumption[] = [];
  if (leadTime.basis === 'assumed') {
    assumptions.push({ code: 'lead time assumed', figures: { supplier, days: leadTime.medianDays } });
  }
  if (lifeOnArrival.basis === 'assumed') {
    assumptions.push({
      code: 'life on arrival assumed',
      figures: { supplier, days: lifeOnArrival.lifeDays },
    });
  }
  if (suppliers.get(supplierId)?.otherCurrency === true) {
    assumptions.push({ code: 'terms in another currency left out', figures: { supplier } });
  }
  if (suppliers.get(supplierId)?.deliveryCostMinor === null) {
    const costMinor = planningAssumptions.deliveryCostMinor.value;
    assumptions.push({ code: 'delivery cost assumed', figures: { supplier, costMinor } });
  }
  return assumptions;
}

function distinct(assumptions: readonly StatedAssumption[]): StatedAssumption[] {
  return [...new Map(assumptions.map((each) => [JSON.stringify(each), each])).values()];
}
