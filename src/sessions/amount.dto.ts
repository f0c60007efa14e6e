import { IsInt, IsOptional, Max, Min } from 'class-validator';
import { InsteadOfDrops } from '../catalogue/liquid-amount.dto.js';
import { IsInstant } from '../platform/instant.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';

/** More than is dropped of one bottle in one session: anything beyond is a slip. */
export const mostDrops = 500;
export const mostMicrolitres = 50_000;
export const mostPieces = 100;
export const longestReason = 500;

/** How much of a thing was used, why, and for a topical anaesthetic when and by whom. */
export class AmountDto {
  /** Drops outside any mix; left out, and no volume either: the amount is not known. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostDrops) drops?: number;
  /** A volume outside any mix, an estimate. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostMicrolitres) @InsteadOfDrops() microlitres?: number;
  /** When a topical anaesthetic was put on. */
  @MayBeLeftOut() @IsInstant() appliedAt?: string;
  /** When it was taken off. */
  @MayBeLeftOut() @IsInstant() removedAt?: string;
  /** Who put it on. */
  @MayBeLeftOut() @NamedId() appliedBy?: string;
  /** Why, where something was used against a refusal; kept sealed. */
  @IsOptional() @PlainText(longestReason) reason?: string | null;
}
