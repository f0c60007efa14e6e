import { Transform } from 'class-transformer';
import { IsBoolean, IsIn } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { PageDto } from '../../platform/request.dto.js';

const states = ['pending', 'undeliverable'] as const;

export class DeliveryPageDto extends PageDto {
  /** Those that wait, or those that could not be sent; left out: the latter. What was sent stands with its alert. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];

  /**
   * Only what somebody can still do something about: of alerts that stand and of summaries of today, to who works here,
   * where it may still go; no tests.
   */
  @MayBeLeftOut()
  @Transform(({ value }) => (value === 'true' ? true : value === 'false' ? false : value))
  @IsBoolean()
  actionable?: boolean;
}
