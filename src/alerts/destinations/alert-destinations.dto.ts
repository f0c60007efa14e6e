import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsIn, IsString, Length, Matches, ValidateBy } from 'class-validator';
import { isMailAddress } from '../../platform/mail-server-setting.js';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { isP256Point } from '../../platform/p256-point.js';
import { PlainText } from '../../platform/plain-text.js';
import { PageDto, WriteDto } from '../../platform/request.dto.js';
import { Version } from '../../platform/version.js';
import { severities } from '../open-condition.js';

const longestUrl = 2_000;
const longestName = 100;

const trimmed = ({ value }: { value: unknown }) => (typeof value === 'string' ? value.trim() : value);

export class AlertDestinationPageDto extends PageDto {
  /** Left out: all that you may see. */
  @MayBeLeftOut() @IsIn(['own', 'all']) whose?: 'own' | 'all';
}

export class AddMailDestinationDto extends WriteDto {
  /** Whose address it is; another's only by who may change where alerts go. */
  @NamedId() personId: string;

  /** Without a name before it, such as desk@studio.example. */
  @Transform(trimmed)
  @ValidateBy(
    {
      name: 'isMailAddress',
      validator: { validate: (value) => typeof value === 'string' && isMailAddress(value) },
    },
    {
      message:
        '$property must be a mail address such as desk@studio.example: without a name before it, with letters and digits of ASCII before the @, and at most 254 characters long',
    },
  )
  @ApiProperty({ minLength: 6, maxLength: 254 })
  address: string;
}

export class AddWebhookDestinationDto extends WriteDto {
  /** What people call it. */
  @PlainText(longestName) name: string;

  /** An https address; http only to one that whoever runs the service allowed. */
  @IsString() @Length(1, longestUrl) url: string;

  /** Milder alerts are not sent there. */
  @IsIn(severities) minimumSeverity: (typeof severities)[number];
}

export class AddPushDestinationDto extends WriteDto {
  /** What you call this browser, such as the name of the device. */
  @PlainText(longestName) name: string;

  /** As the browser gives it (PushSubscription.endpoint). */
  @IsString() @Length(1, longestUrl) endpoint: string;

  /** The browser's public key: a point on P-256, 65 bytes, base64url. */
  @ValidateBy(
    { name: 'isP256Point', validator: { validate: isP256Point } },
    { message: '$property must be a public key on P-256, 65 bytes in base64url, as the browser gives it' },
  )
  @ApiProperty({ minLength: 87, maxLength: 88 })
  p256dh: string;

  /** The secret shared with the browser: 16 bytes, base64url. */
  @Matches(/^[A-Za-z0-9_-]{21}[AQgw](==)?$/, {
    message: '$property must be 16 bytes in base64url, as the browser gives it',
  })
  auth: string;
}

export class ChangeAlertDestinationDto extends WriteDto {
  @Version() version: number;

  /** Paused: what is promised to it waits. Active again also after it was stopped. */
  @MayBeLeftOut() @IsIn(['active', 'paused']) state?: 'active' | 'paused';

  /** Of a webhook. */
  @MayBeLeftOut() @IsIn(severities) minimumSeverity?: (typeof severities)[number];

  /** Of a webhook or a browser. */
  @MayBeLeftOut() @PlainText(longestName) name?: string;
}
