import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PageDto } from '../platform/request.dto.js';
import { containerStates } from './vocabulary.js';

export class ContainerPageDto extends PageDto {
  @MayBeLeftOut() @NamedId() placeId?: string;
  @MayBeLeftOut() @NamedId() lotId?: string;
  @MayBeLeftOut() @NamedId() productId?: string;
  /** Left out: all that is still here, neither finished nor discarded. */
  @MayBeLeftOut() @IsIn(containerStates) state?: (typeof containerStates)[number];
}

export class ContainerPickDto {
  @NamedId() productId: string;
}
