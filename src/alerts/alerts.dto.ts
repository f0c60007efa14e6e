import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { PageDto } from '../platform/request.dto.js';

const states = ['open', 'closed', 'all'] as const;

export class AlertPageDto extends PageDto {
  /** Which alerts; left out: the open ones. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}
