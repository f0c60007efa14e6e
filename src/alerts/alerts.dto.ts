import { IsIn, IsOptional } from 'class-validator';
import { PageDto } from '../platform/request.dto.js';

const states = ['open', 'closed', 'all'] as const;

export class AlertPageDto extends PageDto {
  /** Which alerts; left out: the open ones. */
  @IsOptional() @IsIn(states) state?: (typeof states)[number];
}
