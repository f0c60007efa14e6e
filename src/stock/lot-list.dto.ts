import { IsIn } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { PageDto } from '../platform/request.dto.js';

const states = ['usable', 'ending soon', 'held', 'expired', 'empty'] as const;

export class LotPageDto extends PageDto {
  @MayBeLeftOut() @NamedId() productId?: string;
  /** Lots of which anything is usable, has to be used soon, is held or expired, or of which nothing is left. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
  /** Any code printed for the lot, corrected ones included, whole; capitals do not matter. */
  @MayBeLeftOut() @PlainText(60) code?: string;
}

/** The page of a lot's movements. */
export class LotMovementPageDto extends PageDto {
  /** The `nextContainer` of the answer before. */
  @MayBeLeftOut() @NamedId() containersAfter?: string;
}
