import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { PageDto } from '../../platform/request.dto.js';

const states = ['pending', 'undeliverable'] as const;

export class DeliveryPageDto extends PageDto {
  /** Those that wait, or those that could not be sent; left out: the latter. What was sent stands with its alert. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}
