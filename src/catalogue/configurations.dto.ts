import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';

export class DeclareEquivalenceDto extends WriteDto {
  @NamedId() productId: string;
  @NamedId() otherProductId: string;
  /** Why the two stand for each other. */
  @PlainText(500) reason: string;
}

export class WithdrawEquivalenceDto extends WriteDto {}
