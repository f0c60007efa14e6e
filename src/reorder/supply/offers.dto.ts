import { IsIn, IsInt, IsISO4217CurrencyCode, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { NestedList } from '../../platform/nested.js';
import { PlainText } from '../../platform/plain-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { LONGEST_LEAD_TIME_DAYS } from './lead-time.js';
import { LONGEST_LIFE_DAYS } from './life-on-arrival.js';

const mostCounted = 10_000;
const mostPackPriceMinor = 100_000_000;
const mostPrices = 20;
const states = ['offered', 'ended', 'all'] as const;

export class OfferPageDto extends PageDto {
  @MayBeLeftOut() @NamedId() supplierId?: string;
  @MayBeLeftOut() @NamedId() productId?: string;
  /** Which; left out: those that stand. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}

/** What one pack costs when at least so many are ordered. */
export class PackPriceDto {
  @IsInt() @Min(1) @Max(mostCounted) fromPacks: number;
  /** In whole minor units. */
  @IsInt() @Min(0) @Max(mostPackPriceMinor) packPriceMinor: number;
}

export class AddOfferDto extends WriteDto {
  @NamedId() supplierId: string;
  @NamedId() productId: string;
  /** The supplier's own number of it. */
  @IsOptional() @PlainText(60) orderCode?: string | null;
  /** Bottles or boxes in the smallest pack that is sold. */
  @IsInt() @Min(1) @Max(mostCounted) packContainers: number;
  /** Pieces in each; 1 for a bottle. */
  @IsInt() @Min(1) @Max(mostCounted) containerPieces: number;
  /** The smallest order. */
  @IsInt() @Min(1) @Max(mostCounted) minimumPacks: number;
  /** By rising number of packs; the first from the smallest order on, none above the one before. */
  @NestedList(() => PackPriceDto, mostPrices, 1) prices: PackPriceDto[];
  /** The studio's; left out: just that. */
  @MayBeLeftOut() @IsISO4217CurrencyCode() currency?: string;
  /** Days an unopened container usually still keeps when it arrives; null: it is learnt, or assumed. */
  @IsOptional() @IsInt() @Min(0) @Max(LONGEST_LIFE_DAYS) lifeOnArrivalDays?: number | null;
  /** Where it differs from the supplier's. */
  @IsOptional() @IsInt() @Min(0) @Max(LONGEST_LEAD_TIME_DAYS) leadTimeDays?: number | null;
}

/** What is left out stays as it is. */
export class ChangeOfferDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @IsOptional() @PlainText(60) orderCode?: string | null;
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostCounted) packContainers?: number;
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostCounted) containerPieces?: number;
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostCounted) minimumPacks?: number;
  @MayBeLeftOut() @NestedList(() => PackPriceDto, mostPrices, 1) prices?: PackPriceDto[];
  /** The studio's; left out: just that. */
  @MayBeLeftOut() @IsISO4217CurrencyCode() currency?: string;
  @IsOptional() @IsInt() @Min(0) @Max(LONGEST_LIFE_DAYS) lifeOnArrivalDays?: number | null;
  @IsOptional() @IsInt() @Min(0) @Max(LONGEST_LEAD_TIME_DAYS) leadTimeDays?: number | null;
}

export class EndOfferDto extends WriteDto {
  /** The version that is ended. */
  @Version() version: number;
}
