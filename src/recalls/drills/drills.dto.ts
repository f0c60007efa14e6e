import { Equals, IsBoolean, IsIn, IsInt, Max, Min, ValidateIf } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { IsPlainDate } from '../../platform/plain-date.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { type DrillStep, drillSteps } from './drill-steps.js';

const mostYears = 20;
const mostMonths = 60;

/** `closed` is noted by the closing itself. */
export const notedSteps = drillSteps.filter((step) => step !== 'closed');

export class OpenDrillDto extends WriteDto {
  /** The lot to rehearse with; else `random`. */
  @MayBeLeftOut() @NamedId() lotId?: string;
  /** Draws one of the lots that were used lately. */
  @MayBeLeftOut() @Equals(true) random?: true;
  /** How far back "lately" reaches; left out: 3. */
  @MayBeLeftOut() @IsInt() @Min(1) @Max(mostYears) years?: number;
  /** Every studio of the chain rehearses its part. */
  @MayBeLeftOut() @IsBoolean() wholeChain?: boolean;
}

export class NoteStepDto extends WriteDto {
  @IsIn(notedSteps) step: DrillStep;
}

export class SetDrillScheduleDto extends WriteDto {
  /** Null: as the studio likes. */
  @ValidateIf((_, value) => value !== null)
  @IsInt()
  @Min(1)
  @Max(mostMonths)
  everyMonths: number | null;
  /** The day by which the next drill is to be closed; null: none is asked for. */
  @ValidateIf((_, value) => value !== null) @IsPlainDate() nextOn: string | null;
  /** The version this change was made from; left out when nothing is set yet. */
  @MayBeLeftOut() @Version() version?: number;
}

export class SetChainDrillScheduleDto extends WriteDto {
  /** Null: as each studio likes. */
  @ValidateIf((_, value) => value !== null)
  @IsInt()
  @Min(1)
  @Max(mostMonths)
  everyMonths: number | null;
  /** The day by which the next drill is to be closed; null: none is asked for. */
  @ValidateIf((_, value) => value !== null) @IsPlainDate() nextOn: string | null;
}
