import { IsIn, IsOptional, IsString, MaxLength } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';

const states = ['expected', 'ended', 'all'] as const;
const maximumDateLength = 20;

export class ExpectedDeliveryPageDto extends PageDto {
  /** Which; left out: those that are still expected. */
  @MayBeLeftOut() @IsIn(states) state?: (typeof states)[number];
}

export class ExpectDeliveryDto extends WriteDto {
  @NamedId() supplierId: string;
  /**
   * The supplier's or the studio's number of the order. Never of a client: it is kept in the clear, and leaves in alerts,
   * mail, webhooks and calendars.
   */
  @IsOptional() @PlainText(100) reference?: string | null;
  /** YYYY-MM-DD; null: not known. */
  @IsOptional() @IsString() @MaxLength(maximumDateLength) orderedOn?: string | null;
  /** The last day on which it is in time, YYYY-MM-DD. */
  @IsString() @MaxLength(maximumDateLength) expectedOn: string;
}

export class ChangeExpectedDeliveryDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @NamedId() supplierId?: string;
  /** As when it was expected: never of a client. */
  @IsOptional() @PlainText(100) reference?: string | null;
  @IsOptional() @IsString() @MaxLength(maximumDateLength) orderedOn?: string | null;
  @MayBeLeftOut() @IsString() @MaxLength(maximumDateLength) expectedOn?: string;
}

export class CallOffDeliveryDto extends WriteDto {}

export class ExpectedDeliveryReceivedDto extends WriteDto {
  /** The delivery it came with; left out or null: it is not recorded, or nobody knows which. */
  @IsOptional() @NamedId() deliveryId?: string | null;
}
