import { IsBoolean, IsIn, IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { RawText } from '../../platform/raw-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { type ClaimReason, claimReasons, claimStates } from './vocabulary.js';

const mostPieces = 1_000_000;
const mostMinor = 100_000_000;
const longestNote = 2_000;
const listed = ['standing', 'all', ...claimStates] as const;

export class ClaimPageDto extends PageDto {
  /** Which; left out: those that are open or sent. */
  @MayBeLeftOut() @IsIn(listed) state?: (typeof listed)[number];
  /** Of this supplier only. */
  @MayBeLeftOut() @NamedId() supplierId?: string;
}

export class ClaimSuggestionsDto {
  /** Of this delivery only; left out: of the deliveries and orders of the last 90 days. */
  @MayBeLeftOut() @NamedId() deliveryId?: string;
}

export class OpenClaimDto extends WriteDto {
  @NamedId() supplierId: string;
  @IsOptional() @NamedId() orderLineId?: string | null;
  @IsOptional() @NamedId() deliveryLineId?: string | null;
  @IsOptional() @NamedId() lotId?: string | null;
  @IsIn(claimReasons) reason: ClaimReason;
  @IsInt() @Min(0) @Max(mostPieces) pieces: number;
  /** What is asked for, minor units of the studio's currency; null: not said. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) amountMinor?: number | null;
  /** For the supplier; no client is named here. It is kept sealed. */
  @IsOptional() @RawText(longestNote) note?: string | null;
  /** Claim also what is claimed already for the same reason. Left out: that is refused. */
  @MayBeLeftOut() @IsBoolean() again?: boolean;
}

export class ChangeClaimDto extends WriteDto {
  @Version() version: number;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(mostPieces) pieces?: number;
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) amountMinor?: number | null;
  /** Null: none any more. */
  @IsOptional() @RawText(longestNote) note?: string | null;
}

export class ClaimStepDto extends WriteDto {
  @Version() version: number;
}

export class SettleClaimDto extends ClaimStepDto {
  /** What the supplier made good, minor units of the claim's currency; null: goods, or not said. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) settledMinor?: number | null;
}
