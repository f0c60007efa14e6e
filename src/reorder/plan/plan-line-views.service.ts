import { Injectable } from '@nestjs/common';
import {
  basketText,
  lineSentence,
  noteText,
  reasonText,
  type Wording,
} from '../decision/explanation-words.js';
import type { ExpectedCost, ItemDecision, Outlook, PlannedOrder } from '../decision/item-decision-result.js';
import { dateOfDay } from '../decision/plan-days.js';
import { daysWithin } from '../supply/lead-time.js';
import { assumptionWords } from './assumption-words.js';
import { followedDecision } from './followed-decision.js';
import type { ShownFan } from './item-line.js';
import type { PlanLine } from './plan.entity.js';
import type { KeptOffer, PlanLineContent } from './plan-content.interface.js';
import type {
  FanView,
  LineCostView,
  LineDemandView,
  LineOutlookView,
  LineSupplyView,
  OwnOrderView,
  PlanLineView,
  PlanReasonView,
} from './plans.views.js';

export type LineColumns = Pick<
  PlanLine,
  'lineNumber' | 'decision' | 'orderOn' | 'offerId' | 'packs' | 'supplierId'
>;

/** Lines as they are shown, from what is kept of them. */
@Injectable()
export class PlanLineViews {
  viewOf(columns: LineColumns, content: PlanLineContent): Omit<PlanLineView, 'level'> {
    const { item, plannedOn, currency, computed, counts, offers, order } = content;
    const { decision } = computed;
    const offer = offers.find(({ offerId }) => offerId === (columns.offerId ?? decision.offers[0]?.offerId));
    const wording: Wording = { unit: item.unit, currency };
    const followed = asFollowed(columns, content);
    const { after } = followed;
    return {
      ...columns,
      item,
      arrivesOn: order?.arrivesOn ?? null,
      arrivesLate: order?.arrivesLate ?? null,
      supplierName: offers.find(({ supplierId }) => supplierId === columns.supplierId)?.supplierName ?? null,
      productId: order?.productId ?? null,
      containers: order?.containers ?? 0,
      orderedUnits: order?.units ?? 0,
      costMinor: order?.costMinor ?? null,
      currency,
      stakeMinor: content.stakeMinor,
      usableUnits: counts.usableUnits,
      onTheWayUnits: content.onTheWayUnits,
      unitsPerWeek: unitsPerWeek(content),
      shortChance: decision.without.shortChance,
      shortOn: decision.without.shortOn,
      shortChanceAfter: after.shortChance,
      expectedWasteMinor: after.expectedWasteMinor,
      coverDays: decision.without.coverDays,
      sentence: lineSentence(followed, wording),
      notes: decision.notes.map(({ code }) => code),
      demand: demandOf(content),
      supply: supplyOf(offer, offers, currency),
      stock: { ...counts, onTheWayUnits: content.onTheWayUnits },
      without: outlookOf(decision.without),
      after: outlookOf(after),
      fanWithout: fanOf(computed.fanWithout, plannedOn),
      fanAfter: fanOf(content.followed ? content.followed.fan : computed.fanAfter, plannedOn),
      byItself: content.followed ? ownOrderOf(decision) : null,
      costChosen: costOf(decision.costs.chosen),
      costOfNothing: costOf(decision.costs.nothing),
      neighbours: decision.costs.neighbours.map(({ cost, ...neighbour }) => ({
        ...neighbour,
        cost: costOf(cost),
        extraMinor: cost.totalMinor - decision.costs.chosen.totalMinor,
      })),
      offers: decision.offers.map((each) => ({
        ...each,
        supplierName: offers.find(({ offerId }) => offerId === each.offerId)?.supplierName ?? '',
      })),
      shortageCost: {
        from: decision.shortage.from,
        minorPerUnit: decision.shortage.minorPerUnit,
        minorPerNeed: decision.shortage.minorPerNeed,
        usualUnitsPerNeed: decision.shortage.usualUnitsPerNeed,
      },
      effort: decision.effort,
      range: decision.range,
      reasons: reasonsAsFollowed(decision, followed, wording),
      remarks: decision.notes.map((note) => {
        const { code, ...figures } = note;
        return { code, figures, message: noteText(note, wording) };
      }),
      assumptions: content.assumptions.map((each) => ({
        ...each,
        message: assumptionWords(each, currency),
        items: null,
      })),
      serviceTargetPerMille: content.serviceTargetPerMille,
      takenOverFromId: content.takenOverFromId,
    };
  }
}

/** The decision with what is ordered in the end. */
function asFollowed(
  { decision, orderOn, offerId, supplierId }: LineColumns,
  { computed, order, followed, plannedOn }: PlanLineContent,
): ItemDecision {
  const own = { ...computed.decision, decision };
  if (order === null || orderOn === null) return own;
  const { productId, packs, containers, units, costMinor: priceMinor } = order;
  const ordered: PlannedOrder = {
    ...{ productId, packs, containers, units, priceMinor },
    offerId: offerId ?? '',
    supplierId: supplierId ?? '',
    packPriceMinor: packs === 0 ? 0 : priceMinor / packs,
    on: orderOn,
    arrival: { likely: order.arrivesOn, late: order.arrivesLate },
  };
  return followedDecision(own, ordered, followed ?? null, plannedOn);
}

function ownOrderOf({ order, after }: ItemDecision): OwnOrderView {
  const { expectedUnmetUnits, expectedWasteUnits } = after;
  return { packs: order?.packs ?? 0, on: order?.on ?? null, expectedUnmetUnits, expectedWasteUnits };
}

/**
 * The reasons, with the order that is followed; where the supplier's basket made it another than the item by itself, this
 * is said before that one is compared with its neighbours.
 */
function reasonsAsFollowed(
  { order: own }: ItemDecision,
  { order, reasons }: ItemDecision,
  wording: Wording,
): PlanReasonView[] {
  const views = reasons.map((reason): PlanReasonView => {
    const { code, ...figures } = reason;
    return { code, figures, message: reasonText(reason, wording) };
  });
  const [packs, on, ownPacks, ownOn] = [
    order?.packs ?? 0,
    order?.on ?? null,
    own?.packs ?? 0,
    own?.on ?? null,
  ];
  if (packs === ownPacks && on === ownOn) return views;
  const compared = views.findIndex(({ code }) => code.startsWith('why not '));
  views.splice(compared < 0 ? views.length : compared, 0, {
    code: 'changed by the basket',
    figures: { ownPacks, ownOn, packs, on },
    message: basketText({ packs: ownPacks, on: ownOn }, { packs, on }),
  });
  return views;
}

function unitsPerWeek({ computed: { demand } }: PlanLineContent): number {
  const { weeks } = demand;
  if (weeks.length === 0) return 0;
  return weeks.reduce((sum, week) => sum + week.known + week.halfKnown + week.unforeseen, 0) / weeks.length;
}

function demandOf(content: PlanLineContent): LineDemandView {
  const { computed, plannedOn, weeksOfHistory } = content;
  const { weeks, class: seriesClass, adi, cv2, methods } = computed.demand;
  const sum = (part: 'known' | 'halfKnown' | 'unforeseen') =>
    weeks.reduce((total, week) => total + week[part], 0);
  return {
    knownUnits: sum('known'),
    halfKnownUnits: sum('halfKnown'),
    unforeseenUnits: sum('unforeseen'),
    unitsPerWeek: unitsPerWeek(content),
    seriesClass,
    averageDemandInterval: adi,
    sizeVariation: cv2,
    methods,
    weeksOfHistory,
    byWeek: weeks.map(({ known, halfKnown, unforeseen }, index) => ({
      from: dateOfDay(plannedOn, 7 * index),
      knownUnits: known,
      halfKnownUnits: halfKnown,
      unforeseenUnits: unforeseen,
    })),
  };
}

function supplyOf(
  offer: KeptOffer | undefined,
  offers: readonly KeptOffer[],
  currency: string,
): LineSupplyView {
  if (offer === undefined) {
    return {
      supplierId: null,
      supplierName: null,
      offerId: null,
      productId: null,
      packContainers: null,
      containerUnits: null,
      minimumPacks: null,
      packPriceMinor: null,
      unitPriceMinor: null,
      currency,
      leadTime: null,
      lifeOnArrivalDays: null,
      otherOffers: 0,
    };
  }
  const { offerId, productId, supplierId, supplierName, packContainers, unitsEach, minimumPacks } = offer;
  const { leadTime, lifeDays, prices } = offer;
  const packPriceMinor = prices[0]?.packPriceMinor ?? null;
  const { days, weights } = leadTime;
  return {
    ...{
      offerId,
      productId,
      supplierId,
      supplierName,
      packContainers,
      minimumPacks,
      packPriceMinor,
      currency,
    },
    containerUnits: unitsEach,
    unitPriceMinor: packPriceMinor === null ? null : packPriceMinor / (packContainers * unitsEach),
    leadTime: {
      days,
      weights,
      meanDays: days.reduce((sum, day, index) => sum + day * (weights[index] ?? 0), 0),
      days95: daysWithin(leadTime, 0.95),
    },
    lifeOnArrivalDays: lifeDays,
    otherOffers: offers.length - 1,
  };
}

function outlookOf(outlook: Outlook): LineOutlookView {
  return { ...outlook };
}

function costOf(cost: ExpectedCost): LineCostView {
  return { ...cost };
}

function fanOf(fan: ShownFan | null, plannedOn: string): FanView | null {
  if (fan === null) return null;
  const { days, ...lines } = fan;
  return { days: days.map((day) => dateOfDay(plannedOn, day)), ...lines };
}
