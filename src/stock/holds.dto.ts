import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto } from '../platform/request.dto.js';
import { holdKinds, holdReasons } from './vocabulary.js';

export class PlaceHoldDto extends EventDto {
  @IsIn(holdKinds) kind: (typeof holdKinds)[number];
  @IsIn(holdReasons) reason: (typeof holdReasons)[number];
  /** What was seen. Of the thing and never of a client: it is kept in the clear. */
  @MayBeLeftOut() @PlainText(500) note?: string;
  /** The whole lot; either this or a container. */
  @MayBeLeftOut()
  @NamedId()
  lotId?: string;
  /** One container. */
  @MayBeLeftOut() @NamedId() containerId?: string;
}

export class AskReleaseDto extends EventDto {
  /** Why it may be used again. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(300) reason: string;
  /** A photo of the thing, where nobody else may release holds. */
  @MayBeLeftOut() @NamedId() photoId?: string;
}

export class ReleaseHoldDto extends EventDto {
  /** Why it may be used again. Of the thing and never of a client: it is kept in the clear. */
  @PlainText(300) reason: string;
}
