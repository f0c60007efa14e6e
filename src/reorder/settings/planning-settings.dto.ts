import { Transform } from 'class-transformer';
import { IsIn, IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { PlainText } from '../../platform/plain-text.js';
import { maximumPageSize, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { type RangeChoice, rangeChoices } from '../decision/range-choice.js';

const itemKinds = ['product', 'configuration'] as const;
const longestItemKey = 300;
const mostMinor = 100_000_000;
/** Holding something for a year does not cost more than ten times its price. */
const mostHoldingPerMille = 10_000;

/** What is left out or null is assumed. */
export class SetPlanningSettingsDto extends WriteDto {
  /** Share of the need that should be met, 0 to 1000 per mille. */
  @IsOptional() @IsInt() @Min(0) @Max(1000) serviceTargetPerMille?: number | null;
  /** What placing and putting away one order costs, without delivery, in minor units. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) orderCostMinor?: number | null;
  /** What holding stock for a year costs, per mille of its price. */
  @IsOptional() @IsInt() @Min(0) @Max(mostHoldingPerMille) holdingPerYearPerMille?: number | null;
  /** Clients who come back for their touch-up, until it is learnt, 0 to 1000 per mille. */
  @IsOptional() @IsInt() @Min(0) @Max(1000) returnPerMille?: number | null;
  /** The version this change was made from; left out when nothing is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}

export class ItemPlanningPageDto {
  /** How many at most, 1 to 200. */
  @IsOptional()
  @Transform(({ value }) => (typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value))
  @IsInt()
  @Min(1)
  @Max(maximumPageSize)
  limit?: number;

  /** The `next` of the page before. */
  @MayBeLeftOut() @PlainText(longestItemKey + 20) after?: string;
}

/** What is left out or null is as the studio plans. */
export class SetItemPlanningDto extends WriteDto {
  @IsIn(itemKinds) itemKind: (typeof itemKinds)[number];
  /** A product id, or a key of a cartridge configuration. */
  @PlainText(longestItemKey) itemKey: string;
  @IsOptional() @IsInt() @Min(0) @Max(1000) serviceTargetPerMille?: number | null;
  /** What one need that is not met costs, such as a session that could not have it, set instead of a target. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) shortageCostMinor?: number | null;
  /** Null: the plan decides. */
  @IsOptional() @IsIn(rangeChoices) rangeChoice?: RangeChoice | null;
  /** Of a product: the one it takes the place of, such as before a new formula; its use counts as this one's. */
  @IsOptional() @NamedId() replacesProductId?: string | null;
  /** The version this change was made from; left out when nothing is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}

export class RemoveItemPlanningDto extends WriteDto {
  @IsIn(itemKinds) itemKind: (typeof itemKinds)[number];
  @PlainText(longestItemKey) itemKey: string;
  /** The version that is removed. */
  @Version() version: number;
}

export class SetArtistPlanningDto extends WriteDto {
  /** The last day here; what this artist needs ends with it. Null: no end is known. */
  @IsOptional() @IsPlainDate() leavesOn?: string | null;
  /** The version this change was made from; left out when nothing is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}
