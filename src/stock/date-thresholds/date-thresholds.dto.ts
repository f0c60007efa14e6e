import { IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';

export class SetDateThresholdDto extends WriteDto {
  /** Sealed stock is near its use-by when this many days or fewer are left; left out or null: as the studio says. */
  @IsOptional() @IsInt() @Min(0) @Max(730) useByNearDays?: number | null;
  /** The same for what is open. */
  @IsOptional() @IsInt() @Min(0) @Max(365) openedLifeEndingDays?: number | null;
  /** The version this change was made from; left out when none is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}

export class RemoveDateThresholdDto extends WriteDto {
  /** The version that is removed. */
  @Version() version: number;
}
