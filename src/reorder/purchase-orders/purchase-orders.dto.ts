import {
  ArrayMaxSize,
  ArrayMinSize,
  IsArray,
  IsBoolean,
  IsIn,
  IsInt,
  IsOptional,
  Max,
  Min,
} from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { NestedList } from '../../platform/nested.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { PlainText } from '../../platform/plain-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { type OrderWay, orderWays, purchaseOrderStates } from './order-states.js';
import { type OrderWarningCode, orderWarningCodes } from './order-warnings.js';

/** More lines in one order, packs in a line or pieces in a pack are a slip. */
export const mostOrderLines = 200;
const mostPacks = 10_000;
const mostPieces = 10_000;
const mostMinor = 100_000_000;
const mostLineNumber = 100_000;
const listed = ['open', 'ended', 'all', ...purchaseOrderStates] as const;

export class PurchaseOrderPageDto extends PageDto {
  /** Which; open, as when left out: neither closed nor called off; ended: one of the two. */
  @MayBeLeftOut() @IsIn(listed) state?: (typeof listed)[number];
  /** Of this supplier only. */
  @MayBeLeftOut() @NamedId() supplierId?: string;
}

export class DraftFromPlanDto extends WriteDto {
  @NamedId() planId: string;
  /** Numbers of the plan's lines that are to be ordered; each names an offer and packs. */
  @IsArray()
  @ArrayMinSize(1)
  @ArrayMaxSize(mostOrderLines)
  @IsInt({ each: true })
  @Min(1, { each: true })
  @Max(mostLineNumber, { each: true })
  lineNumbers: number[];
  /** Draft also what stands in an order of this plan already, or in any that is not sent yet. Left out: that is refused. */
  @MayBeLeftOut() @IsBoolean() again?: boolean;
}

/** A product to be ordered: of an offer, or written by hand. */
export class AddedOrderLineDto {
  /** Says the product, the order code, the pack and its price. */
  @MayBeLeftOut() @NamedId() offerId?: string;
  /** Where no offer is named. */
  @MayBeLeftOut() @NamedId() productId?: string;
  /** Where no offer is named: the supplier's own number. */
  @IsOptional() @PlainText(60) orderCode?: string | null;
  @IsInt() @Min(1) @Max(mostPacks) packs: number;
  /** Where no offer is named: containers in a pack; left out: 1. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPieces) packContainers?: number;
  /** Where no offer is named: pieces in each container; left out: 1. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPieces) containerPieces?: number;
  /** Minor units of the studio's currency; left out: the offer's price for so many; null: not known. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) packPriceMinor?: number | null;
}

export class ChangedOrderLineDto {
  /** The line. */
  @NamedId() lineId: string;
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostPacks) packs?: number;
  /** Left out: the offer's price for so many packs, where they change; null: not known. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) packPriceMinor?: number | null;
}

export class DraftOrderDto extends WriteDto {
  @NamedId() supplierId: string;
  @MayBeLeftOut()
  @NestedList(() => AddedOrderLineDto, mostOrderLines)
  lines?: AddedOrderLineDto[];
}

export class ChangeOrderDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  /** What bringing it costs, minor units; null: as the supplier's terms say. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) deliveryCostMinor?: number | null;
  @MayBeLeftOut()
  @NestedList(() => AddedOrderLineDto, mostOrderLines)
  add?: AddedOrderLineDto[];
  @MayBeLeftOut()
  @NestedList(() => ChangedOrderLineDto, mostOrderLines)
  change?: ChangedOrderLineDto[];
  /** Lines that are to be ordered no more. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMaxSize(mostOrderLines)
  @NamedId({ each: true })
  takeOff?: string[];
}

export class ApproveOrderDto extends WriteDto {
  @Version() version: number;
  /** The codes of the warnings that were read; each that stands must be among them. */
  @MayBeLeftOut()
  @IsArray()
  @ArrayMaxSize(orderWarningCodes.length)
  @IsIn(orderWarningCodes, { each: true })
  confirmed?: OrderWarningCode[];
}

export class OrderStepDto extends WriteDto {
  @Version() version: number;
}

export class SendOrderDto extends OrderStepDto {
  /** By mail to the address in the supplier's terms; by hand: somebody sent it, or sends it now, by another way. */
  @IsIn(orderWays) as: OrderWay;
  /** The last day on which it is in time, YYYY-MM-DD; left out: by the supplier's lead time. */
  @IsOptional() @IsPlainDate() expectedOn?: string | null;
}
