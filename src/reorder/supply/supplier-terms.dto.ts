import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { ArrayMaxSize, ArrayUnique, IsArray, IsInt, IsOptional, Max, Min, ValidateBy } from 'class-validator';
import { isMailAddress } from '../../platform/mail-server-setting.js';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { Nested } from '../../platform/nested.js';
import { PlainText } from '../../platform/plain-text.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { LONGEST_LEAD_TIME_DAYS } from './lead-time.js';

const mostMinor = 1_000_000_000;

const trimmed = ({ value }: { value: unknown }) => (typeof value === 'string' ? value.trim() : value);

/** Where a supplier takes orders. */
export class SupplierContactDto {
  /** Without a name before it, such as orders@supplier.example; left out or null: it takes none by mail. */
  @IsOptional()
  @Transform(trimmed)
  @ValidateBy(
    {
      name: 'isMailAddress',
      validator: { validate: (value) => typeof value === 'string' && isMailAddress(value) },
    },
    {
      message:
        '$property must be a mail address such as orders@supplier.example: without a name before it, with letters and digits of ASCII before the @, and at most 254 characters long',
    },
  )
  @ApiProperty({ minLength: 6, maxLength: 254 })
  mailAddress?: string | null;

  /** The number under which the supplier knows the studio. */
  @IsOptional() @PlainText(60) customerNumber?: string | null;
}

/** What is left out or null is not known. */
export class SetSupplierTermsDto extends WriteDto {
  /** Calendar days from ordering to arrival, as the supplier says. */
  @IsOptional() @IsInt() @Min(0) @Max(LONGEST_LEAD_TIME_DAYS) quotedLeadTimeDays?: number | null;

  /** Weekdays on which orders are placed, 1 Monday to 7 Sunday; none: any day. */
  @IsArray()
  @ArrayMaxSize(7)
  @ArrayUnique()
  @IsInt({ each: true })
  @Min(1, { each: true })
  @Max(7, { each: true })
  orderWeekdays: number[];

  /** The smallest order, in minor units of the studio's currency. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) minimumOrderMinor?: number | null;
  /** What one delivery costs. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) deliveryCostMinor?: number | null;
  /** Orders of so much are delivered for nothing. */
  @IsOptional() @IsInt() @Min(0) @Max(mostMinor) freeDeliveryFromMinor?: number | null;

  /** Where orders are sent, by who may place them; left out: as it stands; null: it is forgotten. */
  @IsOptional() @Nested(() => SupplierContactDto) contact?: SupplierContactDto | null;

  /** The version this change was made from; left out when no terms are set yet. */
  @MayBeLeftOut() @Version() version?: number;
}
