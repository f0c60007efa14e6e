import { IsInt, IsOptional, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const maximumNoteLength = 2_000;

export class RecordHealedResultDto extends EventDto {
  /** How much of the colour is still there. */
  @IsInt() @Min(0) @Max(100) retainedColourPercent: number;
  /** What was seen; kept sealed. */
  @IsOptional() @PlainText(maximumNoteLength) note?: string | null;
  /** The visit at which it was seen, such as the touch-up. */
  @IsOptional() @NamedId() seenAtSessionId?: string | null;
  /** To correct what was recorded: the version of the session it was read from. Left out: nothing is recorded yet. */
  @MayBeLeftOut() @Version() version?: number;
}
