import { IsBoolean, IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import { MOST_TOUCH_UP_DAYS } from './touch-up-window.js';
import { type BodyPlace, bodyPlaces } from './vocabulary.js';

const maximumNameLength = 100;

export class AddProcedureDto extends WriteDto {
  @PlainText(maximumNameLength) name: string;
  @IsIn(bodyPlaces) bodyPlace: BodyPlace;
  /** First day of the touch-up window, in days after the first session; 30 when left out. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(MOST_TOUCH_UP_DAYS) touchUpFromDays?: number;
  /** Last day of the touch-up window; 40 when left out. */
  @MayBeLeftOut() @IsInt() @Min(0) @Max(MOST_TOUCH_UP_DAYS) touchUpToDays?: number;
}

export class ChangeProcedureDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @PlainText(maximumNameLength) name?: string;
  @MayBeLeftOut() @IsIn(bodyPlaces) bodyPlace?: BodyPlace;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(MOST_TOUCH_UP_DAYS) touchUpFromDays?: number;
  @MayBeLeftOut() @IsInt() @Min(0) @Max(MOST_TOUCH_UP_DAYS) touchUpToDays?: number;
  /** True: no longer offered, while sessions keep it. False: offered again. */
  @MayBeLeftOut() @IsBoolean() archived?: boolean;
}

export class ListProceduresDto {
  /** Procedures no longer offered are hidden unless asked for. */
  @MayBeLeftOut() @IsIn(['hidden', 'shown']) archived?: 'hidden' | 'shown';
}
