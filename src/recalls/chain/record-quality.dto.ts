import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { IsPlainDate } from '../../platform/plain-date.js';

export class RecordQualityDto {
  /** First local day; left out: a year before the last. */
  @MayBeLeftOut() @IsPlainDate() from?: string;
  /** Last local day; left out: today. */
  @MayBeLeftOut() @IsPlainDate() through?: string;
}
