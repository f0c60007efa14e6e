import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';

const longestReason = 500;

export class NoteLegalClaimDto extends WriteDto {
  /** What is claimed, or may be; kept sealed. */
  @PlainText(longestReason) reason: string;
}

export class EndLegalClaimDto extends WriteDto {
  /** How it ended; kept sealed. */
  @PlainText(longestReason) reason: string;
}
