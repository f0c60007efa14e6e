import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { NestedList } from '../../platform/nested.js';
import { PlainText } from '../../platform/plain-text.js';
import { EventDto } from '../../platform/request.dto.js';
import { type ClosingObstacle, closingObstacles } from '../vocabulary.js';

export class ClosingOverrideDto {
  @IsIn(closingObstacles) obstacle: ClosingObstacle;
  /** Why the recall is closed all the same. Nothing of a client. */
  @PlainText(1_000) reason: string;
}

export class CloseRecallDto extends EventDto {
  /** Who answers for it; they or the second are who makes the request. */
  @NamedId() signedBy: string;
  /** Another person who signs with them. */
  @MayBeLeftOut() @NamedId() secondSignedBy?: string;
  /** For each obstacle that still stands, why it does not matter. */
  @NestedList(() => ClosingOverrideDto, closingObstacles.length) overrides: ClosingOverrideDto[];
}
