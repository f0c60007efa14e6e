import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { IsPlainDate } from '../platform/plain-date.js';
import { PlainText } from '../platform/plain-text.js';
import { RawText } from '../platform/raw-text.js';
import { PageDto, WriteDto } from '../platform/request.dto.js';
import { type AlertSeverity, severities } from './open-condition.js';

const states = ['open', 'closed', 'all'] as const;
const yesOrNo = ['yes', 'no'] as const;
const longestNote = 2_000;

export class AlertPageDto extends PageDto {
  /** Which alerts; left out: the open ones. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
  /** Only those that are put off until later, or only the others; left out: both. */
  @MayBeLeftOut() @IsIn(yesOrNo) putOff?: (typeof yesOrNo)[number];
  /** Only those given to whoever asks. */
  @MayBeLeftOut() @IsIn(['me']) givenTo?: 'me';
  @MayBeLeftOut() @IsIn(severities) severity?: AlertSeverity;
  /** Such as `low stock`. */
  @MayBeLeftOut() @PlainText(100) kind?: string;
}

export class PutOffDto extends WriteDto {
  /** It comes back on the morning of this local day of the studio, at most a year ahead. */
  @IsPlainDate() until: string;
}

export class GiveDto extends WriteDto {
  /** Who sees to it from now on. */
  @NamedId() personId: string;
}

export class NoteDto extends WriteDto {
  /** What is to be known about it; no client is named here. It is kept sealed. */
  @RawText(longestNote) note: string;
}

export class CloseDto extends WriteDto {
  /** Why it is closed although its condition stands, or what was done; no client is named here. It is kept sealed. */
  @RawText(longestNote) note: string;
}
