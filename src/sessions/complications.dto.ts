import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import { longestComplications } from './completion.dto.js';

/** Complications that were noticed after a session was completed. */
export class AddComplicationsDto extends EventDto {
  /** In words; kept sealed, below what was said before. */
  @PlainText(longestComplications) complications: string;
  /** The version of the session it was read from. */
  @Version() version: number;
}
